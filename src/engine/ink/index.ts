export type { Ink, InkBasis, Lab, Paper } from './types.ts';
export {
  commute,
  filmBands,
  filmMatrix,
  infiniteReflectance,
  overFilm,
  stackReflectance,
  type FilmBands,
  type FilmCurves,
} from './film.ts';
export { filmThickness } from './thickness.ts';
