import type { say as english } from '../../en/shapes/place.ts';

export const say: typeof english = {
  meshHasToThreads: (least, most, threadsPerCm) => `Ein Gewebe hat ${least} bis ${most} Fäden je Zentimeter, nicht ${threadsPerCm}.`,
  threadIsToM: (least, most, threadUm) => `Ein Faden ist ${least} bis ${most} µm dick, nicht ${threadUm}.`,
  threadsOfMCentimetre: (threadsPerCm, threadUm) =>
    `${threadsPerCm} Fäden von ${threadUm} µm je Zentimeter lassen keine Öffnung; weniger oder dünnere Fäden angeben.`,
  mirrored: (name) => `${name}, gespiegelt`,
  screenUsesShapeWhich: (number, shape) =>
    `Sieb ${number} nutzt die Form ‚${shape}‘, die nicht in der Schublade liegt; hinzufügen oder vom Sieb nehmen.`,
  shapesOnScreenHave: (number) =>
    `Die Formen auf Sieb ${number} haben zu viele Ecken nebeneinander oder kreuzen einander zu oft; vereinfachen oder auf mehrere Siebe verteilen.`,
  pullIsLaidMm: (dxMm, dyMm, turnDeg) =>
    `Ein Druckgang liegt ${dxMm} mm nach rechts und ${dyMm} mm nach unten versetzt, um ${turnDeg}° gedreht; drei endliche Zahlen angeben.`,
};
