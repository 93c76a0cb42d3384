import type { say as english } from '../../en/explore/derived.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  chooseTwoPrintsFor: 'Dafür zwei Drucke wählen; einer ist gegeben.',
  chooseOnePrintFor: 'Dafür einen Druck wählen.',
  onlyPrintsOfCame: (found, asked) =>
    `Nur ${found} ${plural(found, { one: 'Druck', other: 'Drucke' })} von ${asked} ${plural(found, { one: 'kam', other: 'kamen' })} heraus; mehr ändern lassen oder einen Druckgang bewegen lassen, der bleiben muss.`,
  choosePrintForThis: 'Dafür einen Druck wählen.',
  onlyPrintsOfCameOf: (found, asked) =>
    `Nur ${found} ${plural(found, { one: 'Druck', other: 'Drucke' })} von ${asked} ${plural(found, { one: 'kam', other: 'kamen' })} aus der eigenen Wahl; mehr ändern lassen oder einen Druckgang bewegen lassen, der bleiben muss.`,
  wayFromOnePrint: (found) =>
    `Auf dem Weg von einem Druck zum anderen ${plural(found, { one: 'liegt', other: 'liegen' })} nur ${found} ${plural(found, { one: 'verschiedener Druck, der hält', other: 'verschiedene Drucke, die halten' })}, was bleiben muss.`,
};
