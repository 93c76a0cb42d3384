import { entryAt, f64, i32 } from '../../base/at.ts';
import { DAY_MINUTES } from '../timeline/day-clock.ts';
import type { SetUpKind, Shop } from './shop.ts';

/** Some pulls of one kind on a bed. */
export interface BedSetUp {
  kind: number;
  /** Numbers of its pulls, ascending. */
  pulls: Int32Array;
  bed: number;
}

/** What an arrangement costs. */
export interface BedCost {
  /** Set-ups that do not end within a day. */
  overruns: number;
  /** When the last bed is washed up, tenths of a minute from the first day's start, rounded. */
  end: number;
  mounts: number;
  inkChanges: number;
  registerMoves: number;
  /** Minutes in which a bed stands ready and waits, rounded. */
  wait: number;
  /** The ends of all beds together, tenths of a minute. */
  ends: number;
}

/** What a set-up takes beside its pulls, in pulls. */
const SET_UP_WORK = 4;
const NOTHING: SetUpKind = { screen: -1, ink: -1, offset: -1 };

interface Bed {
  clock: number;
  day: number;
  /** What is on it as the day's work goes, and as changes are counted: a night washes, but is no change. */
  on: SetUpKind | null;
  last: SetUpKind;
}

/**
 * Lays arrangements out as `PlanLayout` does, to the same minute, but tells only what they cost: some
 * fifty times as quick. Tests hold the two together.
 */
export class BedClock {
  readonly #shop: Shop;
  readonly #dryAt: Float64Array;
  readonly #stackAt: Float64Array;
  readonly #freeAt: Float64Array;
  readonly #screenBed: Int32Array;
  readonly #screenAt: Float64Array;
  readonly #mixed: Uint8Array;
  /** Pulls of the set-up that is laid out, by when they can be printed, and when that is. */
  readonly #queue: Int32Array;
  readonly #ready: Float64Array;
  readonly #ends: Float64Array;
  readonly #wet: Float64Array;
  #beds: Bed[] = [];
  #end = 0;
  #inDay = false;
  #wait = 0;
  #rackWait = 0;
  #testEnd = -1;
  /** The work that was done so far: pulls laid out, and what a set-up takes besides. */
  laid = 0;

  constructor(shop: Shop) {
    this.#shop = shop;
    this.#dryAt = new Float64Array(shop.pulls);
    this.#stackAt = new Float64Array(shop.stackAt.length);
    this.#freeAt = new Float64Array(shop.stackAt.length);
    this.#screenBed = new Int32Array(shop.screens);
    this.#screenAt = new Float64Array(shop.screens);
    this.#mixed = new Uint8Array(shop.inks);
    this.#queue = new Int32Array(shop.pulls);
    this.#ready = new Float64Array(shop.pulls);
    this.#ends = new Float64Array(shop.pulls);
    this.#wet = new Float64Array(shop.stackAt.length);
  }

