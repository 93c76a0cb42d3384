import { speak } from '../../language.ts';

export const say = speak('engine/log/log', {
  sheetHasNoPull: (number: number) => `Sheet ${number} has no pull on it yet; a recipe needs at least one.`,
  sheetIsInLog: (sheet: number) =>
    `Sheet ${sheet} is in the log, but the visit has no sheet of that number; look at the number on its back and undo the entry.`,
  sheetEntryIsFrom: (sheet: number) =>
    `Sheet ${sheet}: an entry is from before the visit began, so the clocks of the devices differ; set them and trust the sheet, not the times.`,
  testSheetIsSaid: (sheet: number, cut: string, theOf: number) =>
    `Test sheet ${sheet} is said to be pulled with "${cut}" of sheet ${theOf}, which has no such pull; undo the entry.`,
  sheetIsSaidTo: (sheet: number, by: number, cut: string) =>
    `Sheet ${sheet} is said to be replaced by sheet ${by}, which has not the same pulls on it as ${cut}; undo the entry and choose one of its overs.`,
  sheetWasPulledAfter: (sheet: number) => `Sheet ${sheet} was pulled after it was spoiled; undo one of the two.`,
  sheetIsSaidToBe: (sheet: number, cut: string) =>
    `Sheet ${sheet} is said to be pulled in ${cut}, but no recipe of this visit has that ink; if it was another bucket, undo the entry and choose the ink that was in the screen.`,
  sheetIsSaidToBePulled: (sheet: number, cut: string, cut2: string) =>
    `Sheet ${sheet} is said to be pulled with "${cut}", but ${cut2} has no such pull, so no screen for it was there; undo the entry.`,
  sheetPullOfIs: (sheet: number, at: number, cut: string) =>
    `Sheet ${sheet}: pull ${at} of ${cut} is logged twice; look at the sheet and undo one, or log it as an extra pull.`,
  sheetIsLoggedAfter: (number: number, pull: string, pull2: string, cut: string) =>
    `Sheet ${number}: ${pull} is logged after ${pull2}, but lies under it in ${cut}, and where they overlap it shows; if the sheet looks so, keep it as it is, else undo the entry.`,
  sheetSomethingIsUndone: (sheet: number) =>
    `Sheet ${sheet}: something is undone that is not in the log; bring in the log of the device that wrote it.`,
  sheetWhatIsUndone: (sheet: number, sheet2: number) =>
    `Sheet ${sheet}: what is undone happened to sheet ${sheet2}; look at both sheets and note on each what is on it.`,
  screenIn: (number: string | number, name: string) => `screen ${number} in ${name}`,
  event: (name: string, cut: string) => `${name}, event ${cut}`,
  visitWhoseSheetsName: 'a visit whose sheets name its recipes',
  thisLogIsOf: (cut: string) => `This log is of another visit, ${cut}; open that visit to bring it in.`,
  sheetTwoEntriesHave: (sheet: number) =>
    `Sheet ${sheet}: two entries have one name but say different things; both are kept, so undo the one that is wrong.`,
  nothingIsLeftTo: 'Nothing is left to pull: every sheet is finished or spoiled.',
  testSheet: 'Test sheet',
});
