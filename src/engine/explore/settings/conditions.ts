import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/settings.ts';
import type { ExploreSettings } from '../types.ts';
import { describeHold } from './hold-words.ts';
import { LIMIT_FIELDS, LIMITS, limitText } from './limits.ts';

/** One thing that is asked of every print. */
export interface Condition {
  /** In words that begin small: 'Tar never touches Foam'. */
  says: string;
  field: keyof ExploreSettings;
  /** The field with this condition alone. */
  only: Partial<ExploreSettings>;
}

/**
 * All that settings ask of every print, one by one; conditions about what is gone from the drawer or the
 * stack ask for nothing and are left out.
 * @param bench the base stack, first down first
 */
export function conditionsOf(settings: ExploreSettings, studio: Studio, bench: readonly Pull[]): Condition[] {
  const { holds, apart = [], neverOver = [], inkFirst, inkLast, mustScreens = [], notScreens = [] } = settings;
  const ink = (id: string): string | undefined => studio.inks.find((each) => each.id === id)?.name;
  const screen = (id: string): number | undefined => studio.screens.find((each) => each.id === id)?.number;
  const number = new Map(bench.map((pull, i) => [pull.id, i + 1]));
  const out = new Set(holds.flatMap((hold) => (hold.kind === 'out' ? [hold.pull] : [])));
  const left = bench.filter((pull) => !out.has(pull.id));
  const conditions: Condition[] = [];
  const add = (field: keyof ExploreSettings, value: unknown, says: string): void => {
    conditions.push({ says, field, only: { [field]: value } });
  };
  for (const hold of holds) {
    if (number.has(hold.pull) && (hold.kind !== 'before' || number.has(hold.other))) add('holds', [hold], describeHold(hold, number, left));
  }
  for (const pair of apart) if (pair.every(ink)) add('apart', [pair], say.neverTouches(ink(pair[0]) ?? '', ink(pair[1]) ?? ''));
  for (const pair of neverOver) if (pair.every(ink)) add('neverOver', [pair], say.neverLiesOver(ink(pair[0]) ?? '', ink(pair[1]) ?? ''));
  if (inkFirst !== undefined && ink(inkFirst) !== undefined) add('inkFirst', inkFirst, say.goesDownBeforeAllOtherInks(ink(inkFirst) ?? ''));
  if (inkLast !== undefined && ink(inkLast) !== undefined) add('inkLast', inkLast, say.goesDownAfterAllOther(ink(inkLast) ?? ''));
  for (const id of mustScreens) if (screen(id) !== undefined) add('mustScreens', [id], say.screenIsInEvery(screen(id) ?? ''));
  for (const id of notScreens) if (screen(id) !== undefined) add('notScreens', [id], say.screenIsInNo(screen(id) ?? ''));
  for (const field of LIMIT_FIELDS) {
    const most = settings[field];
    if (most !== undefined) add(field, most, LIMITS[field].says(limitText(field, most)));
  }
  return conditions;
}

/** The fields of settings that ask something of every print, with some of the conditions alone. */
export function conditionFields(conditions: readonly Condition[]): Partial<ExploreSettings> & Pick<ExploreSettings, 'holds'> {
  const fields: Record<string, unknown> = { ...NO_CONDITIONS };
  for (const { field, only } of conditions) {
    const before = fields[field];
    fields[field] = Array.isArray(before) ? [...before, ...(only[field] as unknown[])] : only[field];
  }
  return fields as ReturnType<typeof conditionFields>;
}

const NO_CONDITIONS: Partial<ExploreSettings> & Pick<ExploreSettings, 'holds'> = {
  holds: [],
  apart: undefined,
  neverOver: undefined,
  inkFirst: undefined,
  inkLast: undefined,
  mustScreens: undefined,
  notScreens: undefined,
  ...Object.fromEntries(LIMIT_FIELDS.map((field) => [field, undefined])),
};
