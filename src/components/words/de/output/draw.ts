import type { say as english } from '../../en/output/draw.ts';

export const say: typeof english = {
  continued: (title) => `${title}, Fortsetzung`,
  bareNowThen: (title, noPulls) => `${title}${noPulls ? ', blank' : ''}: jetzt, dann`,
};
