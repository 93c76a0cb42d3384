import { defined, entryAt, i32, num } from '../../base/at.ts';
import type { SetUp, VisitTimeline } from '../types.ts';
import { DAY_MINUTES } from './day-clock.ts';
import { bestDispatch, type Dispatch, priorityOrder } from './dispatch.ts';
import type { TimelineInput } from './start-state.ts';
import { timelineOf } from './timeline.ts';

/** Set-ups in the order in which they are taken up, the bed of each, and what the beds change. */
export interface Arrangement {
  setUps: SetUp[];
  /** By set-up, from 0. */
  beds: number[];
  mounts: number;
  inkChanges: number;
  registerMoves: number;
}

/** Pulls laid out in a millisecond of work, over all arrangements tried. */
const PULLS_A_MS = 400;
const MOST_ROUNDS = 2000;

/** When the last bed is washed up, minutes from the first day's start. */
export function endOf({ parts }: Pick<VisitTimeline, 'parts'>): number {
  return parts.reduce((most, { day, toMinute }) => Math.max(most, (day - 1) * DAY_MINUTES + toMinute), 0);
}

/** What changes between set-ups that follow each other on a bed; the first of a bed counts, unless it is there. */
export function changesOnBeds(
  setUps: readonly SetUp[],
  beds: readonly number[],
  onPress?: Pick<SetUp, 'screen' | 'ink' | 'offset'>,
): Pick<Arrangement, 'mounts' | 'inkChanges' | 'registerMoves'> {
  const before = new Map<number, Pick<SetUp, 'screen' | 'ink' | 'offset'>>();
  if (onPress !== undefined) before.set(0, onPress);
  const out = { mounts: 0, inkChanges: 0, registerMoves: 0 };
  for (const [i, setUp] of setUps.entries()) {
    const last = before.get(num(beds, i));
    if (last?.screen !== setUp.screen) out.mounts++;
    else if (last.offset !== setUp.offset) out.registerMoves++;
    if (last?.ink !== setUp.ink) out.inkChanges++;
    for (const [bed, other] of before) if (bed !== num(beds, i) && other.screen === setUp.screen) before.set(bed, { ...other, screen: '' });
    before.set(num(beds, i), setUp);
  }
  return out;
}

/**
 * Shares the set-ups of a plan between the beds and puts them in an order that ends soon: on several
 * beds the soonest end counts, on one the fewest mounts, ink changes and changes of offset and then the
 * soonest end. Pulls of a sheet that touch keep the order of the plan.
 * @param budgetMs work allowed; at most some thousand arrangements are tried
 * @param given the bed of each set-up, where it has one already
 * @param enough an end that nothing can beat, minutes from the first day's start
 * @yields the share that is done, 0–1
 * @throws EngineError as `timelineOf`
 */
export function* arrangeSetUps(
  input: TimelineInput,
  setUps: readonly SetUp[],
  { seed, enough, budgetMs, beds: given }: { seed: string; enough: number; budgetMs: number; beds?: readonly number[] | undefined },
): Generator<number, Arrangement> {
  const lay = timelineOf(input);
  const bedCount = input.visit.beds ?? 1;
  const onPress = input.start?.onPress;
  const before = waitsOf(input, setUps);
  const pick = <T>(list: readonly T[], order: readonly number[]): T[] => order.map((at) => entryAt(list, at));
  const cost = ({ order, places }: Dispatch): number[] => {
    const sorted = pick(setUps, order);
    const beds = pick(places, order);
    const { timeline } = lay(sorted, beds);
    const { mounts, inkChanges, registerMoves } = changesOnBeds(sorted, beds, onPress);
    const end = Math.round(10 * endOf(timeline));
    const changes = [mounts, inkChanges, registerMoves];
    return bedCount > 1 ? [end, ...changes] : [...changes, end, Math.round(timeline.waitMinutes)];
  };
  const dispatchOf = (order: number[]): Dispatch => {
    const places = setUps.map(() => 0);
    for (const { setUp, bed } of lay(pick(setUps, order)).timeline.times) places[num(order, setUp)] = bed;
    return { order, places };
  };
  const inPlan = setUps.map((_, i) => i);
  const byTail = priorityOrder(before, tailsOf(input, setUps, before));
  const starts: Dispatch[] = [dispatchOf(inPlan)];
  if (bedCount > 1) {
    const shared = sharedByFrame(setUps, bedCount);
    starts.push(dispatchOf(byTail), { order: inPlan, places: shared }, { order: byTail, places: shared });
    if (given !== undefined) starts.push({ order: inPlan, places: [...given] });
  }
  const pulls = setUps.reduce((sum, setUp) => sum + setUp.pulls.length, 0);
  const rounds = Math.min(MOST_ROUNDS, Math.round((PULLS_A_MS * budgetMs) / Math.max(1, pulls)));
  const least = Math.round(10 * enough);
  const { dispatch, cost: found } = yield* bestDispatch(
    { before, places: bedCount, cost, ...(bedCount > 1 ? { enough: ([end]: readonly number[]) => defined(end) <= least } : {}) },
    starts,
    { seed, rounds },
  );
  const inTime = bedCount > 1 ? byStart(input, setUps, dispatch) : dispatch;
  const { order, places } = compare(cost(inTime), found) <= 0 ? inTime : dispatch;
  const sorted = pick(setUps, order);
  const beds = pick(places, order);
  return { setUps: sorted, beds, ...changesOnBeds(sorted, beds, onPress) };
}

function compare([a]: readonly number[], [b]: readonly number[]): number {
  return defined(a) - defined(b);
}

/** For each set-up those that must come before it: films that touch on a sheet keep their order. */
function waitsOf({ problem, touching }: TimelineInput, setUps: readonly SetUp[]): number[][] {
  const of = problem.sheets.map((sheet) => new Int32Array(sheet.pulls.length).fill(-1));
  for (const [i, setUp] of setUps.entries()) for (const [s, p] of setUp.pulls) entryAt(of, s)[p] = i;
  const before = setUps.map(() => new Set<number>());
  for (const [s, sheet] of problem.sheets.entries()) {
    for (const [a, b] of [...sheet.overlaps, ...(touching?.[s] ?? [])]) {
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
function byStart(input: TimelineInput, setUps: readonly SetUp[], { order, places }: Dispatch): Dispatch {
  const sorted = order.map((at) => entryAt(setUps, at));
  const { times } = timelineOf(input)(
    sorted,
    order.map((at) => num(places, at)),
  ).timeline;
  const sheets = sorted.map((setUp) => new Set(setUp.pulls.map(([s]) => s)));
  const before = sorted.map((setUp, i) => {
    const list: number[] = [];
    for (let k = 0; k < i; k++) {
      const shares =
        entryAt(sorted, k).screen === setUp.screen ||
        entryAt(times, k).bed === entryAt(times, i).bed ||
        [...entryAt(sheets, i)].some((s) => entryAt(sheets, k).has(s));
      if (shares) list.push(k);
    }
    return list;
  });
  const again = priorityOrder(
    before,
    times.map(({ day, startMinute }) => -((day - 1) * DAY_MINUTES + startMinute)),
  );
  return { order: again.map((at) => num(order, at)), places };
}
