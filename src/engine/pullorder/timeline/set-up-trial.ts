import { f64, num } from '../../base/at.ts';
import type { PartKind, SetUp } from '../types.ts';
import type { PressRules } from './press-rules.ts';

/** A sheet that a set-up prints, from when on it can be, and the ink that keeps it until then. */
export interface WaitingSheet {
  sheet: number;
  pull: number;
  ready: number;
  ink: string | null;
  /** What its strokes take. */
  minutes: number;
}

/** A set-up with the sheets that it prints, those that dry first first, and how long its films keep them in the racks. */
export interface SetUpWork {
  setUp: SetUp;
  queue: readonly WaitingSheet[];
  stackMinutes: number;
  /** What the pull on the test sheet takes, and where its place in the racks is counted; null without a test sheet. */
  test: { minutes: number; place: number } | null;
}

/** A set-up tried on a bed from some moment on; nothing is booked yet. Minutes from the first day's start. */
export class SetUpTrial {
  readonly bed: number;
  readonly day: number;
  readonly start: number;
  first = -1;
  end: number;
  /** End of each pull, in the order of the queue. */
  readonly ends: number[] = [];
  /** When the test sheet goes to the racks, -1 without one. */
  testEnd = -1;
  readonly parts: { kind: PartKind; from: number; to: number }[] = [];
  wait = 0;
  rackWait = 0;
  readonly waitFor = new Map<string, number>();
  /** Whether it ends within its day, washed up. */
  inDay = false;
  readonly #rules: PressRules;

  constructor(rules: PressRules, place: { bed: number; day: number; start: number }) {
    this.#rules = rules;
    this.bed = place.bed;
    this.day = place.day;
    this.start = place.start;
    this.end = place.start;
  }

  /**
   * What comes before the first pull.
   * @param previous what is on the bed, null for a bed that is bare
   */
  prepare(setUp: SetUp, previous: SetUp | null, isMixed: boolean): void {
    const { washUpMinutes, mixMinutes, mountMinutes, registerMinutes } = this.#rules;
    if (previous !== null && (previous.screen !== setUp.screen || previous.ink !== setUp.ink)) this.#work('wash', washUpMinutes);
    if (!isMixed) this.#work('mix', mixMinutes);
    if (previous?.screen !== setUp.screen) this.#work('mount', mountMinutes);
    else if (previous.offset !== setUp.offset) this.#work('register', registerMinutes);
  }

  /**
   * All pulls, that on the test sheet first, and whether the day is long enough.
   * @param stackAt for each sheet the minute at which it leaves the racks
   */
  print({ queue, stackMinutes, test }: SetUpWork, stackAt: Float64Array): void {
    const { clock, washUpMinutes, rackPlaces } = this.#rules;
    const wet = rackPlaces < Infinity ? Float64Array.from(stackAt) : stackAt;
    if (test !== null) {
      // It is not waited for: where it is wet a clear film lies over it, and that goes to the racks as well.
      this.#pull({ sheet: test.place, pull: 0, ready: 0, ink: null, minutes: test.minutes }, wet);
      this.testEnd = this.end;
      wet[test.place] = Math.max(f64(wet, test.place), rackPlaces < Infinity ? this.end + stackMinutes : 0);
    }
    for (const waiting of queue) {
      const at = this.#pull(waiting, wet);
      if (this.first < 0) this.first = at;
      this.ends.push(this.end);
      wet[waiting.sheet] = Math.max(f64(wet, waiting.sheet), rackPlaces < Infinity ? this.end + stackMinutes : 0);
    }
    if (this.first < 0) this.first = this.end;
    this.inDay = clock.workEnd(this.end, washUpMinutes) <= clock.closes(this.day) + 1e-9;
  }

  #work(kind: PartKind, minutes: number): void {
    if (minutes <= 0) return;
    const { clock } = this.#rules;
    const from = clock.afterLunch(this.end);
    this.end = clock.workEnd(from, minutes);
    this.parts.push({ kind, from, to: this.end });
  }

  /** @returns when it begins */
  #pull({ sheet, ready, ink, minutes: pullMinutes }: WaitingSheet, wet: Float64Array): number {
    const { clock, rackPlaces } = this.#rules;
    const now = this.end;
    const racked = rackPlaces < Infinity ? rackFree(wet, sheet, Math.max(now, ready), rackPlaces) : 0;
    const until = Math.max(now, ready, racked);
    if (until > now) {
      const minutes = until - now - clock.lunchBetween(now, until);
      const forRacks = racked > Math.max(now, ready) ? racked - Math.max(now, ready) : 0;
      this.wait += minutes;
      this.rackWait += Math.min(minutes, forRacks);
      if (ready > now && ink !== null) this.waitFor.set(ink, (this.waitFor.get(ink) ?? 0) + ready - now);
      this.parts.push({ kind: 'wait', from: now, to: until });
    }
    return this.#print(until, pullMinutes);
  }

  /** One pull as soon after a moment as lunch allows. @returns when it begins */
  #print(from: number, minutes: number): number {
    const { clock } = this.#rules;
    const at = clock.pieceStart(from, minutes);
    this.end = at + minutes;
    const last = this.parts.at(-1);
    if (last?.kind === 'print') last.to = this.end;
    else this.parts.push({ kind: 'print', from: at, to: this.end });
    return at;
  }
}

/** When a sheet finds a place: the first moment from `at` when fewer than `places` others are wet. */
function rackFree(wet: Float64Array, sheet: number, at: number, places: number): number {
  let count = 0;
  for (let s = 0; s < wet.length; s++) if (s !== sheet && f64(wet, s) > at) count++;
  if (count < places) return at;
  const others = [...wet].filter((until, s) => s !== sheet && until > at).sort((a, b) => a - b);
  return num(others, count - places);
}
