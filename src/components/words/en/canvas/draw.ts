import { speak } from '../../../../engine/words/language.ts';

export const say = speak('canvas/draw', {
  rgb: (round: number, round2: number, round3: number, alpha: number) => `rgb(${round} ${round2} ${round3} / ${alpha})`,
  prints: 'prints',
  wallHoldsMapsOf: (columns: number, rows: number, columns2: number, rows2: number) =>
    `The wall holds maps of ${columns} × ${rows} cells; one of ${columns2} × ${rows2} came. Find the prints anew.`,
  printSize: 'print size',
});
