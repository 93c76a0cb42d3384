import type { say as english } from '../../en/canvas/draw.ts';

export const say: typeof english = {
  wallHoldsMapsOf: (columns, rows, columns2, rows2) =>
    `Die Wand hält Karten von ${columns} × ${rows} Zellen; eine von ${columns2} × ${rows2} kam. Die Drucke neu suchen.`,
  cardWasTakenAway: 'Der Browser nahm sie der Seite zweimal, bevor sie zeichnete.',
};
