import type { say as english } from '../../en/ink/film.ts';

export const say: typeof english = {
  colourNeedsThreeNumbers: (lab) => `Ein Farbton braucht drei Zahlen, L, a und b; dieser ist ${lab}.`,
  noInkOnPaper: (show, show2, show3) => `Keine Farbe auf Papier kann L ${show}, a ${show2}, b ${show3} sein; `,
  nearestOfSameHue: (show, showInward) => `am nächsten bei gleichem Bunton ist L ${show}, a ${showInward}, `,
  inkWithThisColour: (show) => `Eine Farbe mit diesem Farbton über Weiß kann über Schwarz nicht so sein: L ${show}, `,
  bOverBlackIt: (show, show2) => `a ${show}, b ${show2}; möglich wäre `,
  volumeSolids: 'Festkörper nach Volumen',
  mustBeShareOf: (what, value) => `Anteil nicht möglich (${what}): mehr als 0 und höchstens 1 ist nötig, gefunden ist ${value}.`,
  filmNeedsAsMany: (kx, sx) => `Eine Schicht braucht so viele Absorptions- wie Streuwerte; es sind ${kx} und ${sx}.`,
  papersReflectanceMustBe: 'Die Remission des Papiers muss eine Liste von Zahlen sein, eine je Band.',
  papersReflectanceMustBeTo: (least, most, r, band) =>
    `Die Remission des Papiers muss ${least} bis ${most} sein; gefunden ist ${r} in Band ${band}.`,
  no: 'keine',
  filmHasBandsOf: (i, kx, sx, paper) => `Schicht ${i} hat ${kx} Bänder von kx und ${sx} von sx, das Papier aber ${paper}.`,
  absorptionAndScatteringMust: (k, s) => `Absorption und Streuung müssen 0 oder mehr und endlich sein; gefunden sind ${k} und ${s}.`,
  inkHasBandsAre: (name, kx, bands) => `Farbe ‚${name}‘ hat ${kx} Bänder; nötig sind ${bands}.`,
  meshMakersCatalogueRounded: 'Katalog eines Gewebeherstellers, dort gerundet',
  tradeArticleOf2009: 'ein Fachartikel von 2009: offene Fläche und Dicke gemessen, niedriger als die Formel',
  countAndThreadOnly: 'nur Feinheit und Faden; Öffnung, offene Fläche und Volumen nach Formel, Gewebe 1,55 Fäden dick',
  meshOfThreadsCm: (threadsPerCm, threadUm, floor) =>
    `Ein Gewebe von ${threadsPerCm} Fäden/cm von ${threadUm} µm lässt keine Öffnung: nötig sind Fäden unter ${floor} µm.`,
  meshsOpenAreaMust: (stated) => `Die offene Fläche eines Gewebes muss zwischen 0 und 1 liegen; gefunden ist ${stated}.`,
  meshMustCarryMore: (volume) => `Ein Gewebe muss mehr als 0 und weniger als 1000 cm³/m² fassen; gefunden ist ${volume}.`,
  n450OrBy: '45°/0° oder nach Augenmaß',
  sphereGlossLeftOut: 'Kugel, ohne Glanz',
  sphereGlossIncluded: 'Kugel, mit Glanz',
  noSurfaceAsProjects: 'keine Oberfläche, wie in früheren Projekten',
  filmLaidOnAnother:
    'Eine Schicht auf einer anderen Schicht ist dünner. Offsetdrucke zeigen etwa 0,68 (an veröffentlichten Überdrucken gefunden); Siebdruck liegt zwischen 0,7 und 1, übliche Praxis, ohne Quelle. Den eigenen Wert zeigt eine gedruckte Testform.',
  shareThatSurfaceReflects: (k1, least, most) =>
    `Der Anteil, den die Oberfläche außen spiegelt, k1, ist ${k1}; ${least} bis ${most} angeben.`,
  shareThatSurfaceThrows: (k2, least, most) =>
    `Der Anteil, den die Oberfläche nach innen zurückwirft, k2, ist ${k2}; ${least} bis ${most} angeben.`,
  filmOnFilmCannot: (bad, least, most) =>
    `Eine Schicht auf einer Schicht kann nicht ${bad}-mal so dick sein wie auf dem Papier; ${least} bis ${most} % angeben.`,
  strokesMustBeWhole: (strokes) => `Rakelzüge müssen eine ganze Zahl sein, 1 oder mehr; gefunden ist ${strokes}.`,
  furtherStrokeMustAdd: (strokeGain) => `Ein weiterer Rakelzug muss 0 oder mehr des ersten hinzufügen; gefunden ist ${strokeGain}.`,
};
