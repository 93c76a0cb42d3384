import { plural, speak } from '../../language.ts';

export const say = speak('engine/visit/problem', {
  setUpsPrintSheets: (mixed: number, mixed2: string, value: string) =>
    `${plural(mixed, { one: 'Set-up', other: 'Set-ups' })} ${mixed2} ${plural(mixed, { one: 'prints', other: 'print' })} sheets of several sizes (${value}) at one offset: set the lays so that the middle of each size lies where it was drawn, or cut the paper alike.`,
  screenLiesOffSheet: (number: string | number, name: string, title: string) =>
    `Screen ${number} ${name} lies off the sheet in ${title} and prints nothing there: move it on the Bench or leave the pull out.`,
});
