import type { say as english } from '../../en/output/plate.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  screen: (key, name) => `Sieb ${key} ${name}`,
  screens: (images) => `${images} Siebe`,
  thereArePiecesOn: (pieces, images, mostPieces, images2) =>
    `Es sind ${pieces} Stücke (${images}), mehr als die ${mostPieces}, die auf Bögen ausgelegt werden; ${plural(images2, { one: 'ein einfacheres Sieb', other: 'weniger Siebe auf einmal' })} nehmen.`,
  pieceOfIsMm: ({ whoOf, roundTo, roundTo2, widthMm, heightMm, gapMm }) =>
    `Ein Stück (${whoOf}) misst ${roundTo} × ${roundTo2} mm, mehr als ein Bogen von ${widthMm} × ${heightMm} mm mit ${gapMm} mm frei ringsum; größere Bögen nehmen.`,
  plate: (name) => `${name} Platte`,
  plateOf: (name, at, count) => `${name} Platte ${at} von ${count}`,
  screenKey: (key, name) => `Sieb ${key}, ${name}`,
  kerfOfMmWith: (kerfMm, bridgeMm, key, name) =>
    `Eine Schnittfuge von ${kerfMm} mm mit Stegen von ${bridgeMm} mm lässt aus Sieb ${key}, ${name}, nichts auszuschneiden; einen feineren Schnitt nehmen.`,
};
