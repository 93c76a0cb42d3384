import { OFFSET_RANGE_MM, STROKES } from '../../base/limits.ts';
import { say } from '../../words/en/explore/settings.ts';
import { DEFAULT_PLACE_MM, type ExploreSettings } from '../types.ts';
import { LIMITS, type CountLimit, type LimitField, type ShareLimit } from './limits.ts';
import { type Range, rangeText, wholeFrom } from './range.ts';

/*
 * The words of this folder: settings are all that a wall is made with. Of these, conditions ask
 * something of every print, and can clash: holds (on single pulls), limits (numbers that no print goes
 * beyond), and what inks and screens must or must not do. The others say what may change, and how far.
 */

/** One setting's words. */
export interface Setting {
  label: string;
}

/** A setting that is a number. */
export interface NumberSetting extends Setting {
  range: Range;
  /** Behind the field. */
  unit: string;
  /** What a field shows is so many times what is kept: 100 for a share in %. */
  shownTimes?: number;
  /** What an empty field stands for; absent where a number must stand. */
  empty?: string;
  help?: string;
  /** Code and sentence of a problem with it. */
  code: string;
  wrong: (value: number) => string;
}

/** A setting that is one of a few. */
export interface ChoiceSetting<V> extends Setting {
  /** Values with their words. */
  choices: readonly (readonly [V, string])[];
}

/** More prints than this on one wall are not looked through. */
export const MAX_VARIANTS = 10_000;

function number(range: Range, words: Omit<NumberSetting, 'range' | 'empty'>): NumberSetting {
  return { range, ...words };
}

function optionalNumber(range: Range, words: Omit<NumberSetting, 'range'> & { empty: string }): NumberSetting {
  return { range, ...words };
}

function choice<V extends string>(label: string, ...choices: [V, string][]): ChoiceSetting<V> {
  return { label, choices };
}

function mm(least = OFFSET_RANGE_MM.least): Range {
  return { least, most: OFFSET_RANGE_MM.most, step: 0.1, whole: false };
}

function limit({ kind, range, what, label, unit, help }: CountLimit | ShareLimit): NumberSetting {
  const counts = kind === 'count';
  return optionalNumber(range, {
    label,
    unit,
    empty: say.any,
    code: 'limit.range',
    ...(help === undefined ? {} : { help }),
    ...(counts ? {} : { shownTimes: 100 }),
    wrong: (value) =>
      counts
        ? say.atMostWereAsked(value, what, rangeText(range))
        : say.limitOnIsGive(what, Math.round(value * 1000) / 10, 100 * range.least, 100 * range.most),
  });
}

const limits = Object.fromEntries(Object.entries(LIMITS).map(([field, each]) => [field, limit(each)])) as Record<LimitField, NumberSetting>;

const COUNT = wholeFrom(1, MAX_VARIANTS);
const DELTA_E: Range = { least: 0, most: 100, step: 0.5, whole: false };
/** Less than this of a screen on the sheet is hardly a print of it. */
const ON_SHEET: Range = { least: 0.05, most: 1, step: 0.05, whole: false };
const STROKES_A_PULL = wholeFrom(STROKES.least, STROKES.most);

const PAIRS: Range = { least: 0, most: 1, step: 0.01, whole: false };

function turnedPairs(label: string): NumberSetting {
  return optionalNumber(PAIRS, {
    label,
    unit: '%',
    shownTimes: 100,
    empty: say.any,
    code: 'explore.order-range',
    wrong: (value) => say.ofOverlappingPairsWere(Math.round(value * 100)),
  });
}

const SNAP: NumberSetting & ChoiceSetting<number> = {
  ...optionalNumber(mm(0.1), {
    label: say.offsetsInStepsOf,
    unit: 'mm',
    empty: '0.1',
    code: 'limit.snap',
    wrong: (value) => say.offsetsInStepsOfMm(value, rangeText(mm(0.1))),
  }),
  choices: [0.1, 0.5, 1].map((step) => [step, `${step} mm`] as const),
};

/**
 * All settings by their fields. Files, checks and fields read them from here; a limit is an entry of
 * LIMITS.
 */
