import { speak } from '../../language.ts';

export const say = speak('engine/log/now', {
  andMore: (title: string, more: number) => `${title} and ${more} more`,
  sheetWouldHave: (number: number, pulls: number, most: number) =>
    `Sheet ${number} would have ${pulls} pulls, and a sheet takes at most ${most}; choose fewer, or another sheet.`,
});
