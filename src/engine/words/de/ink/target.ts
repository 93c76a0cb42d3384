import type { say as english } from '../../en/ink/target.ts';

export const say: typeof english = {
  inkThatIsGone: 'eine Farbe, die fehlt',
  alone: (names) => `${names} allein`,
  over: ' über ',
  andMore: (strange) => ` und ${strange} weitere`,
  samplesAreNoNumbers: (some, strange, squares) =>
    `Die Proben ${some}${strange} sind keine Nummern von Feldern dieser Testform, 1 bis ${squares}; sie sind weggelassen.`,
  squareAndMoreWas: (twice, twiceSo) => `Mehr als einmal gemessen: Feld ${twice}${twiceSo ? ' und weitere' : ''}; es gilt das Mittel.`,
  isNoColourWrite: (cut) => `„${cut}“ ist kein Farbton: L, a und b schreiben, wie in 52.1 −3 18.4, oder # und sechs Hexziffern.`,
  isTooFarFor: (far, mostAb) => `${far} ist zu weit für a oder b, die von −${mostAb} bis ${mostAb} gehen; das Feld noch einmal lesen.`,
};
