import type { say as english } from '../../en/order/groups.ts';

export const say: typeof english = {
  sizeUnderWhichDifference: (minAreaMm2) => `Die Größe, unter der ein Unterschied nicht zählt, ist ${minAreaMm2} mm²; 0 oder mehr angeben.`,
  onePullWas: 'Ein Druckgang ist',
  pullsWere: (n) => `${n} Druckgänge sind`,
  chosenChooseTwoTo: (n) => `${n} gewählt; zwei bis sechs wählen, um alle ihre Reihenfolgen zu sehen.`,
};
