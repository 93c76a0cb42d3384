import { OFFSET_RANGE_MM, STROKES } from '../../base/limits.ts';
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
    empty: 'any',
    code: 'limit.range',
    ...(help === undefined ? {} : { help }),
    ...(counts ? {} : { shownTimes: 100 }),
    wrong: (value) =>
      counts
        ? `At most ${value} ${what} were asked for; give a whole number, ${rangeText(range)}, or none.`
        : `The limit on ${what} is ${Math.round(value * 1000) / 10} %; give ${100 * range.least} to ${100 * range.most} %, or none.`,
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
    empty: 'any',
    code: 'explore.order-range',
    wrong: (value) => `${Math.round(value * 100)} % of the overlapping pairs were to change places; give 0 to 100 %, or none.`,
  });
}

const SNAP: NumberSetting & ChoiceSetting<number> = {
  ...optionalNumber(mm(0.1), {
    label: 'Offsets in steps of',
    unit: 'mm',
    empty: '0.1',
    code: 'limit.snap',
    wrong: (value) => `Offsets in steps of ${value} mm were asked for; give a length ${rangeText(mm(0.1))} mm.`,
  }),
  choices: [0.1, 0.5, 1].map((step) => [step, `${step} mm`] as const),
};

/**
 * All settings by their fields. Files, checks and fields read them from here; a limit is an entry of
 * LIMITS.
 */
export const SETTINGS = {
  seed: { label: 'Name of the wall' },
  count: number(COUNT, {
    label: 'How many',
    unit: 'prints',
    code: 'explore.count',
    wrong: (value) => `${value} prints were asked for; ask for a whole number ${rangeText(COUNT)}.`,
  }),
  order: { label: 'Order of the pulls' },
  orderFrom: turnedPairs('Pairs that change places, from'),
  orderTo: turnedPairs('to'),
  recolour: { label: 'Inks' },
  palette: { label: 'Inks that the wall may use' },
  offsetRangeMm: number(mm(), {
    label: 'Offset up to',
    unit: 'mm',
    code: 'explore.offset-range',
    wrong: (value) => `Offsets of up to ${value} mm were asked for; give a length ${rangeText(mm())} mm.`,
  }),
  leaveOut: number(wholeFrom(0), {
    label: 'Leave out up to',
    unit: 'pulls',
    code: 'explore.leave-out',
    wrong: (value) => `The number of screens to leave out is ${value}; give a whole number, ${rangeText(wholeFrom(0))}.`,
  }),
  bringIn: number(wholeFrom(0), {
    label: 'Bring in up to',
    unit: 'screens',
    code: 'explore.bring-in',
    wrong: (value) => `The number of screens to bring in is ${value}; give a whole number, ${rangeText(wholeFrom(0))}.`,
  }),
  holds: { label: 'What must stay' },
  minDeltaE: number(DELTA_E, {
    label: 'Counts as the same below',
    unit: 'ΔE00',
    code: 'explore.min-delta-e',
    wrong: (value) => `The ΔE below which two prints count as the same is ${value}; give a number ${rangeText(DELTA_E)}.`,
  }),
  unwidenedDeltaE: { label: 'Counts as the same below, before it was widened' },
  apart: { label: 'Never touch' },
  neverOver: { label: 'Never over' },
  inkFirst: { label: 'Down before all others' },
  inkLast: { label: 'Down after all others' },
  offsetDirection: choice('Offsets go', ['any', 'any'], ['across', 'across only'], ['down', 'down only']),
  offsetSnapMm: SNAP,
  turns: choice('Turns', ['none', 'none'], ['half', 'by 180°'], ['quarter', 'by 90°'], ['any', 'any']),
  places: choice('Screens lie', ['drawn', 'as drawn'], ['near', 'near'], ['anywhere', 'anywhere']),
  placeMm: optionalNumber(mm(0.1), {
    label: 'From where they were drawn, up to',
    unit: 'mm',
    empty: String(DEFAULT_PLACE_MM),
    code: 'limit.range',
    wrong: (value) => `Screens may lie up to ${value} mm from where they were drawn; give a length ${rangeText(mm(0.1))} mm.`,
  }),
  onSheet: optionalNumber(ON_SHEET, {
    label: 'Stays on the sheet, at least',
    unit: '%',
    shownTimes: 100,
    empty: '100',
    code: 'limit.range',
    wrong: (value) =>
      `At least ${Math.round(value * 1000) / 10} % of a screen is to stay on the sheet; give ${100 * ON_SHEET.least} to 100 %, or none.`,
  }),
  mirrored: { label: 'Mirrored films' },
  repeats: optionalNumber(wholeFrom(0), {
    label: 'Pull again elsewhere, up to',
    unit: 'pulls',
    empty: '0',
    code: 'limit.range',
    wrong: (value) => `${value} pulls were to be pulled again elsewhere; give a whole number, ${rangeText(wholeFrom(0))}.`,
  }),
  echoes: optionalNumber(wholeFrom(0), {
    label: 'Print again, a little off, up to',
    unit: 'pulls',
    empty: '0',
    code: 'limit.range',
    wrong: (value) => `${value} repeats were asked for; give a whole number, ${rangeText(wholeFrom(0))}.`,
  }),
  echoMm: optionalNumber(mm(), {
    label: 'Repeats are off by up to',
    unit: 'mm',
    empty: '0',
    code: 'limit.range',
    wrong: (value) => `Repeats are off by up to ${value} mm; give a length ${rangeText(mm())} mm.`,
  }),
  maxStrokes: optionalNumber(STROKES_A_PULL, {
    label: 'Strokes, 1 to',
    unit: 'a pull',
    empty: '1',
    code: 'limit.range',
    wrong: (value) => `At most ${value} strokes were asked for; give a whole number ${rangeText(STROKES_A_PULL)}, or none.`,
  }),
  veil: { label: 'A veil may go over all, last down' },
  onlyAtHand: { label: 'Only screens at hand: made, or to make' },
  mustScreens: { label: 'always there' },
  notScreens: { label: 'never there' },
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
