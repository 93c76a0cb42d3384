import { speak } from '../../../../engine/words/language.ts';

export const say = speak('help/rooms', {
  shapesAreOutlinesIn:
    'Shapes are outlines in millimetres; a screen carries one or more of them, each at its place on the sheet. Everything else is printed from these screens.',
  drawerShapesOnLeft: 'The Drawer: shapes on the left, a screen on the sheet in the middle, the list of screens on the right.',
  bringInDrawings: 'Bring in drawings',
  dropSVGFilesAnywhere:
    'Drop SVG files anywhere in the room, or press *Choose SVG files…*. Lines become what their pen covers. A drawing of several groups or colours asks whether it is one shape or many.',
  traceCutOutOr: 'Trace a cut-out or a scan',
  dropPhotoOrScan:
    'Drop a photo or scan (PNG, JPEG, WebP), or press *Trace a picture…*: uneven light is taken out, specks are left out, and a line drawn over something of known length gives the size.',
  drawCutAndJoin: 'Draw, cut and join',
  drawShapeFreehandOr:
    '*Draw a shape…*: freehand, or point by point with mouse, finger or keys; a drag pulls handles out of a point. On a chosen shape *Cut and join…* joins it with another, cuts one from the other, welds, mirrors, turns, grows, shrinks and repeats it by mm. *Cut along a line…* goes through it as with a blade.',
  makeScreen: 'Make a screen',
  chooseShapeItBecomes:
    'Choose a shape: it becomes a screen of its own, or goes onto the chosen screen with *Add to the screen*. Drag it on the sheet, or type its place, turn and size beside it.',
  setPaper: 'Set the paper',
  sizeAndMarginsOf: 'Size and margins of the sheet stand behind the button beside the heading of the screens.',
  sayWhatIsMade: 'Say what is made',
  screenIsDrawnTo: 'A screen is drawn, to make or made. The Wall can keep to those at hand.',
  goOn: 'Go on',
  putOnBenchLays: '*Put on the Bench* lays the screen on the stack as its last pull.',
  inkIsHowMuch:
    'An ink is how much light its film scatters and absorbs in 36 bands, so that it can be worked out what it does over any other. The chart shows every ink over every other; it is an estimate until it is checked against a real pull.',
  inksShelfOfInks: 'Inks: the shelf of inks on the left, the chart of every ink over every other in the middle.',
  addInk: 'Add an ink',
  pressAddInkFrom:
    'Press *Add an ink*: from a measurement file, from two colours of a drawdown (one over white, one over black), picked from a photo, or from one colour as a guess.',
  mixAndLetDown: 'Mix and let down',
  openLetItDown: 'Open *Let it down* below the ink’s colours, or press *Match a colour* to find a mix of stock inks for a colour.',
  readColour: 'Read a colour',
  pointAtSquareOf: 'Point at a square of the chart; click it for its curve.',
  checkItAgainstPull: 'Check it against a pull',
  printAsTargetGives:
    '*Print as a target* gives squares to pull; *Pull these 12* only the few that tell most. *Put in what you measured* fits inks and trapping to it.',
  wallHangsManyDifferent:
    'The Wall hangs many different prints that your screens and inks can make, the most different first. The same name and settings always hang the same prints.',
  wallManyPrintsHanging: 'The Wall: many prints hanging, settings on the left, and the selected print with what sets it apart.',
  look: 'Look',
  walkAlongPrintsWith:
    'Walk along the prints with the arrow keys or a click; a tap on one at the edge brings it into view. *Closer* and *Further*, a wheel or two fingers bring them nearer.',
  sayWhatMayChange: 'Say what may change',
  orderInksHowPulls:
    'Order, inks, how pulls lie, what is left out: in the settings. *What must stay* holds a pull first, last, in its ink or under another.',
  keep: 'Keep',
  keepPutsPrintInto: '*Keep* puts a print into the Chest as a recipe; *Pin* hangs it first on every later wall.',
  findMoreLikeIt: 'Find more like it',
  moreFromThisPrint:
    '*More from this print* finds others nearer to it or away from it; of two selected ones, what lies between, or crosses.',
  arrange: 'Arrange',
  arrangeByMeasuresAlike:
    '*Arrange* by measures, alike side by side, or as you choose: it learns from what you select, pin, keep and answer, and can be told to forget. Once it knows enough, *More as I choose* finds further prints by it.',
  beforeVisit: 'Before a visit',
  screensToMakeTells:
    '*Screens to make* tells which screens to have made, how many of the chosen prints each number of them gives, and what each print lacks.',
  oneStackLargeStrip: 'One stack, large. The strip below shows the sheet after every pull, from bare paper to the last one down.',
  benchPrintInMiddle: 'The Bench: a print in the middle, its pull beside it, the strip of its states below.',
  changeOrder: 'Change the order',
  dragStateAlongStrip: 'Drag a state along the strip, or choose it and press Alt with an arrow.',
  changePull: 'Change a pull',
  chooseItsStateInk:
    'Choose its state: ink, strokes and offset stand beside the print. Drag on the picture, or use the arrow keys, to move it.',
  readPlace: 'Read a place',
  clickPictureItsColour: 'Click the picture: its colour, how far it may be off, and which pulls lie there.',
  softenIt: 'Soften it',
  findVeilLooksFor: '*Find a veil* looks for one more translucent pull that softens the contrast between what lies under it.',
  seeWhatNext: 'See what next',
  whatNextHangsWhat: '*What next?* hangs what one more pull, or several, would make of it.',
  lookFromAfar: 'Look from afar',
  underFilmsApartTwo:
    'Under *Films apart, two prints, from afar…*: lift the films, wipe or blink between two prints, see it from 0.5, 2 and 8 m, or one place of it on six sheets out of register.',
  keepIt: 'Keep it',
  keepAsRecipePuts: '*Keep as recipe* puts it into the Chest.',
  chestHoldsRecipesThat:
    'The Chest holds the recipes that you kept: each has all that is needed to build its print, and says where it came from. Visits to the press, and what was pulled in them, stand below.',
  chestKeptRecipesWith: 'The Chest: kept recipes with their pictures and what can be done with each.',
  seeHowItIs: 'See how it is built',
  howItIsBuilt: '*How it is built* shows it pull by pull.',
  takeItToPress: 'Take it to the press',
  takeToPressGives: '*Take to Press* gives it sheets there.',
  printEdition: 'Print an edition',
  editionNumbersSheetsProofs: '*Edition…* numbers the sheets, proofs and signatures, and writes their papers.',
  giveItAway: 'Give it away',
  saveAsFileOr: '*Save as a file*, or *Save as a picture…*: the picture carries its recipe, and gives it back when it is dropped here.',
  pressTurnsRecipesAnd:
    'The Press turns recipes and numbers of sheets into an order of set-ups: one screen in one ink at one offset, and the sheets it goes on. It says what dries when, and how near the order is to the least there can be.',
  pressRecipesWithNumbers: 'The Press: recipes with numbers of sheets, and the pull order as a grid of set-ups by sheets.',
  plan: 'Plan',
  giveRecipesTheirSheets:
    'Give recipes their sheets, then press *Find the pull order*. *Studio figures* are yours to set: hours, drying, racks, pulls an hour.',
  shortenIt: 'Shorten it',
  readAdviceBelowOrder:
    'Read the advice below the order: each line was planned anew, and says what it saves and what it changes in the prints.',
  largerThanBed: 'Larger than the bed',
  cutIntoSectionsBelow:
    '*Cut into sections…*, below a print that has sheets, makes each section a print with stencils, films and set-ups of its own.',
  printPapers: 'Print the papers',
  benchSheetDayCards: 'A bench sheet a day, cards, passports, tickets for buckets, stencils to prepare: as PDF or printed.',
  logAtPress: 'Log at the press',
  tickSheetsAsThey:
    'Tick sheets as they are pulled. *Several differently…* and spoiled sheets are said in a tap or two, and *Extra pull…* what no plan has; the clock follows what was really done.',
  whenDayGoesOtherwise: 'When the day goes otherwise',
  planRestFindsOrder: '*Plan the rest* finds an order for what is left, never worse than going on as before; it can be undone.',
  takeItAlong: 'Take it along',
  visitIsOneFile: 'The visit is one file for another tablet; one set-up goes to a phone by a code.',
  allOrdersOfTwo:
    'All orders of two to six pulls, grouped into the prints that really differ. For showing, and for finding out, why order matters in one place and not in another.',
  lessonLargePrintIts: 'The Lesson: a large print, its pulls beside it, and all the different prints around.',
  buildIt: 'Build it',
  pressSpaceBarOne: 'Press the space bar: one pull more on the sheet.',
  dragPullInList: 'Drag a pull in the list beside the print, or use its two arrows.',
  makePrintsAlike: 'Make prints alike',
  makeInkClearerOr: 'Make an ink clearer or more opaque, or move a shape, and watch prints fall together.',
  compare: 'Compare',
  chooseTwoPrintsTo: 'Choose two prints to blink between them, with the place outlined where they differ.',
  guessFirst: 'Guess first',
  guessHidesAnswerUntil: '*Guess* hides the answer until it is asked for; *Levels* set goals and check them.',
  inClass: 'In a class',
  projectorFillsScreenHandout:
    '*Projector* fills the screen; *Handout…* is a PDF with answers on a page of their own; *Link…* opens the lesson beside a student’s own project.',
});
