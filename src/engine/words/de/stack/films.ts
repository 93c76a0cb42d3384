import type { say as english } from '../../en/stack/films.ts';

export const say: typeof english = {
  reflectanceHasBandsAre: (bands, bandCount) => `Eine Remission hat ${bands} Bänder; nötig sind ${bandCount}.`,
};
