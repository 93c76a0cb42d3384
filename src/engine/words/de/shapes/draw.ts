import type { say as english } from '../../en/shapes/draw.ts';

export const say: typeof english = {
  lineHasMoreThan: 'Die Linie hat mehr als 10.000 Punkte; in zwei Zügen schneiden.',
  drawLineOfTwo: 'Eine Linie von zwei oder mehr Punkten quer über die Form ziehen.',
  lineDoesNotCut: 'Die Linie teilt die Form nicht: ganz hindurch ziehen, von außerhalb eines Randes bis außerhalb eines anderen.',
  shapeWouldComeTo: (mostPieces) => `Die Form zerfiele in mehr als ${mostPieces} Stücke; eine einfachere Linie ziehen.`,
  piece: (name, i) => `${name}, Stück ${i}`,
  nothingIsLeftAfter: 'Nach dem Schnitt bleibt nichts: die andere Form bedeckt alles; sie beiseiterücken.',
  twoShapesHaveNothing: 'Die beiden Formen haben, wo sie liegen, nichts gemeinsam; die eine über die andere schieben.',
  nothingIsLeftShape: 'Es bleibt nichts: die Form ist schmaler als das Doppelte dessen, um das sie verengt wird; weniger verengen.',
  nothingIsLeftOf: 'Von der Form bleibt nichts; andere Zahlen wählen.',
  lineHasMoreThan10: 'Die Linie hat mehr als 10.000 Punkte; in kürzeren Stücken zeichnen und diese verbinden.',
  shapeNeedsAtLeast: 'Eine Form braucht mindestens drei Punkte, die auseinanderliegen; mehr setzen oder eine längere Linie zeichnen.',
  shapeCanBeThere: (mostTimes) => `Eine Form kann 1- bis ${mostTimes}-mal da sein; eine ganze Zahl dazwischen angeben.`,
  outlineEnclosesNothingSet: 'Der Umriss umschließt nichts; einen Punkt neben die Linie durch die anderen setzen.',
  outlineHasTooMany:
    'Der Umriss hat zu viele kleine Wendungen; ihn weiter vom Stift abweichen lassen oder in Stücken zeichnen und diese verbinden.',
};
