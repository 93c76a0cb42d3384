import type { say as english } from '../../en/explore/settings.ts';
import { counted, plural } from '../../language.ts';

/** What is counted in a limit, by its name in the engine. */
const COUNTED: Readonly<Record<string, string>> = {
  ink: 'Farbe',
  inks: 'Farben',
  pull: 'Druckgang',
  pulls: 'Druckgänge',
  screen: 'Sieb',
  screens: 'Siebe',
  'set-up': 'Einrichtung',
  'set-ups': 'Einrichtungen',
};

export const say: typeof english = {
  pullsOnBench: 'die Druckgänge auf der Werkbank',
  screensThatMayBe: 'die Siebe, die dazugenommen werden dürfen',
  noneOfPrintsAnything: (what) =>
    `Auf dem Bogen drucken ${what} nichts; ihre Formen in der Schublade auf den Bogen legen oder andere nehmen.`,
  mustBeInEvery: (screenName) => `${screenName} muss in jedem Druck sein, darf aber in keinem sein; eines von beiden wegnehmen.`,
  screensThatEveryPrint: (absent, bringIn) =>
    `${counted(absent, { one: 'Sieb', other: 'Siebe' })}, ${plural(absent, { one: 'das', other: 'die' })} jeder Druck haben muss, ${plural(absent, { one: 'ist', other: 'sind' })} nicht auf der Werkbank, doch höchstens ${bringIn} dürfen dazugenommen werden; mehr dazunehmen oder weniger verlangen.`,
  mustBeInEveryPrint: (name, number) =>
    `${name} muss in jedem Druck sein, doch sein Druckgang ${number} ist nie da; eines von beiden wegnehmen.`,
  mayBeInNo: (name, number) =>
    `${name} darf in keinem Druck sein, doch sein Druckgang ${number} bleibt an seinem Platz; eines von beiden wegnehmen.`,
  andMustBeBrought: (brought) => `, und ${brought} müssen dazugenommen werden`,
  printMayHaveBut: (atMost, have, out, brought) =>
    `Ein Druck darf ${atMost} haben, doch im Stapel sind es ${have}, von denen höchstens ${out} wegbleiben dürfen${brought}; mehr weglassen oder mehr erlauben.`,
  pullsKeep: (kept) => `Druckgänge behalten ${kept}`,
  stackHasThatMay: (kept) => `der Stapel hat ${kept}, die sich nicht ändern dürfen`,
  printMayHaveAt: (maxInks, why) =>
    `Ein Druck darf höchstens ${counted(maxInks, { one: 'Farbe', other: 'Farben' })} haben, doch ${why}; mehr erlauben oder die Farben ändern lassen.`,
  goesDownBeforeAll: (name) =>
    `${name} kommt vor allen anderen Farben, aber auch nach allen anderen; für eines von beiden eine andere Farbe wählen.`,
  neverLiesOverBut: (name, name2) =>
    `${name} liegt nie über ${name2}, doch ${name2} nie über ${name}; eines wegnehmen oder die zwei sich nie berühren lassen.`,
  isNeverToLie: (name) => `${name} soll nie über sich selbst liegen; zwei Farben wählen oder sie sich nicht selbst berühren lassen.`,
  goesDownBeforeAllOther: (name) => `${name} kommt vor allen anderen Farben`,
  goesDownAfterAll: (name) => `${name} kommt nach allen anderen Farben`,
  neverLiesOverButTake: (name, name2, condition) =>
    `${name} liegt nie über ${name2}, doch ${condition}; eines von beiden wegnehmen oder die zwei sich nie berühren lassen.`,
  repeatsAreAskedFor: (echoMm) =>
    `Wiederholungen sind verlangt, doch sie liegen höchstens ${echoMm} mm daneben; sie weiter danebenliegen lassen.`,
  veilGoesDownLast: (number) => `Ein Schleier kommt zuletzt, doch Druckgang ${number} bleibt der letzte; eines von beiden wegnehmen.`,
  noInkThatMay:
    'Keine erlaubte Farbe lässt für einen Schleier genug durchscheinen; eine lasierende Farbe erlauben oder den Schleier wegnehmen.',
  screen: (number) => `Sieb ${number}`,
  whatMustStayEntry: (index, cut) =>
    `Was bleiben muss, Eintrag ${index}, nennt den Druckgang ‚${cut}‘, der nicht im Stapel ist; den Eintrag wegnehmen.`,
  whichNoOrderCan: (say) => `${say}, was keine Reihenfolge halten kann; den Druckgang bewegen lassen.`,
  butTakeOneOf: (say, say2) => `${say}, doch ${say2}; eines von beiden wegnehmen.`,
  underPull: ' unter Druckgang ',
  whatMustStayGoes: (names) => `Was bleiben muss, geht im Kreis: Druckgang ${names}; eines davon wegnehmen.`,
  whichNoOrderCanKeep: (say) =>
    `${say}, was keine Reihenfolge zusammen mit dem halten kann, was davor bleiben muss; eines davon wegnehmen.`,
  butAndTheirInks: (says, words) =>
    `${says}, doch ${words}, und ihre Farben sind behalten; eines von beiden wegnehmen oder diese Farben ändern lassen.`,
  offsetsGoUpTo: (offsetRangeMm, offsetSnapMm) =>
    `Versätze gehen bis ${offsetRangeMm} mm, aber in Schritten von ${offsetSnapMm} mm; sie weiter gehen lassen oder in feineren Schritten.`,
  fromOfPairsTo: (round, round2) =>
    `Von ${round} % bis ${round2} % der Paare sollten die Plätze tauschen; die zweite Zahl soll die größere sein.`,
  nothingMayChangeSo:
    'Nichts darf sich ändern, also gibt es nichts zu finden; die Reihenfolge, die Farben, die Versätze oder die Siebe ändern lassen.',
  drawerHasNoScreens: 'Die Schublade hat keine Siebe; zuerst eine Form hinzufügen und ein Sieb daraus machen.',
  stackHasPullsExplorer: (bench, mostPulls) =>
    `Der Stapel hat ${bench} Druckgänge; die Wand nimmt bis zu ${mostPulls}, also einige weglassen.`,
  stackHasNoPulls: 'Der Stapel hat keine Druckgänge, von denen auszugehen ist; einen auf die Werkbank legen oder Siebe dazunehmen lassen.',
  pullHasSameId: (index, id) =>
    `Druckgang ${index} hat dieselbe Kennung ‚${id}‘ wie ein Druckgang vor ihm; jedem Druckgang eine eigene geben.`,
  pullUsesScreenWhich: (index, screen) =>
    `Druckgang ${index} nutzt das Sieb ‚${screen}‘, das nicht in der Schublade ist; ein anderes Sieb wählen oder den Druckgang weglassen.`,
  pullUsesInkWhich: (index, ink) =>
    `Druckgang ${index} nutzt die Farbe ‚${ink}‘, die nicht in der Schublade ist; eine andere Farbe wählen oder den Druckgang weglassen.`,
  paletteIsEmptyAllow: 'Die Palette ist leer; mindestens eine Farbe erlauben oder die Farben behalten und keine Siebe dazunehmen.',
  paletteNamesInkWhich: (id) => `Die Palette nennt die Farbe ‚${id}‘, die nicht in der Schublade ist; sie von der Palette nehmen.`,
  neverTouches: (ink, ink2) => `${ink} berührt nie ${ink2}`,
  neverLiesOver: (ink, ink2) => `${ink} liegt nie über ${ink2}`,
  goesDownBeforeAllOtherInks: (ink) => `${ink} kommt vor allen anderen Farben`,
  goesDownAfterAllOther: (ink) => `${ink} kommt nach allen anderen Farben`,
  screenIsInEvery: (screen) => `Sieb ${screen} ist in jedem Druck`,
  screenIsInNo: (screen) => `Sieb ${screen} ist in keinem Druck`,
  pull: (number) => `Druckgang ${number}`,
  staysFirst: (pull) => `${pull} bleibt der erste`,
  staysLast: (pull) => `${pull} bleibt der letzte`,
  staysInItsPlace: (pull, findIndex) => `${pull} bleibt an seinem Platz (als Nummer ${findIndex} gedruckt)`,
  keepsItsInk: (pull) => `${pull} behält seine Farbe`,
  liesAsItDoes: (pull) => `${pull} liegt, wie er liegt`,
  isNeverThere: (pull) => `${pull} ist nie da`,
  staysUnderPull: (pull, number) => `${pull} bleibt unter Druckgang ${number}`,
  atMost: (value, what) => `höchstens ${value} ${COUNTED[what] ?? what}`,
  atMostValue: (value) => `höchstens ${value}`,
  numberOf: (value, what) => `${value} ${COUNTED[value === '1' ? what.slice(0, -1) : what] ?? what}`,
  printHas: (atMost) => `ein Druck hat ${atMost}`,
  inOnePrintAt: 'In einem Druck höchstens',
  inks: 'Farben',
  pulls: 'Druckgänge',
  aPrint: 'je Druck',
  screens: 'Siebe',
  setUps: 'Einrichtungen',
  setUpIsOne: 'Eine Einrichtung ist ein Sieb an der Presse in einer Farbe mit einem Versatz.',
  overprintColours: 'Überdruckfarben',
  overprintColourAppearsWhere: (overprintColourDeltaE) =>
    `Eine Überdruckfarbe erscheint, wo sich Farben überlappen, und ist keiner Farbe eigen: weiter als ΔE ${overprintColourDeltaE} vom Papier und von jedem Druckgang allein darauf. Die Grenze ist ihr Anteil am Bogen.`,
  overprintColours2: 'Überdruckfarben',
  overprintColoursValue: (value) => `Überdruckfarben ${value}`,
  overprintColoursCoverAt: (value) => `Überdruckfarben bedecken höchstens ${value} eines Drucks`,
  inkOnSheetsOuter: (sheetEdgeMm) => `Farbe auf den äußeren ${sheetEdgeMm} mm des Bogens`,
  sheetsEdge: 'den Bogenrand',
  edge: (value) => `Rand ${value}`,
  inkCoversAtMost: (value, sheetEdgeMm) => `Farbe bedeckt höchstens ${value} der äußeren ${sheetEdgeMm} mm des Bogens`,
  pullPrintsNothingHas: (i, screen) =>
    `Druckgang ${i} druckt nichts: ${screen}, hat keine Formen; in der Schublade eine darauf legen oder den Druckgang weglassen.`,
  pullPrintsNothingLies: (first, screenOf) =>
    `Druckgang ${first} druckt nichts: ${screenOf}, liegt außerhalb des Bogens; es auf den Bogen schieben oder den Druckgang weglassen.`,
  pullsPrintNothingTheir: (list) =>
    `Druckgänge ${list} drucken nichts: ihre Siebe liegen außerhalb des Bogens; sie auf den Bogen schieben oder die Druckgänge weglassen.`,
  pullReachesBeyondSheet: (pulls) =>
    `Druckgang ${pulls} reicht über den Bogen hinaus und ist an dessen Rand abgeschnitten; ihn hereinschieben oder einen größeren Bogen wählen.`,
  pullsReachBeyondSheet: (pulls) =>
    `Druckgänge ${pulls} reichen über den Bogen hinaus und sind an dessen Rand abgeschnitten; sie hereinschieben oder einen größeren Bogen wählen.`,
  pullsAreOneScreen: (list) =>
    `Druckgänge ${list} sind ein Sieb in einer Farbe mit einem Versatz, also verdickt jeder nur den vorigen; ihnen andere Versätze geben oder einem Druckgang mehr Rakelzüge.`,
  screenPrintsNothingOn: (list) =>
    `Sieb ${list} druckt auf diesem Bogen nichts, also nimmt kein Druck es dazu; in der Schublade Formen auf den Bogen legen.`,
  screensPrintNothingOn: (list) =>
    `Siebe ${list} drucken auf diesem Bogen nichts, also nimmt kein Druck sie dazu; in der Schublade Formen auf den Bogen legen.`,
  screenNumber: (number, name) => `Sieb ${number}, ${name}`,
  andMore: (numbers, numbers2) => `${numbers} und ${numbers2} weitere`,
  and: (numbers, numbers2) => `${numbers} und ${numbers2}`,
  orMoreAtMost: (least) => `${least} oder mehr, höchstens eine Million`,
  fromTo: (least, most) => `von ${least} bis ${most}`,
  any: 'beliebig',
  atMostWereAsked: (value, what, range) =>
    `Höchstens ${value} ${COUNTED[what] ?? what} waren verlangt; eine ganze Zahl angeben, ${range}, oder keine.`,
  limitOnIsGive: (what, round, value, value2) => `Die Grenze für ${what} ist ${round} %; ${value} bis ${value2} % angeben oder nichts.`,
  ofOverlappingPairsWere: (round) => `${round} % der überlappenden Paare sollten die Plätze tauschen; 0 bis 100 % angeben oder nichts.`,
  offsetsInStepsOf: 'Versätze in Schritten von',
  offsetsInStepsOfMm: (value, range) => `Versätze in Schritten von ${value} mm waren verlangt; eine Länge angeben, ${range} mm.`,
  nameOfWall: 'Name der Wand',
  howMany: 'Wie viele',
  prints: 'Drucke',
  printsWereAskedFor: (value, range) => `${value} Drucke waren verlangt; eine ganze Zahl verlangen, ${range}.`,
  orderOfPulls: 'Reihenfolge der Druckgänge',
  pairsThatChangePlaces: 'Paare, die die Plätze tauschen, von',
  to: 'bis',
  inks2: 'Farben',
  inksThatWallMay: 'Farben, die die Wand nutzen darf',
  offsetUpTo: 'Versatz bis zu',
  offsetsOfUpTo: (value, range) => `Versätze bis zu ${value} mm waren verlangt; eine Länge angeben, ${range} mm.`,
  leaveOutUpTo: 'Weglassen bis zu',
  pulls2: 'Gänge',
  numberOfScreensTo: (value, range) => `Die Zahl der Siebe zum Weglassen ist ${value}; eine ganze Zahl angeben, ${range}.`,
  bringInUpTo: 'Dazunehmen bis zu',
  screens2: 'Siebe',
  numberOfScreensToBring: (value, range) => `Die Zahl der Siebe zum Dazunehmen ist ${value}; eine ganze Zahl angeben, ${range}.`,
  whatMustStay: 'Was bleiben muss',
  countsAsSameBelow: 'Gilt als gleich unter',
  deltaEBelowWhichTwo: (value, range) => `Das ΔE, unter dem zwei Drucke als gleich gelten, ist ${value}; eine Zahl angeben, ${range}.`,
  countsAsSameBelowBefore: 'Gilt als gleich unter, vor dem Erweitern',
  neverTouch: 'Berühren sich nie',
  neverOver: 'Nie über',
  downBeforeAllOthers: 'Vor allen anderen gedruckt',
  downAfterAllOthers: 'Nach allen anderen gedruckt',
  offsetsGo: 'Versätze gehen',
  acrossOnly: 'nur waagrecht',
  downOnly: 'nur senkrecht',
  turns: 'Drehungen',
  none: 'keine',
  by180: 'um 180°',
  by90: 'um 90°',
  screensLie: 'Siebe liegen',
  asDrawn: 'wie gezeichnet',
  near: 'in der Nähe',
  anywhere: 'irgendwo',
  fromWhereTheyWere: 'Von da, wo sie gezeichnet sind, bis zu',
  screensMayLieUp: (value, range) =>
    `Siebe dürfen bis zu ${value} mm von da liegen, wo sie gezeichnet sind; eine Länge angeben, ${range} mm.`,
  staysOnSheetAt: 'Bleibt auf dem Bogen, mindestens',
  atLeastOfScreen: (round, value) =>
    `Mindestens ${round} % eines Siebs sollen auf dem Bogen bleiben; ${value} bis 100 % angeben oder nichts.`,
  mirroredFilms: 'Gespiegelte Filme',
  pullAgainElsewhereUp: 'Anderswo noch einmal drucken, bis zu',
  pullsWereToBe: (value, range) => `${value} Druckgänge sollten anderswo noch einmal gedruckt werden; eine ganze Zahl angeben, ${range}.`,
  printAgainLittleOff: 'Noch einmal drucken, ein wenig daneben, bis zu',
  repeatsWereAskedFor: (value, range) => `${value} Wiederholungen waren verlangt; eine ganze Zahl angeben, ${range}.`,
  repeatsAreOffBy: 'Wiederholungen liegen daneben um bis zu',
  repeatsAreOffByUp: (value, range) => `Wiederholungen liegen um bis zu ${value} mm daneben; eine Länge angeben, ${range} mm.`,
  strokes1To: 'Rakelzüge, 1 bis',
  aPull: 'je Druckgang',
  atMostStrokesWere: (value, range) => `Höchstens ${value} Rakelzüge waren verlangt; eine ganze Zahl angeben, ${range}, oder keine.`,
  veilMayGoOver: 'Ein Schleier darf über alles, zuletzt gedruckt',
  onlyScreensAtHand: 'Nur Siebe zur Hand: gemacht oder zu machen',
  alwaysThere: 'immer da',
  neverThere: 'nie da',
};
