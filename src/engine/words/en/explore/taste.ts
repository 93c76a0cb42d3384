import { speak } from '../../language.ts';

export const say = speak('engine/explore/taste', {
  nothingIsChosenSelect: 'Nothing is chosen; select, pin or keep a print that you like.',
  everyPrintThatHangs: 'Every print that hangs is chosen, so nothing is passed over; take some out, or compare two of them.',
  is1: 'is 1',
  are: (said: number) => `are ${said}`,
  printsCanBeFound: (leastChoicesToFindBy: number, said: string) =>
    `Prints can be found by what you choose from ${leastChoicesToFindBy} choices on, each of one print over another; there ${said} so far: answer ‘This one or that one?’ a few times.`,
  hexDigits: 'hex digits',
  tasteCouldNotBe: 'a taste could not be fitted',
});
