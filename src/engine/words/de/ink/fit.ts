import type { say as english } from '../../en/ink/fit.ts';

export const say: typeof english = {
  noSquareIsMeasured: 'Noch ist kein Feld gemessen; mindestens eines eintragen.',
  square: (i) => `Feld ${i}`,
  isOfInkWhich: (unknown) => `hat die Farbe „${unknown}“, die nicht in der Liste steht.`,
  needsReflectancesFrom0: (bands, mostReflectance) => `braucht ${bands} Remissionen von 0 bis ${mostReflectance}; noch einmal messen.`,
  hasNeitherCurveNor: 'hat weder Kurve noch Farbton; eines eintragen oder das Feld weglassen.',
  needsLFrom0: 'braucht L von 0 bis 100, a und b.',
  squaresContradictEachOther: (nameOf) =>
    `Die Felder widersprechen einander, am meisten ${nameOf}; prüfen, ob die zuerst gedruckte Schicht zuerst steht, und noch einmal lesen.`,
  onAnotherFilmFilm: (trapping, least, most) =>
    `Auf einer anderen Schicht wäre eine Schicht ${trapping}-mal so dick, an der Presse kommt aber nur ${least} bis ${most} vor; prüfen, ob die zuerst gedruckte Schicht zuerst steht.`,
  surfaceWouldThrowBack: (k2, least, most) =>
    `Die Oberfläche würfe ${k2} des Lichts nach innen zurück, bei Drucken kommt aber nur ${least} bis ${most} vor; prüfen, ob die zuerst gedruckte Schicht zuerst steht, und die dunkelsten Felder noch einmal lesen.`,
  isInNoSquare: (name, names) => `„${name}“ ist in keinem Feld; die Schichten sind ${names}.`,
  squareIsOfInk: (id) => `Ein Feld hat die Farbe „${id}“, die nicht in der Liste steht; eine andere wählen oder das Feld weglassen.`,
  oneSquareCannotTell: 'Ein Feld kann Schichten nicht unterscheiden; mindestens zwei angeben, aus zwei oder mehr Farben.',
  allSquaresAreOf: (name) => `Alle Felder haben eine einzige Farbe, ${name}; Felder einer anderen Farbe hinzufügen.`,
  squaresAndAreBoth: (other, i, nameOf) =>
    `Die Felder ${other} und ${i} sind beide ${nameOf}, weichen aber zu sehr voneinander ab; noch einmal lesen und eines weglassen.`,
  thePaper: 'Das Papier',
  needsBandsOfReflectance: (where, bands) =>
    `${where} braucht ${bands} Bänder der Remission von 380 bis 730 nm, 0 bis 1; noch einmal lesen.`,
  needsColourOfThree: (where) => `${where} braucht einen Farbton aus drei Zahlen, L, a und b; noch einmal lesen.`,
  hasNeitherColourNor: (where) => `${where} hat weder Farbton noch Kurve; lesen oder weglassen.`,
  squareNamesNoFilms: (index) =>
    `Feld ${index} nennt keine Schichten; sie auflisten, die zuerst gedruckte zuerst, und das blanke Papier als Papier angeben.`,
};
