import type { say as english } from '../../en/explore/onward.ts';

export const say: typeof english = {
  numberOfFurtherPulls: (most) => `Die Zahl weiterer Druckgänge ist ${most}; eine ganze Zahl von 1 oder mehr angeben.`,
  nothingCanFollow: 'nichts kann folgen',
  askForMoreAt: (mostPulls) => `höchstens ${mostPulls} mehr verlangen`,
  pullsAreDownAnd: (down, mostPulls, mostPulls2) =>
    `${down} Druckgänge sind gedruckt, und ein Bogen nimmt höchstens ${mostPulls} auf; ${mostPulls2}.`,
  noScreenIsAt: 'Kein Sieb ist zur Hand, um weiterzudrucken; von einem Sieb sagen, dass es da ist.',
  noInkIsAt: 'Keine Farbe ist zur Hand, um weiterzudrucken; von einer Farbe sagen, dass sie da ist.',
  choosePrintThatIt: 'Den Druck wählen, dem es näher kommen soll.',
};
