import { speak } from '../../../../engine/words/language.ts';

export const say = speak('canvas/draw', {
  wallHoldsMapsOf: (columns: number, rows: number, columns2: number, rows2: number) =>
    `The wall holds maps of ${columns} × ${rows} cells; one of ${columns2} × ${rows2} came. Find the prints anew.`,
  cardWasTakenAway: 'The browser took it away from the page twice before it drew.',
});
