import type { say as english } from '../../en/explore/places.ts';

export const say: typeof english = {
  screensMayLieUp: (placeMm, offsetSnapMm) =>
    `Siebe dürfen bis zu ${placeMm} mm von da liegen, wo sie gezeichnet sind, aber in Schritten von ${offsetSnapMm} mm; sie weiter weg liegen lassen oder in feineren Schritten.`,
  mirroredFilmsAreAsked:
    'Gespiegelte Filme sind verlangt, doch kein Sieb in der Schublade spiegelt ein anderes; die Wand ohne sie hängen lassen, dann sie erneut verlangen, um sie hinzuzufügen.',
  screensMayLieElsewhere:
    'Siebe dürfen anderswo liegen, sich drehen oder noch einmal gedruckt werden, doch jeder Druckgang liegt, wie er liegt; einen davon bewegen lassen.',
  screensMayLieElsewhereBut: (share) =>
    `Siebe dürfen anderswo liegen, doch keines hat Platz dazu, solange ${share} davon auf dem Bogen bleiben; weniger davon bleiben lassen oder einen größeren Bogen nehmen.`,
  screensMayTurnBy: (share) =>
    `Siebe dürfen sich um 90° drehen, doch keines passt so auf den Bogen, solange ${share} davon darauf bleiben; weniger davon bleiben lassen oder nur um 180° drehen.`,
};
