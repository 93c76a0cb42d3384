import { speak } from '../../language.ts';

export const say = speak('engine/ink/characterise', {
  and: (runs: string, runs2: string) => `${runs} and ${runs2}`,
  fourCurvesMustHave: (bands: string, band: string | number) =>
    `The four curves must have as many bands each, one or more; they have ${bands} and ${band}.`,
  reflectanceMustBeFrom: (mostReflectance: number, band: number, value: number) =>
    `Reflectance must be from 0 to ${mostReflectance}; band ${band} has ${value}.`,
  cardsWhiteMustBe: (leastContrast: number, band: number, gw: number, gb: number) =>
    `The card's white must be lighter than its black by ${leastContrast} or more; band ${band} has ${gw} and ${gb}.`,
  inkCannotBeBrighter: (band: number) => `An ink cannot be brighter over black than over white; band ${band} has `,
  overBlackAndOver: (rb: number, rw: number) => `${rb} over black and ${rw} over white. Are the two readings swapped?`,
  theInk: 'The ink',
  ink: (name: string) => `Ink “${name}”`,
  inkNeedsName: 'The ink needs a name.',
  hasDryingTimeOf: (called: string, dryMinutes: number) => `${called} has a drying time of ${dryMinutes}: give minutes, 0 or more.`,
  hasDensityOfGive: (called: string, densityGPerCm3: number, least: number, most: number) =>
    `${called} has a density of ${densityGPerCm3}: give g/cm³, from ${least} to ${most}.`,
  overWhite: 'over white',
  overBlack: 'over black',
  hasNoColourGive: (called: string, over: string) => `${called} has no colour ${over}: give L from 0 to 100, a and b.`,
  isLighterOverBlack: (called: string, overBlack: number) => `${called} is lighter over black (L ${overBlack}) than over white `,
  lSwapTwoOr: (overWhite: number) => `(L ${overWhite}): swap the two, or lower the one over black.`,
  cannotHaveBothColours: (called: string) => `${called} cannot have both colours; `,
  overWhiteItWill: (whereIsOverWhite: boolean) => `${whereIsOverWhite ? 'over white' : 'over black'} it will print `,
  asLB: (shown: string) => `as L, a, b ${shown}.`,
  whitePatch: 'The white patch',
  blackPatch: 'The black patch',
  inkOverWhite: 'The ink over white',
  inkOverBlack: 'The ink over black',
  red: 'red',
  green: 'green',
  blue: 'blue',
  needsRedGreenAnd: (called: string) => `${called} needs red, green and blue from 0 to 255; pick it again.`,
  blackPatchIsAs: (channels: string) =>
    `The black patch is as light as the white patch in ${channels}, or nearly; pick the card's bare white and bare black, or light the photo better.`,
  isLighterThanCards: (called: string) => `${called} is lighter than the card's bare white; look for glare or pick another place.`,
  inkIsLighterOver: 'The ink is lighter over black than over white; were the two patches picked the wrong way round?',
  barePaper: 'The bare paper',
  thisPatch: 'This patch',
  blackPatchIsAsLight: (channels: string) =>
    `The black patch is as light as the bare paper in ${channels}, or nearly; pick bare paper and something black, or light the photo better.`,
  isOverexposedInSo: (called: string, channels: string) =>
    `${called} is overexposed in ${channels}, so its true lightness is lost; take the photo darker.`,
  thisPatchIsLighter: 'This patch is lighter than the bare paper; look for glare, unless its ink hides a darker paper.',
  blackPatchIsUnderexposed: 'The black patch is underexposed to nothing, so that dark inks are guessed too light; take the photo lighter.',
  inkCannotBeOpaque: (opacity: number, least: number, most: number) => `An ink cannot be ${opacity} % opaque; give ${least} to ${most} %.`,
  sameSampleIsChosen: 'The same sample is chosen over white and over black; choose the two readings of one ink.',
  readingOverWhite: 'The reading over white',
  readingOverBlack: 'The reading over black',
  bareWhite: 'The bare white',
  bareBlack: 'The bare black',
  hasBandsItNeeds: (called: string, curve: number, bands: number) => `${called} has ${curve} bands; it needs ${bands}, 380 to 730 nm.`,
  isNoReflectanceAt: (called: string, band: string) => `${called} is no reflectance at ${band}: measure it again.`,
  inkIsBrighterOver: (band: string) => `The ink is brighter over black than over white at ${band}: are the two readings swapped?`,
  whiteAndBlackAre: (band: string) =>
    `White and black are too alike at ${band} to tell hiding from colour: choose the card's bare white and black.`,
  pictureHasPixelsMore: (width: number, height: number, mostPixels: number) =>
    `the picture has ${width} × ${height} pixels, more than ${mostPixels} million; scale it down and choose it again.`,
});
