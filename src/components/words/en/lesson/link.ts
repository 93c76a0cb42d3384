import { counted, speak } from '../../../../engine/words/language.ts';

export const say = speak('lesson/link', {
  copied: 'Copied.',
  thisBrowserDoesNot: 'This browser does not let it be copied: it is marked, copy it by hand.',
  thisLessonHasToo: 'This lesson has too many outlines for a code that a phone can read: give the link instead.',
  andItsOrdersPrint: (here: number) => `, and its orders print ${counted(here, { one: 'picture', other: 'pictures' })} as here`,
  itsOrdersPrintPictures: (there: number, here: number) =>
    `; its orders print ${counted(there, { one: 'picture', other: 'pictures' })}, and here ${here}`,
  inCodeOutlinesAre: (toleranceMm: number, count: string) => `In the code, outlines are drawn to within ${toleranceMm} mm${count}.`,
  codeOfThisLesson: 'Code of this lesson',
  thisLessonHasTooMany: 'This lesson has too many outlines for a link: choose fewer pulls, or simpler shapes.',
  nothingBoardIsTheirs: 'nothing; the board is theirs',
  whatIsToBe: 'What is to be done',
  link: 'Link',
  copyLink: 'Copy the link',
  openItHere: 'Open it here',
  allOfLessonStands:
    'All of the lesson stands in the address behind the sign #, which no server is told. It opens beside a student’s own project and leaves that as it is.',
  link2: 'Link…',
  thisLessonForOthers: 'This lesson for others',
  openYourOwnStudio: 'Open your own studio',
  noLesson: 'No lesson',
  task: 'Task',
  board: 'Board',
  levels: 'Levels',
  lesson: 'Lesson',
  lessonTitle: (title: string) => `Lesson: ${title}`,
  whatToDo: 'What to do',
});
