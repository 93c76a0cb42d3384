import type { say as english } from '../../en/order/order.ts';
import { plural } from '../../language.ts';

/** What a pull uses, by its name in the engine: with its article, and as another of its kind. */
const USED: Readonly<Record<string, { readonly the: string; readonly another: string }>> = {
  ink: { the: 'die Farbe', another: 'eine andere Farbe' },
  screen: { the: 'das Sieb', another: 'ein anderes Sieb' },
};

export const say: typeof english = {
  outlinesOfThesePulls:
    'Die Umrisse dieser Druckgänge haben zu viele Kanten nebeneinander, um verglichen zu werden; die größten Zeichnungen vereinfachen oder Druckgänge weglassen.',
  numberOfPullsIs: (pulls, maxGraphPulls) => `Die Zahl der Druckgänge ist ${pulls}; eine ganze Zahl von 0 bis ${maxGraphPulls} angeben.`,
  overlapsMustBeList: 'Die Überlappungen müssen eine Liste von Paaren von Druckgängen sein; [] angeben, wenn es keine gibt.',
  overlapIs: (index, pair, what) => `Überlappung ${index} ist [${pair}]; ${what}`,
  giveTwoPullsBy: (pulls) => `zwei Druckgänge mit ihren Nummern angeben, 0 bis ${pulls}.`,
  pullCannotOverlapItself: 'ein Druckgang kann sich nicht selbst überlappen: dieses Paar weglassen.',
  overlapToleranceIsMm: (toleranceMm) => `Die Toleranz der Überlappung ist ${toleranceMm} mm; eine Länge von 0 mm oder mehr angeben.`,
  pullUsesScreenWhich: (index, screen) =>
    `Druckgang ${index} nutzt das Sieb ‚${screen}‘, das nicht in der Schublade ist; ein anderes Sieb wählen oder den Druckgang weglassen.`,
  drawerMustHaveLists: 'Die Schublade braucht Listen von Formen, Sieben und Farben und ein Papier.',
  paperMustHaveWidth: (most) => `Das Papier braucht eine Breite und eine Höhe in mm und Reflexionsgrade von 0 bis ${most}.`,
  pullOfStackMust: (index) => `Druckgang ${index} des Stapels braucht endliche Zahlen für Versatz, Drehung und Rakelzüge.`,
  deltaEUnderWhichSwap: (minDeltaE) => `Das ΔE, unter dem ein Tausch frei ist, ist ${minDeltaE}; eine Zahl von 0 oder mehr angeben.`,
  moreThanFilmsIn: (maxFilms) => `mehr als ${maxFilms} Farbschichten in einer Schublade`,
  pullUsesWhichIs: (what, id) =>
    `Ein Druckgang nutzt ${USED[what]?.the ?? what} ‚${id}‘; in der Schublade gibt es das nicht: ${USED[what]?.another ?? what} wählen oder den Druckgang weglassen.`,
  and: ' und ',
  outlinesOfHaveToo: (names, pulls) =>
    `Die Umrisse von ${names} haben zu viele Ecken nebeneinander oder kreuzen sich zu oft, um verglichen zu werden; ${plural(pulls, { one: 'die Form', other: 'eine davon' })} vereinfachen.`,
  onScreen: (cut, number) => `„${cut}“ auf Sieb ${number}`,
};
