import type { say as english } from '../../en/inks/mesh.ts';

export const say: typeof english = {
  mesh: 'Gewebe',
  onYourScreens: 'Auf den eigenen Sieben',
  threadsPerCmThread: 'Fäden je cm – Faden in µm',
};
