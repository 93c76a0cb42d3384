import { counted, parts, plural } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/ui/print.ts';

export const say: typeof english = {
  phoneCannotReachOpen: (host) =>
    `Ein Telefon kann ${host} nicht erreichen: die App unter einer Adresse öffnen, die auch das Telefon erreicht, und den Code dort zeigen.`,
  inAnyOrder: 'in beliebiger Reihenfolge',
  inLayers: (layers) => `in ${counted(layers, { one: 'Schicht', other: 'Schichten' })}`,
  pulls: (members, layers, named, members2) =>
    `${counted(members, { one: 'Druckgang', other: 'Druckgänge' })} ${layers}: ${named}${members2}`,
  free: (members, free, open) => `${members} ${free ? 'frei' : 'Gänge'} ${open}`,
  choosePullToSee: 'Einen Druckgang wählen, um zu sehen, was ihn an seinem Platz hält.',
  more: (more) => `${more} weiteren`,
  liesOver: (named) => `liegt über ${named}`,
  under: (named) => `unter ${named}`,
  nothingHoldsPull: (at) => `Nichts hält Druckgang ${at}`,
  and: ' und ',
  pullLiesSoThat: (at, noOver, sides) => `Druckgang ${at} ${noOver ? 'liegt ' : ''}${sides}, so dass es zu sehen ist`,
  itHasNoOther: 'er hat keinen anderen Platz, an dem er dasselbe druckt.',
  atAnyPlaceFrom: (from, to, minDeltaE) => `an jedem Platz von ${from} bis ${to} bleibt der Druck innerhalb von ΔE ${minDeltaE} gleich.`,
  firstDownAtLeft: 'Zuerst Gedrucktes links, Zeile um Zeile.',
  panelsPullsOfOne: (theParts) =>
    `${counted(theParts, { one: 'Tafel', other: 'Tafeln' })}: Druckgänge der einen halten die einer anderen nicht. In jeder steht zuerst Gedrucktes links, Zeile um Zeile.`,
  pullsOfOneColumn: (theParts, free, overlapping) =>
    `${theParts} Druckgänge einer Spalte halten einander nicht, und „freie“ dürfen in beliebiger Reihenfolge gedruckt werden. ${free} von ${overlapping} überlappenden Paaren sind freie Tausche.`,
  foldAll: 'Alle einklappen',
  unfoldAllGroups: (groups) => `Alle ${groups} Gruppen ausklappen`,
  orderGraphInGroups: (pulls) => `Reihenfolgengraph in Gruppen, ${counted(pulls, { one: 'Druckgang', other: 'Druckgänge' })}`,
  withPullDeltaEOver: (i, b, deltaE, round) => `${i}mit Druckgang ${b} ΔE ${deltaE} auf ${round} mm²`,
  whereItShowsMost: (own) => parts`Wo es am meisten zu sehen ist: ${own}.`,
  pullsAndMmDiffer: (first, then, round, deltaE) => `Druckgänge ${first} und ${then}: ${round} mm² unterscheiden sich um ΔE ${deltaE}`,
  noTwoPullsOverlap: 'Keine zwei Druckgänge überlappen sich: jede Reihenfolge gibt denselben Druck.',
  ofOverlappingPairsAre: (free, overlapping, minDeltaE) =>
    `${free} von ${overlapping} ${plural(overlapping, { one: 'überlappenden Paar ist ein freier Tausch', other: 'überlappenden Paaren sind freie Tausche' })}: vertauscht unterscheiden sie sich um weniger als ΔE ${minDeltaE}.`,
  orderGraphPulls: (pulls) => `Reihenfolgengraph, ${counted(pulls, { one: 'Druckgang', other: 'Druckgänge' })}`,
  whereOrderMattersMost: 'Wo die Reihenfolge am meisten ausmacht',
  printedAreaAgainstLays: (offset) => `Druckfläche zu den Anlagen, den drei Anschlägen des Papiers: ${offset}`,
  width: 'Breite',
  resolution: 'Auflösung',
  pixelsColouredAsHere: (wide, high) => `${wide} × ${high} Pixel, farbig wie hier: ein Bild zum Ansehen, keine Filmvorlage.`,
  trueSizeInMm:
    'Wahre Größe in mm, je Druckgang eine Ebene, jede in der Farbe eines Rakelzugs auf Weiß und multipliziert: wo Farben sich überlappen, zeigen andere Programme einen anderen Farbton als die Schichten hier.',
  as: 'als',
  file: 'Datei',
  pngPicture: 'PNG, ein Bild',
  svgDrawing: 'SVG, eine Zeichnung',
  fileCarriesRecipeDropped: 'Die Datei trägt das Rezept: in die Truhe gezogen, gibt sie es zurück.',
  notDrawnYet: (words) => `${words}, noch nicht gezeichnet`,
  madeSoFar: 'Bisher gemacht',
  cancel: 'Abbrechen',
  save: 'Speichern',
  pictureOfCouldNot: (title, error) => `Das Bild von „${title}“ konnte nicht gezeichnet werden: ${error}`,
  thisBrowserGaveNo: 'dieser Browser gab keine Zeichenfläche',
  thisBrowserMadeNo: 'dieser Browser machte kein PNG',
  freeSwapWithPull: (index) => `; ein freier Tausch mit Druckgang ${index}`,
  barePaper: 'blankes Papier',
  stateStripFirstDown: 'Streifen der Stände, vom ersten Druckgang zum letzten',
  freeSwapTwoNeighbouring: (b, minDeltaE) =>
    parts`${b} freier Tausch: zwei benachbarte Druckgänge, die die Plätze tauschen dürfen; der Druck bleibt innerhalb von ΔE\u00a0${minDeltaE} gleich.`,
  noOffset: 'ohne Versatz',
  turned: 'gedreht',
  mmRightMmDown: (offset, offset2) => `${offset} mm nach rechts, ${offset2} mm nach unten`,
};
