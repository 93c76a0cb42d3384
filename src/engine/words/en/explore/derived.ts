import { plural, speak } from '../../language.ts';

export const say = speak('engine/explore/derived', {
  chooseTwoPrintsFor: 'Choose two prints for this; one was given.',
  chooseOnePrintFor: 'Choose one print for this.',
  onlyPrintsOfCame: (found: number, asked: number) =>
    `Only ${found} ${plural(found, { one: 'print', other: 'prints' })} of ${asked} came of this; let more change, or let a pull move that must stay.`,
  choosePrintForThis: 'Choose a print for this.',
  onlyPrintsOfCameOf: (found: number, asked: number) =>
    `Only ${found} ${plural(found, { one: 'print', other: 'prints' })} of ${asked} came of what you choose; let more change, or let a pull move that must stay.`,
  wayFromOnePrint: (found: number) =>
    `The way from one print to the other has only ${found} different ${plural(found, { one: 'print', other: 'prints' })} that keep what must stay.`,
});
