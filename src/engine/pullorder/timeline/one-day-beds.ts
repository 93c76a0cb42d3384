import { entryAt, num } from '../../base/at.ts';
import type { PlanPull } from '../types.ts';
import { dayClock } from './day-clock.ts';
import { DEFAULT_PRESS_TIMES } from './default-times.ts';
import type { ShopOperation } from './one-day-shop.ts';
import type { TimelineInput } from './start-state.ts';

/** Work that one bed does at a time: what must pass before it can begin, and what must follow its end, minutes. */
interface Piece {
  head: number;
  minutes: number;
  tail: number;
}

/** Heads that are looked at: any choice of them gives a bound. */
const MOST_HEADS = 40;

/** What the strokes of a pull take, minutes. */
export function pullMinutes(
  { strokes = 1 }: Pick<PlanPull, 'strokes'>,
  { pullsPerHour, strokeMinutes = 0 }: TimelineInput['times'],
): number {
  return 60 / pullsPerHour + (strokes - 1) * strokeMinutes;
}

/** What must pass between two films of a sheet: drying, and under one screen what is washed or moved between. */
function lagBetween(one: PlanPull, other: PlanPull, { times, dryMinutesByInk }: TimelineInput): number {
  const dry = dryMinutesByInk[one.ink] ?? 0;
  if (one.screen !== other.screen) return dry;
  if (one.ink !== other.ink) return Math.max(dry, times.washUpMinutes);
  if ((one.offset ?? '') === (other.offset ?? '')) return dry;
  const { registerMinutes = DEFAULT_PRESS_TIMES.registerMinutes, washUpMinutes, mountMinutes } = times;
  return Math.max(dry, Math.min(registerMinutes, washUpMinutes + mountMinutes));
}

/** Each pull waits for those that must lie under it; a frame prints one sheet at a time. Sheets one after another. */
export function operationsOf(input: TimelineInput): ShopOperation[] {
  const operations: ShopOperation[] = [];
  for (const { pulls, overlaps } of input.problem.sheets) {
    const base = operations.length;
    const after: { operation: number; lagMinutes: number }[][] = pulls.map(() => []);
    for (const [a, b] of overlaps)
      entryAt(after, b).push({ operation: base + a, lagMinutes: lagBetween(entryAt(pulls, a), entryAt(pulls, b), input) });
    for (const [p, pull] of pulls.entries())
      operations.push({ machine: pull.screen, minutes: pullMinutes(pull, input.times), after: entryAt(after, p) });
  }
  return operations;
}

/** Pulls with the first mount of each frame, the last wash of each frame with an ink, and the mixing of each ink. */
function piecesOf(input: TimelineInput, operations: readonly ShopOperation[]): Piece[] {
  const { times, start = {}, problem } = input;
  const { mountMinutes, washUpMinutes, mixMinutes = 0 } = times;
  const pulls = problem.sheets.flatMap((sheet) => sheet.pulls);
  const stays = new Set(start.onPress?.map((there) => there?.screen));
  const heads = pulls.map(({ screen }) => (stays.has(screen) ? 0 : mountMinutes));
  const tails = pulls.map(() => washUpMinutes);
  // Pulls stand below those that wait for them.
  for (const [at, { after }] of operations.entries())
    for (const { operation, lagMinutes } of after)
      heads[at] = Math.max(num(heads, at), num(heads, operation) + entryAt(operations, operation).minutes + lagMinutes);
  for (let at = operations.length - 1; at >= 0; at--) {
    const { after, minutes } = entryAt(operations, at);
    for (const { operation, lagMinutes } of after)
      tails[operation] = Math.max(num(tails, operation), lagMinutes + minutes + num(tails, at));
  }
  const mounts = new Map<string, Piece>();
  const washes = new Map<string, Piece>();
  const mixes = new Map<string, Piece>();
  const pieces: Piece[] = [];
  for (const [at, { screen, ink }] of pulls.entries()) {
    const { minutes } = entryAt(operations, at);
    const [head, tail] = [num(heads, at), num(tails, at)];
    pieces.push({ head, minutes, tail });
    const mount = mounts.get(screen);
    if (mount === undefined) mounts.set(screen, { head: 0, minutes: stays.has(screen) ? 0 : mountMinutes, tail: minutes + tail });
    else mount.tail = Math.max(mount.tail, minutes + tail);
    const pair = `${screen} ${ink}`;
    const wash = washes.get(pair);
    if (wash === undefined) washes.set(pair, { head: head + minutes, minutes: washUpMinutes, tail: 0 });
    else wash.head = Math.max(wash.head, head + minutes);
    const mix = mixes.get(ink);
    if (mix === undefined) mixes.set(ink, { head: 0, minutes: start.mixed?.includes(ink) === true ? 0 : mixMinutes, tail: minutes + tail });
    else mix.tail = Math.min(mix.tail, minutes + tail);
  }
  return [...pieces, ...mounts.values(), ...washes.values(), ...mixes.values()];
}

/**
 * When all can be done at the earliest on the day on which work begins: whatever has a head and a tail
 * of some length at least is done between the two, shared evenly by the beds; lunch rests.
 * @param operations of `operationsOf`
 * @returns minutes from the first day's start
 */
export function bedsBound(input: TimelineInput, operations: readonly ShopOperation[]): number {
  const from = input.start?.minute ?? 0;
  const clock = dayClock(input.visit);
  const beds = input.visit.beds ?? 1;
  const pieces = piecesOf(input, operations).sort((a, b) => b.tail - a.tail);
  const heads = [...new Set(pieces.map(({ head }) => head))].sort((a, b) => a - b);
  const every = Math.max(1, Math.ceil(heads.length / MOST_HEADS));
  let latest = from;
  for (const head of heads.filter((_, i) => i % every === 0)) {
    const begins = clock.afterLunch(from + head);
    let minutes = 0;
    for (const [i, piece] of pieces.entries()) {
      if (piece.head < head) continue;
      minutes += piece.minutes;
      // The sum up to the last piece of a tail says most.
      if (pieces[i + 1]?.tail === piece.tail) continue;
      latest = Math.max(latest, clock.workEnd(begins, minutes / beds) + piece.tail);
    }
  }
  return latest;
}
