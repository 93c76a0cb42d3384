import type { say as english } from '../../en/explore/veil.ts';

export const say: typeof english = {
  screenIsNotIn: (missing) => `Das Sieb ‚${missing}‘ ist nicht in der Schublade; andere für den Schleier wählen.`,
  wholeArea: 'Ganze Fläche',
  letdownOf1To: (bad) => `Ein Verschnitt von 1 zu ${bad} lässt sich nicht mischen; 0 bis 1000 Teile Transparentweiß angeben.`,
  inkIsNotIn: (id) => `Die Farbe ‚${id}‘ ist nicht in der Schublade; andere für den Schleier wählen.`,
  stackHasNoPulls: 'Der Stapel hat keine Druckgänge, über die ein Schleier gelegt werden kann; zuerst einen auf die Werkbank legen.',
  numberOfIsGive: (what, value) => `Die Zahl ${what} ist ${value}; eine ganze Zahl von 1 oder mehr angeben.`,
};