  /** When the film of a pull was dry in what was laid out last, minutes from the first day's start. */
  dryAt(pull: number): number {
    return f64(this.#dryAt, pull);
  }

  /**
   * What set-ups cost in this order on their beds.
   * @param most an end in tenths of a minute; what passes it is not laid out further
   * @returns null when it ends later than `most`
   */
  cost(setUps: readonly BedSetUp[], most = Infinity): BedCost | null {
    const { clock, washUpMinutes } = this.#shop;
    this.#begin();
    const cost: BedCost = { overruns: 0, end: 0, mounts: 0, inkChanges: 0, registerMoves: 0, wait: 0, ends: 0 };
    let wait = 0;
    for (const setUp of setUps) {
      const bed = entryAt(this.#beds, setUp.bed);
      const kind = entryAt(this.#shop.kinds, setUp.kind);
      this.#soonest(setUp, kind, bed);
      if (10 * this.#end > most) return null;
      if (!this.#inDay) cost.overruns++;
      wait += this.#wait;
      if (bed.last.screen !== kind.screen) cost.mounts++;
      else if (bed.last.offset !== kind.offset) cost.registerMoves++;
      if (bed.last.ink !== kind.ink) cost.inkChanges++;
      this.#book(setUp, kind, bed);
    }
    for (const { clock: end } of this.#beds) {
      const washed = end > this.#shop.beginMinute && washUpMinutes > 0 ? clock.workEnd(clock.afterLunch(end), washUpMinutes) : end;
      const tenths = Math.round(10 * washed);
      cost.end = Math.max(cost.end, tenths);
      cost.ends += tenths;
    }
    cost.wait = Math.round(wait);
    return cost.end > most ? null : cost;
  }

  #begin(): void {
    const { beds, beginMinute, onPress, mixed, stackAt } = this.#shop;
    this.#dryAt.fill(-1);
    this.#stackAt.set(stackAt);
    this.#freeAt.fill(0);
    this.#screenBed.fill(-1);
    this.#mixed.fill(0);
    for (const ink of mixed) this.#mixed[ink] = 1;
    const day = Math.floor(beginMinute / DAY_MINUTES);
    this.#beds = Array.from({ length: beds }, (_, bed) => {
      const there = onPress[bed] ?? null;
      return { clock: beginMinute, day, on: there, last: there ?? NOTHING };
    });
  }

  /** Fills the queue: plain insertion, as most sheets stand in order. */
  #line({ pulls }: BedSetUp): void {
    const { touching, readyAt, sheetOf } = this.#shop;
    const { from, items } = touching;
    for (let k = 0; k < pulls.length; k++) {
      const pull = i32(pulls, k);
      let ready = f64(readyAt, pull);
      const until = i32(from, pull + 1);
      for (let i = i32(from, pull); i < until; i++) {
        const dry = f64(this.#dryAt, i32(items, i));
        if (dry > ready) ready = dry;
      }
      const free = f64(this.#freeAt, i32(sheetOf, pull));
      if (free > ready) ready = free;
      let at = k;
      for (; at > 0 && f64(this.#ready, at - 1) > ready; at--) {
        this.#ready[at] = f64(this.#ready, at - 1);
        this.#queue[at] = i32(this.#queue, at - 1);
      }
      this.#ready[at] = ready;
      this.#queue[at] = pull;
    }
    this.laid += pulls.length + SET_UP_WORK;
  }

  #soonest(setUp: BedSetUp, kind: SetUpKind, bed: Bed): void {
    const { clock, washUpMinutes } = this.#shop;
    this.#line(setUp);
    const elsewhere = i32(this.#screenBed, kind.screen);
    const screenAt = elsewhere >= 0 && elsewhere !== setUp.bed ? clock.workEnd(f64(this.#screenAt, kind.screen), washUpMinutes) : 0;
    const from = Math.max(bed.clock, screenAt);
    let day = Math.floor(from / DAY_MINUTES);
    let start = from;
    this.#try(setUp, kind, day > bed.day ? null : bed.on, { day, start });
    const next = (): void => {
      day++;
      start = Math.max(day * DAY_MINUTES, screenAt);
      this.#try(setUp, kind, null, { day, start });
    };
    if (!this.#inDay && from > day * DAY_MINUTES) next();
    const lastReady = f64(this.#ready, setUp.pulls.length - 1);
    while (!this.#inDay && start < Math.max(lastReady, this.#rackWait > 0 ? mostOf(this.#stackAt) : 0)) next();
  }

  #try({ pulls }: BedSetUp, kind: SetUpKind, on: SetUpKind | null, { day, start }: { day: number; start: number }): void {
    const { clock, washUpMinutes, mixMinutes, mountMinutes, registerMinutes, rackPlaces, minutes, sheetOf, stackMinutes, tests } =
      this.#shop;
    let end = start;
    if (on !== null && (on.screen !== kind.screen || on.ink !== kind.ink)) end = workFrom(this.#shop, end, washUpMinutes);
    if (this.#mixed[kind.ink] === 0) end = workFrom(this.#shop, end, mixMinutes);
    if (on === null || on.screen !== kind.screen) end = workFrom(this.#shop, end, mountMinutes);
    else if (on.offset !== kind.offset) end = workFrom(this.#shop, end, registerMinutes);
    const racks = rackPlaces < Infinity;
    if (racks) this.#wet.set(this.#stackAt);
    this.#wait = this.#rackWait = 0;
    const testPlace = this.#wet.length - 1;
    const stack = f64(stackMinutes, i32(pulls, 0));
    if (tests) {
      end = this.#pull(end, 0, testPlace, f64(minutes, i32(pulls, 0)));
      this.#testEnd = end;
      if (racks) this.#wet[testPlace] = Math.max(f64(this.#wet, testPlace), end + stack);
    }
    for (let k = 0; k < pulls.length; k++) {
      const pull = i32(this.#queue, k);
      const sheet = i32(sheetOf, pull);
      end = this.#pull(end, f64(this.#ready, k), sheet, f64(minutes, pull));
      this.#ends[k] = end;
      if (racks) this.#wet[sheet] = Math.max(f64(this.#wet, sheet), end + stack);
    }
    this.#end = end;
    this.#inDay = clock.workEnd(end, washUpMinutes) <= clock.closes(day) + 1e-9;
  }

  /** @returns when it ends */
  #pull(now: number, ready: number, sheet: number, minutes: number): number {
    const { clock, rackPlaces } = this.#shop;
    const from = Math.max(now, ready);
    const racked = rackPlaces < Infinity ? this.#rackFree(sheet, from) : 0;
    const until = Math.max(from, racked);
    if (until > now) {
      const waited = until - now - clock.lunchBetween(now, until);
      this.#wait += waited;
      if (racked > from) this.#rackWait += Math.min(waited, racked - from);
    }
    return clock.pieceStart(until, minutes) + minutes;
  }

  /** When a sheet finds a place: the first moment from `at` when fewer others are wet than there are places. */
  #rackFree(sheet: number, at: number): number {
    const wet = this.#wet;
    const { rackPlaces } = this.#shop;
    let count = 0;
    for (let s = 0; s < wet.length; s++) if (s !== sheet && f64(wet, s) > at) count++;
    if (count < rackPlaces) return at;
    const others = wet.filter((until, s) => s !== sheet && until > at).sort();
    return f64(others, count - rackPlaces);
  }

  #book({ pulls, bed: number }: BedSetUp, kind: SetUpKind, bed: Bed): void {
    const { dryMinutes, stackMinutes, sheetOf, tests } = this.#shop;
    const end = this.#end;
    if (tests) {
      const place = this.#stackAt.length - 1;
      this.#stackAt[place] = Math.max(f64(this.#stackAt, place), this.#testEnd + f64(stackMinutes, i32(pulls, 0)));
    }
    for (let k = 0; k < pulls.length; k++) {
      const pull = i32(this.#queue, k);
      const sheet = i32(sheetOf, pull);
      const done = f64(this.#ends, k);
      this.#dryAt[pull] = done + f64(dryMinutes, pull);
      this.#stackAt[sheet] = Math.max(f64(this.#stackAt, sheet), done + f64(stackMinutes, pull));
      this.#freeAt[sheet] = Math.max(f64(this.#freeAt, sheet), done);
    }
    this.#mixed[kind.ink] = 1;
    this.#screenBed[kind.screen] = number;
    this.#screenAt[kind.screen] = end;
    bed.clock = end;
    bed.day = Math.floor(Math.max(0, end - 1e-9) / DAY_MINUTES);
    bed.on = bed.last = kind;
    for (const other of this.#beds) {
      if (other === bed) continue;
      if (other.on?.screen === kind.screen) other.on = { ...other.on, screen: -1 };
      if (other.last.screen === kind.screen) other.last = { ...other.last, screen: -1 };
    }
  }
}

function workFrom({ clock }: Shop, end: number, minutes: number): number {
  return minutes > 0 ? clock.workEnd(clock.afterLunch(end), minutes) : end;
}

function mostOf(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) if (f64(values, i) > most) most = f64(values, i);
  return most;
}
