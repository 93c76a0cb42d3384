import { counted, parts, plural, speak } from '../../../../engine/words/language.ts';

export const say = speak('ui/print', {
  phoneCannotReachOpen: (host: string) =>
    `A phone cannot reach ${host}: open the app from an address that the phone can reach too, and show the code there.`,
  inAnyOrder: 'in any order',
  inLayers: (layers: number) => `in ${counted(layers, { one: 'layer', other: 'layers' })}`,
  pulls: (members: number, layers: string, named: string, members2: string) =>
    `${counted(members, { one: 'pull', other: 'pulls' })} ${layers}: ${named}${members2}`,
  free: (members: number, free: boolean, open: string) => `${members} ${free ? 'free' : 'pulls'} ${open}`,
  choosePullToSee: 'Choose a pull to see what holds it in its place.',
  more: (more: number) => `${more} more`,
  liesOver: (named: string) => `lies over ${named}`,
  under: (named: string) => `under ${named}`,
  nothingHoldsPull: (at: number) => `Nothing holds pull ${at}`,
  and: ' and ',
  pullLiesSoThat: (at: number, noOver: boolean, sides: string) => `Pull ${at} ${noOver ? 'lies ' : ''}${sides} so that it shows`,
  itHasNoOther: 'it has no other place that prints the same.',
  atAnyPlaceFrom: (from: number, to: number, minDeltaE: number) =>
    `at any place from ${from} to ${to} the print stays the same within ΔE ${minDeltaE}.`,
  firstDownAtLeft: 'First down at the left, row after row.',
  panelsPullsOfOne: (theParts: number) =>
    `${counted(theParts, { one: 'panel', other: 'panels' })}: pulls of one do not hold those of another. In each, first down at the left, row after row.`,
  pullsOfOneColumn: (theParts: string, free: number, overlapping: number) =>
    `${theParts} Pulls of one column do not hold each other, and “free” ones may go down in any order. ${free} of ${overlapping} overlapping pairs are free swaps.`,
  foldAll: 'Fold all',
  unfoldAllGroups: (groups: number) => `Unfold all ${groups} groups`,
  orderGraphInGroups: (pulls: number) => `Order graph in groups, ${counted(pulls, { one: 'pull', other: 'pulls' })}`,
  withPullDeltaEOver: (i: string, b: number, deltaE: string, round: string) => `${i}with pull ${b} ΔE ${deltaE} over ${round} mm²`,
  whereItShowsMost: (own: unknown) => parts`Where it shows most: ${own}.`,
  pullsAndMmDiffer: (first: number, then: number, round: string, deltaE: string) =>
    `Pulls ${first} and ${then}: ${round} mm² differ by ΔE ${deltaE}`,
  noTwoPullsOverlap: 'No two pulls overlap: every order gives the same print.',
  ofOverlappingPairsAre: (free: number, overlapping: number, minDeltaE: number) =>
    `${free} of ${overlapping} overlapping ${plural(overlapping, { one: 'pair is a free swap', other: 'pairs are free swaps' })}: exchanged, they differ by less than ΔE ${minDeltaE}.`,
  orderGraphPulls: (pulls: number) => `Order graph, ${counted(pulls, { one: 'pull', other: 'pulls' })}`,
  whereOrderMattersMost: 'Where order matters most',
  printedAreaAgainstLays: (offset: string) => `Printed area against the lays, the three stops of the paper: ${offset}`,
  width: 'Width',
  resolution: 'Resolution',
  pixelsColouredAsHere: (wide: string, high: string) =>
    `${wide} × ${high} pixels, coloured as here: a picture to look at, not a film positive.`,
  trueSizeInMm:
    'True size in mm, a layer a pull, each in the colour of one stroke over white and multiplied: where inks overlap, other programs show another colour than the films here.',
  as: 'as',
  file: 'File',
  pngPicture: 'PNG, a picture',
  svgDrawing: 'SVG, a drawing',
  fileCarriesRecipeDropped: 'The file carries the recipe: dropped in the Chest, it gives it back.',
  notDrawnYet: (words: string) => `${words}, not drawn yet`,
  madeSoFar: 'Made so far',
  cancel: 'Cancel',
  save: 'Save',
  pictureOfCouldNot: (title: string, error: string) => `The picture of "${title}" could not be drawn: ${error}`,
  thisBrowserGaveNo: 'this browser gave no canvas',
  thisBrowserMadeNo: 'this browser made no PNG',
  freeSwapWithPull: (index: number) => `; a free swap with pull ${index}`,
  barePaper: 'bare paper',
  stateStripFirstDown: 'State strip, first down to last down',
  freeSwapTwoNeighbouring: (b: unknown, minDeltaE: number) =>
    parts`${b} free swap: two neighbouring pulls that may change places; the print stays the same within ΔE\u00a0${minDeltaE}.`,
  noOffset: 'no offset',
  turned: 'turned',
  mmRightMmDown: (offset: string, offset2: string) => `${offset} mm right, ${offset2} mm down`,
});
