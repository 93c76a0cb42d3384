import type { say as english } from '../../en/shapes/compose.ts';

export const say: typeof english = {
  chooseAtLeastOne: 'Mindestens eine Form wählen, die auf Siebe kommt.',
  shapesGoOn1: (screens) => `Formen kommen auf 1 bis 100 Siebe, nicht auf ${screens}.`,
  piecesOfToMm: (leastMm, mostMm) =>
    `Stücke von ${leastMm} bis ${mostMm} mm sind nicht möglich; eine kleinste Größe über 0 angeben und eine größte, die nicht kleiner ist.`,
  howMuchIsCovered: 'Bedeckt sind mehr als 0 bis 100 %, überlappt sind 0 bis 100 %.',
};
