import type { Lab } from '../../colour/lab.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint-colour.ts';
import type { CellMap, Pull } from '../../stack/types.ts';
import { say } from '../../words/en/explore/settings.ts';
import { numberLocale } from '../../words/language.ts';
import { edgeShare, SHEET_EDGE_MM } from '../measure/edge-share.ts';
import { overprintColourArea } from '../measure/overprint-colours.ts';
import { needs } from '../measure/set-ups.ts';
import { type Range, wholeFrom } from './range.ts';

/** A print as a limit on its sheet measures it. */
export interface LimitedPrint {
  readonly map: CellMap;
  /** Lab of each cell, three numbers a cell. */
  readonly lab: Float64Array;
  /** Lab of the paper and of each pull alone on it. */
  readonly swatches: readonly Lab[];
}

/** What a limit of either kind has words for. */
interface LimitWords {
  /** Which fold of the settings it stands in. */
  fold: 'inks' | 'print';
  label: string;
  /** Behind the field. */
  unit: string;
  help?: string;
  range: Range;
  /** What is limited, in a sentence: 'pulls', "the sheet's edge". */
  what: string;
  /** Set to a value, in two words for the fold's title; in words that begin small for a condition. */
  brief: (value: string) => string;
  says: (value: string) => string;
}

/** At most so many of something that is counted from the pulls alone. */
export interface CountLimit extends LimitWords {
  kind: 'count';
  /** Within a sentence: 'at most 3 pulls'. */
  atMost: (value: string) => string;
  /** Whether the pulls that stay alone may be too many, each pull left out or brought in being one at most. */
  ofStack: boolean;
  measure: (pulls: readonly Pull[]) => number;
}

/** At most such a share of the sheet, 0–1. */
export interface ShareLimit extends LimitWords {
  kind: 'share';
  /** Whether it asks for colours, which take longer than areas. */
  ofColours: boolean;
  measure: (print: LimitedPrint) => number;
}

const SHARE: Range = { least: 0, most: 1, step: 0.005, whole: false };

function countLimit(what: string, words: Pick<CountLimit, 'fold' | 'label' | 'unit' | 'help' | 'ofStack' | 'measure'>): CountLimit {
  const atMost = (value: string): string => say.atMost(value, value === '1' ? what.slice(0, -1) : what);
  return {
    kind: 'count',
    range: wholeFrom(1),
    what,
    brief: (value) => (words.fold === 'inks' ? say.atMostValue(value) : say.numberOf(value, what)),
    atMost,
    says: (value) => say.printHas(atMost(value)),
    ...words,
  };
}

const different = (name: (pull: Pull) => string) => (pulls: readonly Pull[]) => new Set(pulls.map(name)).size;

/**
 * The limits of the settings by their fields, in the order in which they are offered. An entry here is
 * all that a new limit takes: files, checks, conditions, fields and the search read it from here.
 */
export const LIMITS = {
  maxInks: countLimit('inks', {
    fold: 'inks',
    label: say.inOnePrintAt,
    unit: say.inks,
    ofStack: false,
    measure: different((pull) => pull.ink),
  }),
  maxPulls: countLimit('pulls', { fold: 'print', label: say.pulls, unit: say.aPrint, ofStack: true, measure: (pulls) => pulls.length }),
  maxScreens: countLimit('screens', {
    fold: 'print',
    label: say.screens,
    unit: say.aPrint,
    ofStack: true,
    measure: different((pull) => pull.screen),
  }),
  maxSetUps: countLimit('set-ups', {
    fold: 'print',
    label: say.setUps,
    unit: say.aPrint,
    help: say.setUpIsOne,
    ofStack: true,
    measure: (pulls) => needs(pulls).setUps,
  }),
  maxThirdShare: {
    kind: 'share',
    fold: 'print',
    label: say.overprintColours,
    unit: '%',
    help: say.overprintColourAppearsWhere(OVERPRINT_COLOUR_DELTA_E),
    range: SHARE,
    what: say.overprintColours2,
    brief: (value) => say.overprintColoursValue(value),
    says: (value) => say.overprintColoursCoverAt(value),
    ofColours: true,
    measure: ({ map, lab, swatches }) => overprintColourArea(map, lab, swatches) / (map.widthMm * map.heightMm),
  },
  maxEdgeShare: {
    kind: 'share',
    fold: 'print',
    label: say.inkOnSheetsOuter(SHEET_EDGE_MM),
    unit: '%',
    range: SHARE,
    what: say.sheetsEdge,
    brief: (value) => say.edge(value),
    says: (value) => say.inkCoversAtMost(value, SHEET_EDGE_MM),
    ofColours: false,
    measure: ({ map }) => edgeShare(map),
  },
} satisfies Record<string, CountLimit | ShareLimit>;

export type LimitField = keyof typeof LIMITS;

/** Of these, what is left out does not limit anything. */
export type LimitSettings = { [K in LimitField]?: number | undefined };

type Entry<L> = readonly [LimitField, L];

const entries = Object.entries(LIMITS) as unknown as readonly Entry<CountLimit | ShareLimit>[];

export const LIMIT_FIELDS: readonly LimitField[] = entries.map(([field]) => field);
export const COUNT_LIMITS: readonly Entry<CountLimit>[] = entries.filter((entry): entry is Entry<CountLimit> => entry[1].kind === 'count');
/** Those on areas first, since colours take longer. */
const SHARE_LIMITS: readonly Entry<ShareLimit>[] = entries
  .filter((entry): entry is Entry<ShareLimit> => entry[1].kind === 'share')
  .sort(([, a], [, b]) => Number(a.ofColours) - Number(b.ofColours));

/** A limit's value as it is read: '1,200', '5 %'. */
export function limitText(field: LimitField, value: number): string {
  return LIMITS[field].kind === 'count' ? value.toLocaleString(numberLocale()) : `${Math.round(value * 1000) / 10} %`;
}

/** Whether the pulls keep to all that is limited by counting. */
export function withinCounts(pulls: readonly Pull[], settings: LimitSettings): boolean {
  return COUNT_LIMITS.every(([field, { measure }]) => {
    const most = settings[field];
    return most === undefined || measure(pulls) <= most;
  });
}

/** The limits on shares that can be broken at all, with how much each allows. */
export function sharesAsked(settings: LimitSettings): { limit: ShareLimit; most: number }[] {
  return SHARE_LIMITS.map(([field, limit]) => ({ limit, most: settings[field] ?? 1 })).filter(({ most }) => most < 1);
}
