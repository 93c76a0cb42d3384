import { speak } from '../../language.ts';

export const say = speak('engine/explore/onward', {
  numberOfFurtherPulls: (most: number) => `The number of further pulls is ${most}; give a whole number of 1 or more.`,
  nothingCanFollow: 'nothing can follow',
  askForMoreAt: (mostPulls: number) => `ask for ${mostPulls} more at most`,
  pullsAreDownAnd: (down: number, mostPulls: number, mostPulls2: string) =>
    `${down} pulls are down, and a sheet takes at most ${mostPulls}; ${mostPulls2}.`,
  noScreenIsAt: 'No screen is at hand to go on with; say of a screen that it is there.',
  noInkIsAt: 'No ink is at hand to go on with; say of an ink that it is there.',
  choosePrintThatIt: 'Choose the print that it shall come nearer to.',
});
