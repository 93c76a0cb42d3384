import type { say as english } from '../../en/colour/colour.ts';

export const say: typeof english = {
  reflectanceRunsFromTo: (least, most, band, r) =>
    `Ein Reflexionsgrad geht von ${least} bis ${most}; Band ${band} hat ${r}, also Prozent durch 100 teilen.`,
  twoColoursOfThree: (stringify, stringify2) =>
    `Zwei Farbtöne aus je drei Zahlen, L, a und b, sind nötig; diese sind ${stringify} und ${stringify2}.`,
  none: 'keine',
  reflectanceNeedsBands380: (bands, reflectance) =>
    `Ein Reflexionsspektrum braucht ${bands} Bänder, 380 bis 730 nm in Schritten von 10 nm; dieses hat ${reflectance}.`,
  reflectanceNeedsNumberIn: (band, reflectance) =>
    `Ein Reflexionsspektrum braucht eine Zahl in jedem Band; Band ${band} hat ${reflectance}.`,
  colourNeedsThreeNumbers: (cut) => `Ein Farbton braucht drei Zahlen, L, a und b; dies ist ${cut}.`,
  isNotColourWrite: (hex) => `„${hex}“ ist kein Farbton: # und sechs Hexadezimalziffern schreiben.`,
};
