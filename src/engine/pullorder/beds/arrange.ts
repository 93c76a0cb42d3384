import { defined, entryAt, i32, num } from '../../base/at.ts';
import { type Changes, changesOnBeds, endOf } from '../timeline/beds.ts';
import { DAY_MINUTES } from '../timeline/day-clock.ts';
import { type Dispatch, priorityOrder } from '../timeline/dispatch.ts';
import type { LaidOut, TimelineInput } from '../timeline/start-state.ts';
import { timelineOf } from '../timeline/timeline.ts';
import type { SetUp } from '../types.ts';
import { inWords, numbered } from './arrangement.ts';
import { searchBeds } from './bed-search.ts';
import { shopOf } from './shop.ts';

/** Set-ups in the order in which they are taken up, the bed of each, and what the beds change. */
export interface Arrangement extends Changes {
  setUps: SetUp[];
  /** By set-up, from 0. */
  beds: number[];
}

/** More than there are beds. */
const MOST_BEDS = 16;
/** Pulls laid out in a millisecond of work, over all arrangements tried. */
const PULLS_A_MS = 8000;

interface ArrangeOptions {
  seed: string;
  enough: number;
  budgetMs: number;
  beds?: readonly number[] | undefined;
  other?: { setUps: readonly SetUp[]; beds: readonly number[] } | null | undefined;
}

/**
 * Puts the set-ups of a plan in an order that ends soon. On several beds it shares them, prints sheets
 * of a set-up apart or together as it does, and the soonest end counts, then the fewest mounts, ink
 * changes and changes of offset; on one bed set-ups stay whole and what is changed counts before the end.
 * @param budgetMs work allowed, ms of a common machine
 * @param given the bed of each set-up, where it has one already
 * @param other another order of the same pulls on the same number of beds, from which a search of several beds may begin
 * @param enough an end that nothing can beat, minutes from the first day's start
 * @yields the share that is done, 0–1
 * @throws EngineError as `timelineOf`
 */
export function* arrangeSetUps(
  input: TimelineInput,
  setUps: readonly SetUp[],
  { seed, enough, budgetMs, beds: given, other }: ArrangeOptions,
): Generator<number, Arrangement> {
  const lay = timelineOf(input);
  const shop = shopOf(input);
  const starts = startsOf(input, lay, setUps, given).map(({ order, places }) => numbered(pick(setUps, order), pick(places, order), shop));
  if (other && shop.beds > 1) starts.push(numbered(other.setUps, other.beds, shop));
  const found = yield* searchBeds(shop, starts, {
    seed,
    work: PULLS_A_MS * budgetMs,
    enough: Math.round(10 * enough),
    regroups: shop.beds > 1,
  });
  const kindOf = (s: number, p: number): Omit<SetUp, 'pulls'> => {
    const { screen, ink, offset = '' } = entryAt(entryAt(input.problem.sheets, s).pulls, p);
    return { screen, ink, offset };
  };
  const { setUps: inTurn, beds } = byStart(lay, inWords(found, kindOf, shop));
  return { setUps: inTurn, beds, ...changesOnBeds(inTurn, beds, input.start?.onPress) };
}

function pick<T>(list: readonly T[], order: readonly number[]): T[] {
  return order.map((at) => entryAt(list, at));
}

/** Where a search begins: the plan as it is, and what must be followed by most first, both shared between the beds in two ways. */
function startsOf(
  input: TimelineInput,
  lay: ReturnType<typeof timelineOf>,
  setUps: readonly SetUp[],
  given: readonly number[] | undefined,
): Dispatch[] {
  const beds = input.visit.beds ?? 1;
  const dispatchOf = (order: number[]): Dispatch => {
    const places = setUps.map(() => 0);
    for (const { setUp, bed } of lay(pick(setUps, order)).timeline.times) places[num(order, setUp)] = bed;
    return { order, places };
  };
  const inPlan = setUps.map((_, i) => i);
  if (beds === 1) return [{ order: inPlan, places: setUps.map(() => 0) }];
  const before = waitsOf(input, setUps);
  const byTail = priorityOrder(before, tailsOf(input, setUps, before));
  const shared = sharedByFrame(setUps, beds);
  return [
    ...(given === undefined ? [] : [{ order: inPlan, places: [...given] }]),
    dispatchOf(inPlan),
    dispatchOf(byTail),
    { order: inPlan, places: shared },
    { order: byTail, places: shared },
  ];
}

