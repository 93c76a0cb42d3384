import type { say as english } from '../../en/visit/stencils.ts';

export const say: typeof english = {
  stockSheetOfMm: (widthMm, heightMm) => `Einen Rohbogen von ${widthMm} × ${heightMm} mm gibt es nicht: zwei Seiten in mm angeben.`,
};
