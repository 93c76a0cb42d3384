import { plural, speak } from '../../language.ts';

export const say = speak('engine/output/plate', {
  screen: (key: string, name: string) => `screen ${key} ${name}`,
  screens: (images: number) => `${images} screens`,
  thereArePiecesOn: (pieces: number, images: string, mostPieces: number, images2: number) =>
    `There are ${pieces} pieces on ${images}, over the ${mostPieces} that are laid on sheets; take ${plural(images2, { one: 'a simpler screen', other: 'fewer screens at once' })}.`,
  pieceOfIsMm: ({
    whoOf,
    roundTo,
    roundTo2,
    widthMm,
    heightMm,
    gapMm,
  }: {
    whoOf: string;
    roundTo: number;
    roundTo2: number;
    widthMm: number;
    heightMm: number;
    gapMm: number;
  }) =>
    `A piece of ${whoOf} is ${roundTo} × ${roundTo2} mm, larger than a sheet of ${widthMm} × ${heightMm} mm with ${gapMm} mm free about it; take larger sheets.`,
  plate: (name: string) => `${name} plate`,
  plateOf: (name: string, at: number, count: number) => `${name} plate ${at} of ${count}`,
  screenKey: (key: string, name: string) => `screen ${key}, ${name}`,
  kerfOfMmWith: (kerfMm: number, bridgeMm: number, key: string, name: string) =>
    `A kerf of ${kerfMm} mm with bridges of ${bridgeMm} mm leaves nothing to cut out of screen ${key}, ${name}; take a finer cut.`,
});
