import { speak } from '../../language.ts';

export const say = speak('engine/explore/prepare', {
  noPrintsAreChosen: 'No prints are chosen; select, pin or keep some, or take the whole wall.',
  screensThereAreList: 'The screens that are there are a list of ids; leave it out when there are none.',
  listOfPrintsIs: 'A list of prints is needed, each with the screens that it is pulled with.',
  numberOfNewScreens: (most: number) => `The number of new screens is ${most}; give a whole number from 0.`,
  printNamesNoScreens: (i: number) => `Print ${i} names no screens; give the ids of the screens that it is pulled with.`,
  printCountsGive0: (i: number, weight: number) => `Print ${i} counts ${weight}; give 0 or a positive number.`,
  printsCountTooMuch: 'The prints count more than 10³⁰⁰ together; give them smaller weights.',
});
