import type { say as english } from '../../en/explore/search.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  two: 'zwei',
  three: 'drei',
  four: 'vier',
  five: 'fünf',
  six: 'sechs',
  seven: 'sieben',
  eight: 'acht',
  nine: 'neun',
  ten: 'zehn',
  noPrintWasFound: 'Es fand sich kein Druck, der diese Bedingung hält',
  noPrintWasFoundThat: (numbers) => `Es fand sich kein Druck, der diese ${numbers} Bedingungen zusammen hält`,
  dropItOrLet: 'Sie fallen lassen oder mehr ändern lassen.',
  dropOneOfThem: 'Eine davon fallen lassen oder mehr ändern lassen.',
  prints: (found) => plural(found, { one: 'Druck', other: 'Drucke' }),
  new: (pictures) => `${pictures === 'Druck' ? 'neuer' : 'neue'} ${pictures}`,
  different: (pictures) => `${pictures === 'Druck' ? 'verschiedener' : 'verschiedene'} ${pictures}`,
  noPrintKeepsWhat: 'Kein Druck hält, was bleiben muss, und die Grenzen; eines davon lockern oder mehr ändern lassen.',
  letMoreChangeLoosen:
    'mehr ändern lassen, lockern, was bleiben muss, oder eine Grenze, oder das ΔE senken, unter dem Drucke als gleich gelten',
  ordersOfThesePulls: (found, what, asked, mend) =>
    `Die Reihenfolgen dieser Druckgänge geben nicht mehr her: ${found} ${what}, und ${asked} waren verlangt; ${mend}.`,
  onlyOfCameOut: (found, what, asked, mend) =>
    `Aus dem, was sich ändern darf, kam nicht mehr heraus: ${found} ${what} von ${asked}; ${mend}.`,
  projectNeedsDrawerOf:
    'Ein Projekt braucht eine Schublade mit Formen, Sieben, Farben und Papier, eine Werkbank mit Druckgängen und Einstellungen zum Erkunden; mit readProject eines lesen.',
  nameOfWallIts: (seed) => `Der Name der Wand (ihr Startwert) ist ${seed}; einen Text oder eine Zahl angeben.`,
};
