import { counted, parts, plural, speak } from '../../../../engine/words/language.ts';

export const say = speak('inks/target', {
  pdfCouldNotBe: (error: string) => `The PDF could not be made (${error}); try it again.`,
  hasNoSampleThat: (fileName: string, few: number) =>
    `${fileName} has no sample that is named by the number of a square, 1 to ${few}; name the samples so, or type them in.`,
  notEverySquareTells:
    'Not every square tells something new. These are each ink alone, and then the overprints that settle most of what is still open: how inks cover, how thick a film is on a film, what the surface does.',
  squares: 'Squares',
  pullThese: (count: number) => `Pull these ${count}`,
  putAtLeastTwo: 'Put at least two inks on the target.',
  makingPDF: 'Making the PDF…',
  saveAsPDF: 'Save as PDF',
  chooseOtherSquares: 'Choose other squares',
  ofSquaresRead: (read: number, few: number) => `${read} of ${counted(few, { one: 'square', other: 'squares' })} read`,
  lAndBD50: 'L, a and b (D50), or a hex; Enter goes on to the next square.',
  orReadFileWhose: 'Or read a file whose sample ids are the numbers of the squares:',
  square: (name: string) => `Square ${name}`,
  asInksAreThought: 'As the inks are thought to give it, and as measured',
  inksTrappingAndSurface: (inks: number) =>
    `${counted(inks, { one: 'ink', other: 'inks' })}, trapping and surface are as the squares showed them; undo takes it back.`,
  fitting: 'Fitting',
  fitInksTrappingAnd: 'Fit inks, trapping and surface',
  toSquaresThatWere: (squares: number) =>
    `to ${counted(squares, { one: 'square', other: 'squares' })} that ${plural(squares, { one: 'was', other: 'were' })} read`,
  noInkWasChanged: 'No ink was changed.',
  whatSquaresTell: 'What the squares tell',
  eachOverprintLeftOut: (looDeltaE: string) => `Each overprint left out in turn is missed by ΔE ${looDeltaE}`,
  eachOverprintLeftOutIn: (looDeltaE: unknown) => parts`${looDeltaE}: that is what to expect of prints.`,
  noOverprintCouldBe: 'No overprint could be left out in turn, so that what to expect of prints is not known; read more squares.',
  inksTrappingAndSurfaceAs: (nowDeltaE: string, meanDeltaE: string) =>
    `Inks, trapping and surface as they are now miss the squares by ΔE ${nowDeltaE} in the mean, the fit by ${meanDeltaE}.`,
  filmOnFilmIs: 'A film on a film is',
  asThick: (factor: string) => `${factor} % as thick`,
  thrownBackInsideOutside: 'Thrown back inside, outside',
  missedMost: 'Missed the most',
  everySquareWorstFirst: 'Every square, the worst first',
  useInksTrappingAnd: 'Use inks, trapping and surface',
  inksPaperOrReadings: 'Inks, paper or readings have changed since; fit again.',
  changesTheyCountAs: (inks: string) => `Changes ${inks}: they count as measured from then on.`,
  square2: 'Square',
  deltaEFitted: 'ΔE fitted',
  deltaELeftOut: 'ΔE left out',
  alone: (name: string) => `${name} alone`,
  over: (name: string, name2: string) => `${name} over ${name2}`,
  hasNoSampleThatIs: (fileName: string, squares: number) =>
    `${fileName} has no sample that is named by the number of a square, 1 to ${squares}; name the samples so, or type them in.`,
  lAndBD50Or: 'L, a and b (D50), or a hex; Enter goes on to the next square. A list of lines can be pasted into a field.',
  orFromPhotoWhen: 'Or from a photo, when there is no instrument:',
  pickSquaresFromPhoto: 'Pick squares from a photo',
  everySquareIsTaken:
    'Every square is taken as one stroke of each ink through the mesh its colour was found on. Squares pulled through another mesh, or twice, make the inks come out too strong or too weak.',
  ofSquaresMeasured: (measured: number, squares: number) =>
    `${measured} of ${counted(squares, { one: 'square', other: 'squares' })} measured`,
  first: (name: string) => `${name} first`,
  of: (done: number, list: number) => `${done} of ${list}`,
  alone2: 'alone',
  overIt: (name: string) => `${name} over it`,
  targetOfInksWith: (inks: number, squares: number) => `Target of ${inks} inks with ${squares} numbered squares`,
  overprintTarget: 'Overprint target:',
  paperOfProject: 'the paper of the project',
  pullThisByHand: (name: string) =>
    `Pull this by hand; measure or pick each square. One stroke each, on ${name}. Rows go down first, columns over them.`,
  squaresMmMmApart: (sideMm: string, pitchMm: string) =>
    `Squares ${sideMm} mm, ${pitchMm} mm apart, when printed at 100 %. The small chips are what the inks are thought to give, as this printer can show it.`,
  overIt2: 'over it →',
  firstDown: 'first down ↓',
  barePaper: 'Bare paper',
  blackPatch: 'Black patch',
  wholeTargetLitEvenly:
    'The whole target, lit evenly, without glare, with bare paper and something black in view: the black half of a contrast card, or black card.',
  firstBarePaperAnd:
    'First the bare paper and the black, which set the scale: the paper as in this project, the black as 3 % of light. A camera has its own idea of hues, so trust these less than an instrument.',
  pullingIt: 'Pulling it',
  makeTwoStencilsOne:
    'Make two stencils: one bar as long as a row, one as long as a column, as wide as a square; or mask the bars on an open screen.',
  rowsPullEachInk: 'Rows: pull each ink as one bar along its row, from square “alone” to the end. One stroke, on the mesh in the list.',
  letEveryRowDry: 'Let every row dry; the times are in the list.',
  columnsPullEachInk: 'Columns: pull each ink as one bar down its column, over all rows, in the same way.',
  whenAllIsDry:
    'When all is dry, measure each square in the middle: spectral, over white backing; or L, a, b (D50, 2°). Name the samples by the numbers of the squares.',
  paper: 'Paper:',
  date: 'Date',
  printer: 'Printer',
  instrumentLight: 'Instrument, light',
  whatYouMeasure: 'What you measure',
  ink: 'Ink',
  mesh: 'Mesh',
  strokes: 'Strokes',
  dry: 'Dry',
  batchLetdown: 'Batch, letdown',
  squeegeeAngle: 'Squeegee, angle',
  notes: 'Notes',
  cmMOrYours: (threadsPerCm: number, threadUm: number, noMesh: boolean) =>
    `${threadsPerCm}/cm, ${threadUm} µm${noMesh ? ', or yours' : ''}`,
  min: (dryMinutes: number) => `${dryMinutes} min`,
  firstThen: (name: string) => `${name} first, then`,
  nothing: 'nothing',
});
