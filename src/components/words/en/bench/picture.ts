import { parts, speak } from '../../../../engine/words/language.ts';

export const say = speak('bench/picture', {
  asItWasOpened: 'As it was opened',
  compareWith: 'Compare with',
  nothing: 'nothing',
  stackAsItWas: 'the stack as it was opened',
  changed: (from: string) => `${from}, changed`,
  pullsAtThisPlace: 'The pulls at this place, last down on top',
  paper: (i: unknown) => parts`${i}paper`,
  over: 'over',
  under: 'under',
  bringWhatIsSelected: (over: boolean, at: number) => `Bring what is selected ${over ? 'over' : 'under'} pull ${at}`,
  screen: (at: unknown, inkNameOf: string, number: string | number) => parts`${at} ${inkNameOf}, screen ${number}`,
  chooseOneOfThem: 'Choose one of them to bring it over or under another.',
  overUnderBringPull: (at: number) => `Over, under: bring pull ${at} there.`,
  overUnderBringSelected: (together: number) => `Over, under: bring the ${together} selected pulls there.`,
  moreColourfulInPrint: 'more colourful in print than this screen can show',
  close: 'Close',
});
