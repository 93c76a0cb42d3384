import { entryAt, f64, i32 } from '../../base/at.ts';
import type { DayClock } from '../timeline/day-clock.ts';
import { type PressRules, pressRules } from '../timeline/press-rules.ts';
import type { TimelineInput } from '../timeline/start-state.ts';
import type { PlanPull } from '../types.ts';

/** Lists of numbers one after another: those of `i` stand from `from[i]` to `from[i + 1]`. */
interface Lists {
  from: Int32Array;
  items: Int32Array;
}

/** What a set-up is: a screen, an ink and an offset, by number. */
export interface SetUpKind {
  screen: number;
  ink: number;
  offset: number;
}

/**
 * A visit in numbers, for a search that lays it out many thousand times. Pulls are numbered over all
 * sheets, sheet by sheet, as the timeline has them.
 */
export interface Shop {
  beds: number;
  clock: DayClock;
  beginMinute: number;
  mountMinutes: number;
  washUpMinutes: number;
  registerMinutes: number;
  mixMinutes: number;
  /** Wet sheets that there is room for; Infinity for as many as need be. */
  rackPlaces: number;
  /** Whether each set-up is first pulled on the test sheet. */
  tests: boolean;
  pulls: number;
  /** By pull. */
  sheetOf: Int32Array;
  kindOf: Int32Array;
  minutes: Float64Array;
  /** By pull: until another film can go over it, and until the sheet leaves the racks. */
  dryMinutes: Float64Array;
  stackMinutes: Float64Array;
  /** By pull: when the sheet is dry enough for it, from what was on it before. */
  readyAt: Float64Array;
  /** By pull: those that touch it, that must lie under it, and that must lie over it. */
  touching: Lists;
  under: Lists;
  over: Lists;
  kinds: readonly SetUpKind[];
  screens: number;
  inks: number;
  /** Inks that stand mixed. */
  mixed: readonly number[];
  /** By bed what is on it, null or nothing for a bed that is bare. */
  onPress: readonly (SetUpKind | null)[];
  /** By sheet, others that lie in the racks, and the test sheet last: when it leaves the racks. */
  stackAt: Float64Array;
  /** The number of a pull. */
  pullAt(sheet: number, pull: number): number;
  /** Its sheet and pull. */
  placeOf(pull: number): [number, number];
}

/** Numbers for names, in the order in which they are met. */
class Names {
  readonly #known = new Map<string, number>();

  of(name: string): number {
    let number = this.#known.get(name);
    if (number === undefined) this.#known.set(name, (number = this.#known.size));
    return number;
  }

  get size(): number {
    return this.#known.size;
  }
}

function listsOf(lists: readonly (readonly number[])[]): Lists {
  const from = new Int32Array(lists.length + 1);
  for (const [i, list] of lists.entries()) from[i + 1] = i32(from, i) + list.length;
  return { from, items: Int32Array.from(lists.flat()) };
}

/** Numbers for screens, inks and offsets, and for the kinds that they make. */
class Kinds {
  readonly screens = new Names();
  readonly inks = new Names();
  readonly #offsets = new Names();
  readonly #names = new Names();
  readonly list: SetUpKind[] = [];

  of({ screen, ink, offset = '' }: Pick<PlanPull, 'screen' | 'ink' | 'offset'>): SetUpKind {
    return { screen: this.screens.of(screen), ink: this.inks.of(ink), offset: this.#offsets.of(offset) };
  }

  numberOf(pull: PlanPull): number {
    const kind = this.of(pull);
    const number = this.#names.of(`${kind.screen} ${kind.ink} ${kind.offset}`);
    if (number === this.list.length) this.list.push(kind);
    return number;
  }
}

type PullFigures = Pick<Shop, 'sheetOf' | 'kindOf' | 'minutes' | 'dryMinutes' | 'stackMinutes' | 'readyAt' | 'touching' | 'under' | 'over'>;

function pullFigures(
  { input, start, pullMinutes, strokeMinutes, stackMinutesByInk, touching }: PressRules,
  first: Int32Array,
  kinds: Kinds,
): PullFigures {
  const { sheets } = input.problem;
  const pulls = i32(first, sheets.length);
  const numbers = (): Float64Array => new Float64Array(pulls);
  const empty = (): number[][] => Array.from({ length: pulls }, () => []);
  const of = { sheetOf: new Int32Array(pulls), kindOf: new Int32Array(pulls) };
  const by = { minutes: numbers(), dryMinutes: numbers(), stackMinutes: numbers(), readyAt: numbers() };
  const lists = { touching: empty(), under: empty(), over: empty() };
  for (const [s, sheet] of sheets.entries()) {
    const base = i32(first, s);
    for (const [p, pull] of sheet.pulls.entries()) {
      const at = base + p;
      of.sheetOf[at] = s;
      of.kindOf[at] = kinds.numberOf(pull);
      by.minutes[at] = pullMinutes + ((pull.strokes ?? 1) - 1) * strokeMinutes;
      by.dryMinutes[at] = input.dryMinutesByInk[pull.ink] ?? 0;
      by.stackMinutes[at] = stackMinutesByInk[pull.ink] ?? f64(by.dryMinutes, at);
      by.readyAt[at] = start.readyAt?.[s]?.[p]?.minute ?? 0;
      for (const other of entryAt(entryAt(touching, s), p)) entryAt(lists.touching, at).push(base + other);
    }
    for (const [a, b] of sheet.overlaps) {
      entryAt(lists.under, base + b).push(base + a);
      entryAt(lists.over, base + a).push(base + b);
    }
  }
  return { ...of, ...by, touching: listsOf(lists.touching), under: listsOf(lists.under), over: listsOf(lists.over) };
}

/**
 * A visit in numbers.
 * @param input with a drying time for every ink, as `timelineOf` asks for
 */
export function shopOf(input: TimelineInput): Shop {
  const rules = pressRules(input);
  const { sheets } = input.problem;
  const { start } = rules;
  const first = new Int32Array(sheets.length + 1);
  for (const [s, { pulls }] of sheets.entries()) first[s + 1] = i32(first, s) + pulls.length;
  const kinds = new Kinds();
  const figures = pullFigures(rules, first, kinds);
  const onPress = (start.onPress ?? []).map((there) => (there === null ? null : kinds.of(there)));
  const mixed = (start.mixed ?? []).map((ink) => kinds.inks.of(ink));
  const tests = rules.testPulls > 0;
  const stackAt = start.stackAt ?? sheets.map(() => 0);
  return {
    ...figures,
    beds: input.visit.beds ?? 1,
    clock: rules.clock,
    beginMinute: start.minute ?? 0,
    mountMinutes: rules.mountMinutes,
    washUpMinutes: rules.washUpMinutes,
    registerMinutes: rules.registerMinutes,
    mixMinutes: rules.mixMinutes,
    rackPlaces: rules.rackPlaces,
    tests,
    pulls: i32(first, sheets.length),
    kinds: kinds.list,
    screens: kinds.screens.size,
    inks: kinds.inks.size,
    mixed,
    onPress,
    stackAt: Float64Array.from(tests ? [...stackAt, start.testStackAt ?? 0] : stackAt),
    pullAt: (sheet, pull) => i32(first, sheet) + pull,
    placeOf: (pull) => [i32(figures.sheetOf, pull), pull - i32(first, i32(figures.sheetOf, pull))],
  };
}