/** For each set-up those that must come before it, since what lies under and over what is told. */
function waitsOf({ problem }: TimelineInput, setUps: readonly SetUp[]): number[][] {
  const of = problem.sheets.map((sheet) => new Int32Array(sheet.pulls.length).fill(-1));
  for (const [i, setUp] of setUps.entries()) for (const [s, p] of setUp.pulls) entryAt(of, s)[p] = i;
  const before = setUps.map(() => new Set<number>());
  for (const [s, sheet] of problem.sheets.entries()) {
    for (const [a, b] of sheet.overlaps) {
      const [one, other] = [i32(entryAt(of, s), a), i32(entryAt(of, s), b)].sort((x, y) => x - y);
      if (defined(one) >= 0 && one !== other) entryAt(before, defined(other)).add(defined(one));
    }
  }
  return before.map((set) => [...set].sort((a, b) => a - b));
}

/** Minutes from the begin of each set-up to the end of what must follow it. */
function tailsOf({ times, dryMinutesByInk }: TimelineInput, setUps: readonly SetUp[], before: readonly (readonly number[])[]): number[] {
  const tails = setUps.map(() => 0);
  for (let i = setUps.length - 1; i >= 0; i--) {
    const setUp = entryAt(setUps, i);
    tails[i] = num(tails, i) + (times.mountMinutes + (60 / times.pullsPerHour) * setUp.pulls.length);
    for (const other of entryAt(before, i))
      tails[other] = Math.max(num(tails, other), num(tails, i) + (dryMinutesByInk[entryAt(setUps, other).ink] ?? 0));
  }
  return tails;
}

/** Each frame on one bed, the frames with most pulls first, each to the bed that has least. */
function sharedByFrame(setUps: readonly SetUp[], beds: number): number[] {
  const pulls = new Map<string, number>();
  for (const { screen, pulls: own } of setUps) pulls.set(screen, (pulls.get(screen) ?? 0) + own.length);
  const load = Array.from({ length: beds }, () => 0);
  const bedOf = new Map<string, number>();
  for (const [screen, count] of [...pulls].sort((a, b) => b[1] - a[1])) {
    const bed = load.indexOf(Math.min(...load));
    bedOf.set(screen, bed);
    load[bed] = num(load, bed) + count;
  }
  return setUps.map(({ screen }) => defined(bedOf.get(screen)));
}

/** The same arrangement with its set-ups in the order in which they begin, where sheets, frames and beds allow. */
function byStart(
  lay: ReturnType<typeof timelineOf>,
  { setUps, beds }: Pick<Arrangement, 'setUps' | 'beds'>,
): Pick<Arrangement, 'setUps' | 'beds'> {
  const { times } = lay(setUps, beds).timeline;
  const sheets = setUps.map((setUp) => new Set(setUp.pulls.map(([s]) => s)));
  const before = setUps.map((setUp, i) => {
    const list: number[] = [];
    for (let k = 0; k < i; k++) {
      const shares =
        entryAt(setUps, k).screen === setUp.screen ||
        entryAt(times, k).bed === entryAt(times, i).bed ||
        [...entryAt(sheets, i)].some((s) => entryAt(sheets, k).has(s));
      if (shares) list.push(k);
    }
    return list;
  });
  const order = priorityOrder(
    before,
    // Those that begin together stand in the order of their beds.
    times.map(({ day, startMinute, bed }) => -(MOST_BEDS * Math.round(10 * ((day - 1) * DAY_MINUTES + startMinute)) + bed)),
  );
  const [inTurn, places] = [pick(setUps, order), pick(beds, order)];
  const end = (laid: LaidOut): number => Math.round(10 * endOf(laid.timeline));
  // Inks mixed and racks taken in another order may cost time.
  return end(lay(inTurn, places)) <= end(lay(setUps, beds)) ? { setUps: inTurn, beds: places } : { setUps: [...setUps], beds: [...beds] };
}
