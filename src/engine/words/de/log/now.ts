import type { say as english } from '../../en/log/now.ts';

export const say: typeof english = {
  andMore: (title, more) => `${title} und ${more} mehr`,
};
