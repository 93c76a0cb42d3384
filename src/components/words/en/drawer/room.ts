import { counted, plural, speak } from '../../../../engine/words/language.ts';

export const say = speak('drawer/room', {
  oneShape: 'One shape',
  shapeGroup: 'A shape a group',
  shapeColour: 'A shape a colour',
  whatOfBecomesShape: (name: string) => `What of ${name} becomes a shape?`,
  oneScreen: 'one screen',
  screens: (shapes: number) => `${shapes} screens`,
  onNoScreen: 'on no screen',
  onScreen: (toSorted: string) => `on screen ${toSorted}`,
  newScreenOfIt: 'New screen of it',
  removeShape: 'Remove shape',
  thereIsNoSVG: 'There is no SVG file or picture in what was dropped.',
  whatWasDroppedCould: (error: string) => `What was dropped could not be read (${error}); choose the files instead.`,
  reading: (name: string) => `Reading ${name}…`,
  readingOf: (done: number, files: number) => `Reading ${done} of ${files}…`,
  screen: (number: number) => `Screen ${number}`,
  allScreens: '← All screens',
  dropSVGFilesOr: 'Drop SVG files or pictures to add them to the drawer',
  shapesAndScreens: '← Shapes and screens',
  shapes: 'Shapes',
  chooseSVGFiles: 'Choose SVG files…',
  tracePicture: 'Trace a picture…',
  stop: 'Stop',
  drawerIsEmpty: 'The drawer is empty.',
  dropSVGFilesOrFolder:
    'Drop SVG files or a folder of them anywhere here, or choose them. What is filled or drawn in lines becomes a shape at the size it has in the file, on a screen of its own. A photo or scan (PNG, JPEG, WebP) is traced. Or draw a shape here. Files drawn on one page size stay in register.',
  sizesShown: 'Sizes shown',
  trueToEachOther: 'True to each other',
  eachAsLargeAs: 'Each as large as fits',
  oneFileGives: 'One file gives',
  filesGive: (count: number) => `${count} files give`,
  longestSideOfLargest: (count: number) => plural(count, { one: 'Longest side', other: 'Longest side of the largest' }),
  asDrawnOnScreen: (drawnMm: string) => `As drawn on a screen, ${drawnMm} mm`,
  noSizeInMm: (which: string, count: number) =>
    `${which} no size in mm${plural(count, { one: '.', other: '; all of them are laid by one scale.' })}`,
  isLargerThanPrintable: (name: string, size: string, number: number, percent: string) =>
    `${name} is ${size}, larger than the printable part of the sheet; on screen ${number} it is placed at ${percent} % so that it fits.`,
  allWereDrawnOn: (size: string) =>
    `All were drawn on a page of ${size}, so they keep their places on it; the page lies in the middle of the sheet.`,
  printsUnderMmAcross: (name: string, smallMm: number, number: number) =>
    `${name} prints under ${smallMm} mm across; if that is too small, give it a size on screen ${number}.`,
  shapesPrintUnderMm: (small: number, smallMm: number, name: string) =>
    `${small} shapes print under ${smallMm} mm across, ${name} first; where that is too small, give them a size on their screens.`,
  nothingWasAdded: 'Nothing was added',
  wasAddedOnScreen: (name: string, number: number) => `${name} was added, on screen ${number}`,
  shapesWereAddedOn: (shapes: number, number: number, number2: number) => `${shapes} shapes were added, on screens ${number} to ${number2}`,
  oneFileWas: 'one file was',
  filesWere: (refused: number) => `${refused} files were`,
  refused: (added: string, refused: string) => `${added}; ${refused} refused`,
  fileWasNotRead: (name: string) => `${name}: the file was not read, as you stopped; choose it again to read it.`,
  nothingIsLeftOf: (name: string) => `${name}: nothing is left of it.`,
  times: (message: string, count: number) => `${message} (${count} times)`,
  screenIsOutOf: (number: number, name: string) => `Screen ${number}, ${name}, is out of the drawer; undo brings it back.`,
  nameOfScreen: (number: number) => `Name of screen ${number}`,
  notOnBench: 'Not on the Bench',
  onBenchInOne: 'On the Bench in one pull',
  onBenchInPulls: (uses: number) => `On the Bench in ${uses} pulls`,
  putOnBench: 'Put on the Bench',
  anotherShapeForThis: 'Another shape for this screen',
  addToScreen: 'Add to the screen',
  mesh: 'Mesh',
  threads: 'Threads',
  thread: 'Thread',
  openingAboutM: (roundTo: number) => `Opening about ${roundTo} µm`,
  frame: 'Frame',
  removeScreen: 'Remove screen',
  place: 'Place',
  shapesOnThisScreen: 'Shapes on this screen',
  fromLeft: 'From left',
  fromTop: 'From top',
  turn: 'Turn',
  size: 'Size',
  mirrored: 'Mirrored',
  printsMmBeforeTurning: (roundTo: number, roundTo2: number) =>
    `Prints ${roundTo} × ${roundTo2} mm before turning; the place is that of its middle.`,
  reachesMmBeyondPrintable: (beyond: string) => `Reaches ${beyond} mm beyond the printable part.`,
  takeOffScreen: (nameOf: string) => `Take ${nameOf} off the screen`,
  drawnNotMade: 'drawn, not made',
  toMake: 'to make',
  filmMadeToExpose: 'film made, to expose',
  madeExposedReadyTo: 'made: exposed, ready to print',
  reclaimed: 'reclaimed',
  itsImageIsMm: ({
    roundTo,
    roundTo2,
    widthMm,
    heightMm,
    frameMarginMm,
  }: {
    roundTo: number;
    roundTo2: number;
    widthMm: number;
    heightMm: number;
    frameMarginMm: number;
  }) =>
    `Its image is ${roundTo} × ${roundTo2} mm: a frame of ${widthMm} × ${heightMm} mm inside has ${frameMarginMm} mm on each side for ink and squeegee (common practice, no source).`,
  sayWhichFrameIt: 'Say which frame it is on',
  frameInsideWidth: 'Frame inside, width',
  height: 'height',
  imageAreaMmWith: (roundTo: number, roundTo2: number, frameMarginMm: number) =>
    `Image area ${roundTo} × ${roundTo2} mm, with ${frameMarginMm} mm on each side for ink and squeegee (common practice, no source).`,
  tooSmallToPrint: (frameMarginMm: number) =>
    `Too small to print: ink and squeegee take ${frameMarginMm} mm on each side (common practice, no source).`,
  itsImageIsMmAnd: (roundTo: number, roundTo2: number) =>
    `Its image is ${roundTo} × ${roundTo2} mm and reaches outside the frame’s image area; take a larger frame, or make the shapes smaller.`,
  forgetFrame: 'Forget the frame',
  screenIs: 'The screen is',
  numberOnIt: 'Number on it',
  emulsionAboutMLFrom: ({
    ceil,
    sideIsPaper,
    printedIsAgainst,
    readsWrong,
    isMirrored,
  }: {
    ceil: number;
    sideIsPaper: boolean;
    printedIsAgainst: boolean;
    readsWrong: boolean;
    isMirrored: boolean;
  }) =>
    `Emulsion about ${ceil} mL (from memory). Its film lies on the ${sideIsPaper ? 'side that touches the paper' : 'squeegee’s side'}, its printed side ${printedIsAgainst ? 'against' : 'away from'} the emulsion: ${readsWrong ? 'wrong' : 'right'}-reading${isMirrored ? ', its image mirrored' : ''}; choose otherwise under Film of it…`,
  findScreen: 'Find a screen',
  findByNameOr: 'Find by name or number',
  of: (found: number, screens: number) => `${found} of ${screens}`,
  screens2: 'Screens',
  screen2: 'Screen',
  lineOfMmMm: ({
    kindIsLine,
    widthMm,
    roundTo,
    roundTo2,
    roundTo3,
  }: {
    kindIsLine: boolean;
    widthMm: string;
    roundTo: number;
    roundTo2: number;
    roundTo3: number;
  }) => `${kindIsLine ? 'Line' : 'Gap'} of ${widthMm} mm, ${roundTo} mm long, at ${roundTo2}, ${roundTo3}`,
  noLineAndNo: (leastMm: number) => `No line and no gap is narrower than ${leastMm} mm.`,
  redOnSheetLines: (lines: number, gaps: number) =>
    `Red on the sheet: ${counted(lines, { one: 'line', other: 'lines' })} that may not print, ${counted(gaps, { one: 'gap', other: 'gaps' })} that may fill in. Places are mm from left and top.`,
  thinPlaces: 'Thin places',
  andShorter: (more: number) => `And ${more} shorter.`,
  looking: 'looking…',
  none: 'none',
  linesGaps: (lines: number, gaps: number) =>
    `${counted(lines, { one: 'line', other: 'lines' })}, ${counted(gaps, { one: 'gap', other: 'gaps' })}`,
  linesAndGapsUnder: 'Lines and gaps under',
  thisMeshHoldsMm: (holdsMm: string, safeMm: string, line: number, gap: number) =>
    `This mesh holds ${holdsMm} mm, an opening and two threads, and prints ${safeMm} mm surely, three threads and openings: from memory. Artwork for paper keeps to ${line} mm for lines and ${gap} mm for gaps.`,
  lookingForThinPlaces: 'Looking for thin places',
  looking2: 'Looking…',
  allScreensOnOne: 'All screens on one sheet; many shapes put on screens at once',
  wholeSheet: 'Whole sheet…',
  nameColourSheetAnd: 'Name, colour, sheet and printable part of the paper',
  sheetMm: (widthMm: number, heightMm: number) => `Sheet ${widthMm} × ${heightMm} mm…`,
  noScreensYetChoose: 'No screens yet: choose a shape above and make a screen of it.',
  unnamed: 'unnamed',
  atMmArrowKeys: (name: string, xMm: number, yMm: number) => `${name} at ${xMm}, ${yMm} mm; arrow keys move it`,
  sheetMmWidthMm: (widthMm: number, heightMm: number) => `Sheet, ${widthMm} × ${heightMm} mm`,
  whatFilesCameTo: 'What the files came to',
  close: 'Close',
  putAllOnBench: (waiting: number) => `Put all ${waiting} on the Bench`,
  spreadOverSheet: 'Spread over the sheet',
  holeAsItLooks: 'a hole, as it looks',
  inkAsAnyColour: 'ink, as any colour',
  nothingLeftOut: 'nothing, left out',
  whiteInIs: (name: string) => `White in ${name} is`,
});
