import type { say as english } from '../../en/inks/paper.ts';

export const say: typeof english = {
  paperHasCurveOf: (sample) => `Das Papier hat die Kurve von ${sample}.`,
  papersToStartFrom: 'Papiere zum Anfangen',
  paper: (name) => `Papier: ${name}`,
  inventedToStartFrom: 'Erfunden, zum Anfangen; das eigene messen, um sicher zu sein.',
  itsOwnColour: 'Sein eigener Farbton',
  colourOfPaper: 'Farbton des Papiers',
  takeNearest: 'Den nächsten nehmen',
  measuredCurve: 'Eine gemessene Kurve',
  sampleOfBarePaper: 'Probe des blanken Papiers',
  useIt: 'Verwenden',
  labAloneItsCurve: 'Nur ein Lab: seine Kurve ist geraten.',
  nameOfPaper: 'Name des Papiers',
  sheet: 'Bogen',
  width: 'Breite',
  height: 'Höhe',
  printablePart: 'Bedruckbarer Teil',
  fromLeft: 'Von links',
  fromTop: 'Von oben',
  notSavedYet: (message) => `${message} Noch nicht gespeichert.`,
  paperStaysAsIt: (message) => `${message} Das Papier bleibt, wie es war.`,
};
