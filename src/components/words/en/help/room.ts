import { parts, speak } from '../../../../engine/words/language.ts';

export const say = speak('help/room', {
  firstSteps: 'First steps',
  firstStepsOf: (step: number, firstSteps: number) => `First steps, ${step} of ${firstSteps}`,
  nextThe: (label: unknown) => parts`Next: the ${label}.`,
  done: 'Done',
  nextStep: 'Next step',
  closeFirstSteps: 'Close the first steps',
  thisRoom: 'This room',
  keys: 'Keys',
  words: 'Words',
  noWordHasThat: 'No word has that in it or in its meaning.',
  ofWordsThoseWith: (count: number, glossary: number) =>
    `${count} of ${glossary} words; those with a dot are ours, the others of the trade or a standard.`,
  lookForWord: 'Look for a word',
  wordOfOurs: 'a word of ours',
  help: (label: string) => `Help: ${label}`,
  partOfHelp: 'Part of the help',
  walkAlongPrintsWith: 'Walk along the prints with the arrow keys or a tap, and press *Keep* at one that you like.',
  hereIsOnePrint: 'Here is one print, pull by pull: drag a state of the strip before another, and see what changes.',
  givePrintThatYou: 'Give the print that you kept some sheets, then press *Find the pull order*.',
  putFourPullsInto: 'Put four pulls into another order, and see which orders print the same.',
  bringInDrawingsOf: 'Bring in drawings of your own with *Choose SVG files…*; the button with the project’s name begins an empty project.',
});
