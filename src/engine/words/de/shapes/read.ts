import { plural } from '../../language.ts';
import type { say as english } from '../../en/shapes/read.ts';

export const say: typeof english = {
  atLineHasPoints: (name, line, quote) => `<${name}> in Zeile ${line} hat points="${quote}", was keine Liste von Zahlen ist; berichtigen.`,
  at: (name, place) => `<${name}> bei ${place}`,
  itDrawsMoreThan: (maxDrawn) => `sie zeichnet mehr als ${maxDrawn} Elemente; die Zeichnung vereinfachen.`,
  atLineHasTransform: (name, line, quote) =>
    `<${name}> in Zeile ${line} hat transform="${quote}", was nicht gelesen werden kann; berichtigen.`,
  itsOutlinesHaveMore: (maxSegments) => `die Umrisse haben mehr als ${maxSegments} Linien und Kurven; die Zeichnung vereinfachen.`,
  itsStylesAreLonger: (maxStyleText) => `die Stile sind länger als ${maxStyleText} Zeichen; die Füllungen an die Elemente schreiben.`,
  itsStyleRulesTake: 'die Stilregeln abzugleichen dauert zu lange; die Füllungen an die Elemente schreiben.',
  thereAreStyleRules: (rules, elements) =>
    `es gibt ${rules} Stilregeln für ${elements} Elemente; die Füllungen an die Elemente schreiben.`,
  lineColumn: (line, column) => `Zeile ${line}, Spalte ${column}`,
  oneWas: (one) => `1 ${one} wurde`,
  were: (count, more) => `${count} ${more} wurden`,
  textsLeftOutSince: (n) =>
    `${plural(n, { one: 'ein Text wurde', other: `${n} Texte wurden` })} weggelassen, denn Buchstaben sind noch keine Umrisse; Text zuerst in Umrisse umwandeln.`,
  partsThatAreNo: (n) =>
    `${plural(n, { one: 'ein Teil, der keine Zeichnung ist, wurde', other: `${n} Teile, die keine Zeichnung sind, wurden` })} weggelassen, etwa Film, Ton oder Webseite; als Pfad zeichnen.`,
  movementsLeftOutDrawing: (n) =>
    `${plural(n, { one: 'eine Bewegung wurde', other: `${n} Bewegungen wurden` })} weggelassen; die Zeichnung gilt so, wie sie in Ruhe steht.`,
  scriptsLeftOutAs: (n) =>
    `${plural(n, { one: 'ein Skript wurde', other: `${n} Skripte wurden` })} weggelassen, denn keines wird je ausgeführt.`,
  picturesLeftOutSince: (n) =>
    `${plural(n, { one: 'ein Bild wurde', other: `${n} Bilder wurden` })} weggelassen, denn ein Bild hat keine Umrisse; zuerst in Umrisse nachzeichnen.`,
  partsOfUnknownKind: (n) =>
    `${plural(n, { one: 'ein Teil unbekannter Art wurde', other: `${n} Teile unbekannter Art wurden` })} weggelassen; als Pfad zeichnen.`,
  areasThatFadeFrom: (n) =>
    `${plural(n, { one: 'eine Fläche mit Farbverlauf wurde', other: `${n} Flächen mit Farbverlauf wurden` })} nach dem Umriss genommen, denn eine Farbe druckt flächig.`,
  areasFilledWithPattern: (n) =>
    `${plural(n, { one: 'eine Fläche mit Muster wurde', other: `${n} Flächen mit Muster wurden` })} nach dem Umriss genommen; um das Muster zu drucken, es in Pfade umwandeln.`,
  areasThatFadeFromColour: (n) =>
    `${plural(n, { one: 'eine Fläche mit Farbverlauf wurde', other: `${n} Flächen mit Farbverlauf wurden` })} weggelassen.`,
  areasFilledWithPatternLeft: (n) =>
    `${plural(n, { one: 'eine Fläche mit Muster wurde', other: `${n} Flächen mit Muster wurden` })} weggelassen.`,
  areasWhoseFillIs: (n) =>
    `${plural(n, { one: 'eine Fläche, deren Füllung nicht in der Datei ist, wurde', other: `${n} Flächen, deren Füllung nicht in der Datei ist, wurden` })} weggelassen; eine einfache Füllung geben.`,
  thingsInOtherFiles: (n) =>
    `${plural(n, { one: 'ein Teil in einer anderen Datei wurde', other: `${n} Teile in anderen Dateien wurden` })} weggelassen, denn von außerhalb der Datei wird nichts geholt; in die Datei kopieren.`,
  copiesOfSomethingLeft: (n) =>
    `${plural(n, { one: 'eine Kopie wurde', other: `${n} Kopien wurden` })} weggelassen, weil das Urbild nicht in der Datei ist oder nicht gezeichnet werden kann; in der Datei zeichnen.`,
  partsLeftOutThat: (n) =>
    `${plural(n, { one: 'ein Teil wurde', other: `${n} Teile wurden` })} weggelassen, weil im Kreis aus sich selbst gemacht; den Kreis auflösen.`,
  partsLeftOutWhose: (n) =>
    `${plural(n, { one: 'ein Teil wurde', other: `${n} Teile wurden` })} weggelassen, weil der Schnittumriss von einer Art ist, die nicht gelesen wird; die Form zuerst daran entlang schneiden.`,
  maskedPartsLeftOut: (n) =>
    `${plural(n, { one: 'ein maskierter Teil wurde', other: `${n} maskierte Teile wurden` })} weggelassen, denn eine Schablone ist nur offen oder zu; die Form zuerst nach der Maske schneiden.`,
  effectsSuchAsBlurs: (n) =>
    `${plural(n, { one: 'ein Effekt, etwa Unschärfe oder Schatten, wurde', other: `${n} Effekte, etwa Unschärfe oder Schatten, wurden` })} weggelassen; es gilt der bloße Umriss.`,
  oneLine: 'einer Linie',
  lines: (n) => `${n} Linien`,
  arrowheadsOrOtherMarks: (n) => `Pfeilspitzen oder andere Marken an ${n} wurden weggelassen; zuerst in Pfade umwandeln.`,
  partsLeftOutThatIs: (n) =>
    `${plural(n, { one: 'ein Teil wurde', other: `${n} Teile wurden` })} weggelassen, weil um einen Punkt gedreht oder skaliert, der nicht gelesen wird; die Transformation zuerst anwenden.`,
  sidesOrRadiiBelow: (n) =>
    `${plural(n, { one: 'eine Seite oder ein Radius unter null gilt', other: `${n} Seiten oder Radien unter null gelten` })} als nicht vorhanden; eine Größe über null geben.`,
  atLineHasWhich: (name, line, attribute, quote) =>
    `<${name}> in Zeile ${line} hat ${attribute}="${quote}", was keine Länge ist; eine Zahl mit mm, cm, in, pt oder px schreiben.`,
  atLineHasViewBox: (name, line, quote) => `<${name}> in Zeile ${line} hat viewBox="${quote}", was nicht vier Zahlen sind.`,
  strokesHaveMoreThan: (maxPoints) => `Konturen haben mehr als ${maxPoints} Ecken; vereinfachen.`,
  strokeReachesTooFar: 'Eine Kontur reicht zu weit hinaus; ihre Breite prüfen.',
  besideGroups: 'neben den Gruppen',
  group: (place) => `Gruppe ${place}`,
  thereIsWhereCommand: (shown) => `wo ein Befehl stehen sollte, steht ${shown}`,
  itDoesNotBegin: 'es beginnt nicht mit M oder m',
  thereIsWhereNumber: (shown, command) => `wo eine Zahl des Befehls ‚${command}‘ stehen sollte, steht ${shown}`,
  numberOfCommandBefore: (command, at) => `eine Zahl des Befehls ‚${command}‘ vor Zeichen ${at} liegt außerhalb des Bereichs`,
  anEnd: 'ein Ende',
  atSign: (quote, at) => `„${quote}“ bei Zeichen ${at}`,
  itsOutlinesReachMore: (maxReachMm) =>
    `die Umrisse reichen mehr als ${maxReachMm} m von der Ecke der Seite weg; Einheiten und viewBox prüfen.`,
  itsOutlinesHaveMoreThan: (maxPoints) => `die Umrisse haben mehr als ${maxPoints} Ecken; die Zeichnung vereinfachen.`,
  itsOutlinesHaveToo:
    'die Umrisse haben zu viele Ecken nebeneinander oder kreuzen oder überlagern einander zu oft; Formen verbinden, vereinfachen oder auf mehrere Dateien aufteilen.',
  fileCannotBeRead: (quote) => `die Datei kann nicht gelesen werden (${quote}); noch einmal als einfaches SVG speichern.`,
  fileIsNotText: 'die Datei ist kein Text; eine SVG-Datei wählen.',
  fileHasMillionCharacters: (round, maxText) =>
    `die Datei hat ${round} Millionen Zeichen, mehr als ${maxText} Millionen; die Zeichnung vereinfachen.`,
  fileIsEmptyChoose: 'die Datei ist leer; eine SVG-Datei wählen.',
  fileIsNotSVG: 'die Datei ist keine SVG-Zeichnung; eine Datei wählen, die als einfaches SVG gespeichert ist.',
  nothingInItIs: 'nichts darin ist gefüllt oder gezeichnet; mindestens einer Form eine Füllung oder eine Linie geben.',
  itsFilledAreaIs: (minSideMm) => `die gefüllte Fläche ist kleiner als ${minSideMm} mm; Einheiten und viewBox prüfen.`,
  edgeOfItsPage: (share) =>
    `der Rand der Seite schneidet ${share} % von dem ab, was gezeichnet ist; um es zu behalten, die Seite größer machen.`,
  itsWhiteAreasAre:
    'weiße Flächen gelten als Papier: Löcher, wo sie über etwas liegen, sonst nichts; um sie zu drucken, eine andere Füllung geben.',
  itsWhiteAreasAreTaken: 'weiße Flächen gelten als Druckfarbe wie jede andere.',
  itsWhiteAreasAreLeft: 'weiße Flächen sind weggelassen, als wären sie nicht da.',
  whiteRectangleAsLarge:
    'ein weißes Rechteck, so groß wie die Seite, gilt als Papier und ist weggelassen; um es zu drucken, eine andere Füllung geben.',
  allThatIsFilled: 'alles Gefüllte darin ist weiß, also gilt das Weiß als Druckfarbe.',
  fillCoversWholePage:
    'eine Füllung bedeckt die ganze Seite, so dass die Form ein voller Bogen ist; den Hintergrund herausnehmen, um zu behalten, was darauf liegt.',
  fileBreaksOffOr: (here, what) =>
    `die Datei bricht ab oder ist nicht wohlgeformt (${here}: ${what}); noch einmal als einfaches SVG speichern.`,
  fileDeclaresEntitiesOf: 'die Datei erklärt eigene Entitäten, die nicht gelesen werden; noch einmal als einfaches SVG speichern.',
  thereAreMoreThan: (maxElements) => `es gibt mehr als ${maxElements} Elemente; die Zeichnung vereinfachen.`,
  elementsLieMoreThan: (maxDepth, here) =>
    `Elemente liegen tiefer als ${maxDepth} ineinander (${here}); die Gruppierung der Zeichnung aufheben.`,
};
