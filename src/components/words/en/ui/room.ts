import { counted, speak } from '../../../../engine/words/language.ts';

export const say = speak('ui/room', {
  workSafely: 'Work safely',
  beforeYouStart: 'before you start',
  followSafetyDataSheets: 'Follow the safety data sheets, studio rules, local codes and trained staff; they come before this list.',
  hatchedWherePrintIs:
    'Hatched where the print is more colourful than this screen can show; there the screen keeps hue and lightness and loses colourfulness.',
  hatchWhatThisScreen: 'Hatch what this screen cannot show',
  fontCouldNotBe: (status: number) => `the font could not be read (${status})`,
  thereIsNoInk: 'There is no ink to pull with; add one in Inks first.',
  screenIsOnBench: (number: number, inkName: string) => `Screen ${number} is on the Bench, last down, in ${inkName}.`,
  screensAreOnBench: (pulls: number) => `${pulls} screens are on the Bench, the inks in turn. The Wall finds prints from them.`,
  screenThatIsGone: 'a screen that is gone',
  screen: (number: number, name: string) => `screen ${number} ${name}`,
  pull: (index: number, screen: string) => `Pull ${index}: ${screen}`,
  inkThatIsGone: 'an ink that is gone',
  strokes: (strokes: number) => counted(strokes, { one: 'stroke', other: 'strokes' }),
  mmRightAndMm: (mm: string, mm2: string) => `${mm} mm right and ${mm2} mm down`,
  turned: (turnDeg: string) => `turned ${turnDeg}°`,
  tryAgain: 'Try again',
});
