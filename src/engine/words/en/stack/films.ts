import { speak } from '../../language.ts';

export const say = speak('engine/stack/films', {
  reflectanceHasBandsAre: (bands: number, bandCount: number) => `A reflectance has ${bands} bands; ${bandCount} are needed.`,
});
