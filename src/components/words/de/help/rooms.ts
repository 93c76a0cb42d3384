import type { say as english } from '../../en/help/rooms.ts';

export const say: typeof english = {
  shapesAreOutlinesIn:
    'Formen sind Umrisse in Millimetern; ein Sieb trägt eine oder mehrere davon, jede an ihrem Platz auf dem Bogen. Alles andere wird von diesen Sieben gedruckt.',
  drawerShapesOnLeft: 'Die Schublade: links Formen, in der Mitte ein Sieb auf dem Bogen, rechts die Liste der Siebe.',
  bringInDrawings: 'Zeichnungen einlesen',
  dropSVGFilesAnywhere:
    'SVG-Dateien irgendwo im Raum ablegen oder *SVG wählen…* drücken. Linien werden zu dem, was ihr Strich bedeckt. Eine Zeichnung aus mehreren Gruppen oder Farben fragt, ob sie eine Form ist oder viele.',
  traceCutOutOr: 'Einen Scherenschnitt oder Scan nachzeichnen',
  dropPhotoOrScan:
    'Ein Foto oder einen Scan (PNG, JPEG, WebP) ablegen oder *Bild nachzeichnen…* drücken: ungleiches Licht wird herausgerechnet, Flecken werden weggelassen, und eine Linie über etwas von bekannter Länge gibt die Größe.',
  drawCutAndJoin: 'Zeichnen, schneiden, verbinden',
  drawShapeFreehandOr:
    '*Form zeichnen…*: frei oder Punkt um Punkt mit Maus, Finger oder Tasten; Ziehen holt Griffe aus einem Punkt. An einer gewählten Form verbindet *Schneiden und verbinden…* sie mit einer anderen, schneidet eine aus der anderen, verschmilzt, spiegelt, dreht, erweitert, verengt und wiederholt sie um mm. *Entlang einer Linie schneiden…* geht hindurch wie mit einer Klinge.',
  makeScreen: 'Ein Sieb machen',
  chooseShapeItBecomes:
    'Eine Form wählen: sie wird ein eigenes Sieb oder kommt mit *Auf das Sieb legen* auf das gewählte. Auf dem Bogen ziehen, oder Platz, Drehung und Größe daneben eintragen.',
  setPaper: 'Das Papier festlegen',
  sizeAndMarginsOf: 'Größe und Ränder des Bogens stehen hinter dem Knopf neben der Überschrift der Siebe.',
  sayWhatIsMade: 'Sagen, was gemacht ist',
  screenIsDrawnTo: 'Ein Sieb ist gezeichnet, zu machen oder gemacht. Die Wand kann sich an die zur Hand halten.',
  goOn: 'Weitergehen',
  putOnBenchLays: '*Auf die Werkbank* legt das Sieb als letzten Druckgang auf den Stapel.',
  inkIsHowMuch:
    'Eine Farbe ist, wie viel Licht ihre Schicht in 36 Bändern streut und schluckt, so dass sich ausrechnen lässt, was sie über jeder anderen tut. Die Tafel zeigt jede Farbe über jeder anderen; sie ist eine Schätzung, bis sie an einem wirklichen Druckgang geprüft ist.',
  inksShelfOfInks: 'Farben: links das Regal der Farben, in der Mitte die Tafel jeder Farbe über jeder anderen.',
  addInk: 'Neue Farbe',
  pressAddInkFrom:
    '*Neue Farbe* drücken: aus einer Messdatei, aus zwei Farbtönen eines Aufzugs (einer über Weiß, einer über Schwarz), aus einem Foto aufgenommen oder aus einem Farbton geschätzt.',
  mixAndLetDown: 'Mischen und verschneiden',
  openLetItDown:
    '*Verschneiden* unter den Farbtönen der Farbe öffnen, oder *Ton treffen* drücken, um eine Mischung von Grundfarben für einen Farbton zu finden.',
  readColour: 'Einen Farbton ablesen',
  pointAtSquareOf: 'Auf ein Feld der Tafel zeigen; ein Klick gibt seine Kurve.',
  checkItAgainstPull: 'An einem Druckgang prüfen',
  printAsTargetGives:
    '*Als Testform drucken* gibt Felder zum Drucken; *Diese 12 drucken* nur die wenigen, die am meisten sagen. *Gemessenes eintragen* passt Farben und Farbannahme daran an.',
  wallHangsManyDifferent:
    'Die Wand hängt viele verschiedene Drucke, die mit den eigenen Sieben und Farben möglich sind, die verschiedensten zuerst. Derselbe Name und dieselben Einstellungen hängen immer dieselben Drucke.',
  wallManyPrintsHanging: 'Die Wand: viele Drucke hängen, links die Einstellungen, und der ausgewählte Druck mit dem, was ihn abhebt.',
  look: 'Ansehen',
  walkAlongPrintsWith:
    'Mit den Pfeiltasten oder einem Klick an den Drucken entlanggehen; ein Tippen auf einen am Rand holt ihn ganz ins Bild. *Näher* und *Ferner*, ein Rad oder zwei Finger holen sie heran.',
  sayWhatMayChange: 'Sagen, was sich ändern darf',
  orderInksHowPulls:
    'Reihenfolge, Farben, wie Druckgänge liegen, was wegbleibt: in den Einstellungen. *Was bleiben muss* hält einen Druckgang zuerst, zuletzt, in seiner Farbe oder unter einem anderen.',
  keep: 'Behalten',
  keepPutsPrintInto: '*Behalten* legt einen Druck als Rezept in die Truhe; *Anheften* hängt ihn auf jeder späteren Wand zuerst.',
  findMoreLikeIt: 'Mehr davon finden',
  moreFromThisPrint:
    '*Mehr davon* findet andere, näher an ihm oder weg von ihm; von zwei ausgewählten, was dazwischen liegt, oder kreuzt sie.',
  arrange: 'Anordnen',
  arrangeByMeasuresAlike:
    '*Anordnen* nach Maßen, Ähnliches beieinander, oder nach der eigenen Wahl: die Wand lernt aus dem, was ausgewählt, angeheftet, behalten und beantwortet wird, und kann es auf Wunsch vergessen. Weiß sie genug, findet *Mehr, wie ich wähle* weitere Drucke danach.',
  beforeVisit: 'Vor einem Besuch',
  screensToMakeTells:
    '*Siebe zu machen* sagt, welche Siebe zu machen sind, wie viele der gewählten Drucke jede Zahl davon ergibt und was jedem Druck fehlt.',
  oneStackLargeStrip:
    'Ein Stapel, groß. Der Streifen darunter zeigt den Bogen nach jedem Druckgang, vom blanken Papier bis zum zuletzt gedruckten.',
  benchPrintInMiddle: 'Die Werkbank: in der Mitte ein Druck, daneben sein Druckgang, darunter der Streifen seiner Stände.',
  changeOrder: 'Die Reihenfolge ändern',
  dragStateAlongStrip: 'Einen Stand den Streifen entlangziehen, oder ihn wählen und Alt mit einer Pfeiltaste drücken.',
  changePull: 'Einen Druckgang ändern',
  chooseItsStateInk:
    'Seinen Stand wählen: Farbe, Rakelzüge und Versatz stehen neben dem Druck. Zum Bewegen auf dem Bild ziehen oder die Pfeiltasten nehmen.',
  readPlace: 'Eine Stelle ablesen',
  clickPictureItsColour: 'Auf das Bild klicken: ihr Farbton, wie weit er abweichen kann und welche Druckgänge dort liegen.',
  softenIt: 'Weicher machen',
  findVeilLooksFor:
    '*Schleier suchen* sucht einen weiteren lasierenden Druckgang, der den Kontrast zwischen dem mildert, was unter ihm liegt.',
  seeWhatNext: 'Sehen, was nun',
  whatNextHangsWhat: '*Was nun?* hängt, was ein weiterer Druckgang oder mehrere daraus machen würden.',
  lookFromAfar: 'Von weitem ansehen',
  underFilmsApartTwo:
    'Unter *Schichten einzeln, zwei Drucke, von weitem…*: die Schichten abheben, zwischen zwei Drucken wischen oder blinken, ihn aus 0,5, 2 und 8 m sehen oder eine Stelle davon auf sechs passerungenauen Bögen.',
  keepIt: 'Behalten',
  keepAsRecipePuts: '*Rezept behalten* legt es in die Truhe.',
  chestHoldsRecipesThat:
    'Die Truhe hält die behaltenen Rezepte: jedes hat alles, was es braucht, um seinen Druck aufzubauen, und sagt, woher es kam. Besuche an der Presse und was in ihnen gedruckt wurde, stehen darunter.',
  chestKeptRecipesWith: 'Die Truhe: behaltene Rezepte mit ihren Bildern und dem, was mit jedem getan werden kann.',
  seeHowItIs: 'Sehen, wie es aufgebaut ist',
  howItIsBuilt: '*Wie es aufgebaut ist* zeigt es Druckgang um Druckgang.',
  takeItToPress: 'An die Presse bringen',
  takeToPressGives: '*An die Presse* gibt ihm dort Bögen.',
  printEdition: 'Eine Auflage drucken',
  editionNumbersSheetsProofs: '*Auflage…* nummeriert Bögen, Probedrucke und Unterschriften und schreibt ihre Papiere.',
  giveItAway: 'Weitergeben',
  saveAsFileOr:
    '*Als Datei speichern* oder *Als Bild speichern…*: das Bild trägt sein Rezept und gibt es zurück, wenn es hier abgelegt wird.',
  pressTurnsRecipesAnd:
    'Die Presse macht aus Rezepten und Bogenzahlen eine Folge von Einrichtungen: ein Sieb in einer Farbe mit einem Versatz und die Bögen, auf die es kommt. Sie sagt, was wann trocknet und wie nahe die Reihenfolge am Wenigsten ist, das möglich ist.',
  pressRecipesWithNumbers: 'Die Presse: Rezepte mit Bogenzahlen und die Druckfolge als Raster aus Einrichtungen und Bögen.',
  plan: 'Planen',
  giveRecipesTheirSheets:
    'Den Rezepten ihre Bögen geben, dann *Druckfolge suchen* drücken. *Werkstattwerte* sind die eigenen: Stunden, Trocknen, Trockenhorden, Druckgänge je Stunde.',
  shortenIt: 'Kürzer machen',
  readAdviceBelowOrder:
    'Den Rat unter der Reihenfolge lesen: jede Zeile ist neu geplant und sagt, was sie spart und was sie an den Drucken ändert.',
  largerThanBed: 'Größer als der Drucktisch',
  cutIntoSectionsBelow:
    '*In Abschnitte teilen…*, unter einem Druck, der Bögen hat, macht aus jedem Abschnitt einen eigenen Druck mit eigenen Schablonen, Filmen und Einrichtungen.',
  printPapers: 'Die Papiere drucken',
  benchSheetDayCards: 'Ein Tagesblatt je Tag, Karten, Laufzettel, Farbzettel für Töpfe, Schablonen zum Vorbereiten: als PDF oder gedruckt.',
  logAtPress: 'An der Presse protokollieren',
  tickSheetsAsThey:
    'Bögen abhaken, wie sie gedruckt werden. *Mehrere anders…* und verdruckte Bögen sind mit ein, zwei Tippern gesagt, *Zusätzlicher Druckgang…* sagt, was kein Plan hat; die Uhr folgt dem, was wirklich getan wurde.',
  whenDayGoesOtherwise: 'Wenn der Tag anders läuft',
  planRestFindsOrder:
    '*Den Rest planen* findet eine Reihenfolge für das, was bleibt, nie schlechter, als wie bisher weiterzugehen; es kann rückgängig gemacht werden.',
  takeItAlong: 'Mitnehmen',
  visitIsOneFile: 'Der Besuch ist eine Datei für ein anderes Tablet; eine Einrichtung kommt durch einen Code auf ein Telefon.',
  allOrdersOfTwo:
    'Alle Reihenfolgen von zwei bis sechs Druckgängen, gruppiert nach den Drucken, die sich wirklich unterscheiden. Zum Zeigen und zum Herausfinden, warum die Reihenfolge an einer Stelle zählt und an einer anderen nicht.',
  lessonLargePrintIts: 'Die Lektion: ein großer Druck, daneben seine Druckgänge, und ringsum alle verschiedenen Drucke.',
  buildIt: 'Aufbauen',
  pressSpaceBarOne: 'Die Leertaste drücken: ein Druckgang mehr auf dem Bogen.',
  dragPullInList: 'Einen Druckgang in der Liste neben dem Druck ziehen oder seine zwei Pfeile nehmen.',
  makePrintsAlike: 'Drucke gleich machen',
  makeInkClearerOr: 'Eine Farbe klarer oder deckender machen oder eine Form bewegen und zusehen, wie Drucke zusammenfallen.',
  compare: 'Vergleichen',
  chooseTwoPrintsTo: 'Zwei Drucke wählen, um zwischen ihnen zu blinken; umrandet ist, wo sie sich unterscheiden.',
  guessFirst: 'Zuerst raten',
  guessHidesAnswerUntil: '*Raten* verbirgt die Antwort, bis nach ihr gefragt wird; *Stufen* setzen Ziele und prüfen sie.',
  inClass: 'Im Unterricht',
  projectorFillsScreenHandout:
    '*Beamer* füllt den Bildschirm; *Arbeitsblatt…* ist ein PDF mit den Antworten auf einer eigenen Seite; *Link…* öffnet die Lektion neben dem eigenen Projekt der Lernenden.',
};
