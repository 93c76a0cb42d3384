import { speak } from '../../language.ts';

export const say = speak('engine/visit/stencils', {
  stockSheetOfMm: (widthMm: number, heightMm: number) => `A stock sheet of ${widthMm} × ${heightMm} mm is none: give two sides in mm.`,
});