export const SETTINGS = {
  seed: { label: say.nameOfWall },
  count: number(COUNT, {
    label: say.howMany,
    unit: say.prints,
    code: 'explore.count',
    wrong: (value) => say.printsWereAskedFor(value, rangeText(COUNT)),
  }),
  order: { label: say.orderOfPulls },
  orderFrom: turnedPairs(say.pairsThatChangePlaces),
  orderTo: turnedPairs(say.to),
  recolour: { label: say.inks2 },
  palette: { label: say.inksThatWallMay },
  offsetRangeMm: number(mm(), {
    label: say.offsetUpTo,
    unit: 'mm',
    code: 'explore.offset-range',
    wrong: (value) => say.offsetsOfUpTo(value, rangeText(mm())),
  }),
  leaveOut: number(wholeFrom(0), {
    label: say.leaveOutUpTo,
    unit: say.pulls2,
    code: 'explore.leave-out',
    wrong: (value) => say.numberOfScreensTo(value, rangeText(wholeFrom(0))),
  }),
  bringIn: number(wholeFrom(0), {
    label: say.bringInUpTo,
    unit: say.screens2,
    code: 'explore.bring-in',
    wrong: (value) => say.numberOfScreensToBring(value, rangeText(wholeFrom(0))),
  }),
  holds: { label: say.whatMustStay },
  minDeltaE: number(DELTA_E, {
    label: say.countsAsSameBelow,
    unit: 'ΔE00',
    code: 'explore.min-delta-e',
    wrong: (value) => say.deltaEBelowWhichTwo(value, rangeText(DELTA_E)),
  }),
  unwidenedDeltaE: { label: say.countsAsSameBelowBefore },
  apart: { label: say.neverTouch },
  neverOver: { label: say.neverOver },
  inkFirst: { label: say.downBeforeAllOthers },
  inkLast: { label: say.downAfterAllOthers },
  offsetDirection: choice(say.offsetsGo, ['any', say.any], ['across', say.acrossOnly], ['down', say.downOnly]),
  offsetSnapMm: SNAP,
  turns: choice(say.turns, ['none', say.none], ['half', say.by180], ['quarter', say.by90], ['any', say.any]),
  places: choice(say.screensLie, ['drawn', say.asDrawn], ['near', say.near], ['anywhere', say.anywhere]),
  placeMm: optionalNumber(mm(0.1), {
    label: say.fromWhereTheyWere,
    unit: 'mm',
    empty: String(DEFAULT_PLACE_MM),
    code: 'limit.range',
    wrong: (value) => say.screensMayLieUp(value, rangeText(mm(0.1))),
  }),
  onSheet: optionalNumber(ON_SHEET, {
    label: say.staysOnSheetAt,
    unit: '%',
    shownTimes: 100,
    empty: '100',
    code: 'limit.range',
    wrong: (value) => say.atLeastOfScreen(Math.round(value * 1000) / 10, 100 * ON_SHEET.least),
  }),
  mirrored: { label: say.mirroredFilms },
  repeats: optionalNumber(wholeFrom(0), {
    label: say.pullAgainElsewhereUp,
    unit: say.pulls2,
    empty: '0',
    code: 'limit.range',
    wrong: (value) => say.pullsWereToBe(value, rangeText(wholeFrom(0))),
  }),
  echoes: optionalNumber(wholeFrom(0), {
    label: say.printAgainLittleOff,
    unit: say.pulls2,
    empty: '0',
    code: 'limit.range',
    wrong: (value) => say.repeatsWereAskedFor(value, rangeText(wholeFrom(0))),
  }),
  echoMm: optionalNumber(mm(), {
    label: say.repeatsAreOffBy,
    unit: 'mm',
    empty: '0',
    code: 'limit.range',
    wrong: (value) => say.repeatsAreOffByUp(value, rangeText(mm())),
  }),
  maxStrokes: optionalNumber(STROKES_A_PULL, {
    label: say.strokes1To,
    unit: say.aPull,
    empty: '1',
    code: 'limit.range',
    wrong: (value) => say.atMostStrokesWere(value, rangeText(STROKES_A_PULL)),
  }),
  veil: { label: say.veilMayGoOver },
  onlyAtHand: { label: say.onlyScreensAtHand },
  mustScreens: { label: say.alwaysThere },
  notScreens: { label: say.neverThere },
  ...limits,
} satisfies Record<keyof Required<ExploreSettings>, Setting>;

/** The fields of settings that are numbers. */
export type NumberField = {
  [K in keyof typeof SETTINGS]: (typeof SETTINGS)[K] extends { range: Range } ? K : never;
}[keyof typeof SETTINGS];

/** The row of a setting that is a number. */
export function numberSetting(field: NumberField): NumberSetting {
  return SETTINGS[field];
}

/** The settings that are numbers, with their fields. */
export const NUMBER_SETTINGS = Object.entries(SETTINGS).filter(([, row]) => 'range' in row) as unknown as readonly (readonly [
  NumberField,
  NumberSetting,
])[];
