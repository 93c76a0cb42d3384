import type { say as english } from '../../en/shapes/trace.ts';

export const say: typeof english = {
  pictureHasOnlyOne: 'das Bild hat nur ein einziges Grau; eines wählen, auf dem etwas gezeichnet ist.',
  nothingIsLeftOf: 'als Farbe bleibt nichts davon; die Schwelle verschieben oder nur kleinere Flecken weglassen.',
  itsOutlinesHaveCorners: (corners, mostCorners) =>
    `die Umrisse haben ${corners} Ecken, mehr als ${mostCorners}; größere Flecken weglassen oder Umrisse weiter abweichen lassen.`,
};
