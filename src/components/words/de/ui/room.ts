import { counted } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/ui/room.ts';

export const say: typeof english = {
  workSafely: 'Sicher arbeiten',
  beforeYouStart: 'vor dem Anfangen',
  followSafetyDataSheets:
    'Sicherheitsdatenblätter, Regeln der Werkstatt, örtliche Vorschriften und geschultes Personal gehen dieser Liste vor.',
  hatchedWherePrintIs:
    'Schraffiert, wo der Druck farbiger ist, als dieser Bildschirm zeigen kann; dort behält er Buntton und Helligkeit und verliert Farbigkeit.',
  hatchWhatThisScreen: 'Schraffieren, was dieser Bildschirm nicht zeigt',
  fontCouldNotBe: (status) => `die Schrift konnte nicht gelesen werden (${status})`,
  thereIsNoInk: 'Es gibt keine Farbe zum Drucken; zuerst eine in Farben hinzufügen.',
  screenIsOnBench: (number, inkName) => `Sieb ${number} ist auf der Werkbank, zuletzt gedruckt, in ${inkName}.`,
  screensAreOnBench: (pulls) => `${pulls} Siebe sind auf der Werkbank, die Farben reihum. Die Wand findet Drucke daraus.`,
  screenThatIsGone: 'ein Sieb, das fehlt',
  screen: (number, name) => `Sieb ${number} ${name}`,
  pull: (index, screen) => `Druckgang ${index}: ${screen}`,
  inkThatIsGone: 'eine Farbe, die fehlt',
  strokes: (strokes) => counted(strokes, { one: 'Rakelzug', other: 'Rakelzüge' }),
  mmRightAndMm: (mm, mm2) => `${mm} mm nach rechts und ${mm2} mm nach unten`,
  turned: (turnDeg) => `${turnDeg}° gedreht`,
  tryAgain: 'Noch einmal versuchen',
};
