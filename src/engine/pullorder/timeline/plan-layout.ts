import { entryAt, f64, num } from '../../base/at.ts';
import { EngineError, type Problem } from '../../base/error.ts';
import { say } from '../../words/en/pullorder/timeline.ts';
import type { DayPart, SetUp, SetUpTime } from '../types.ts';
import { DAY_MINUTES } from './day-clock.ts';
import type { PressRules } from './press-rules.ts';
import { lateProblems, rackProblems } from './problems.ts';
import { SetUpTrial, type SetUpWork, type WaitingSheet } from './set-up-trial.ts';
import type { LaidOut } from './start-state.ts';
import { testPullOf } from './test-pull.ts';

const AT_REST: { minute: number; ink: string | null } = { minute: 0, ink: null };

interface Bed {
  /** Free from here on, minutes from the first day's start. */
  clock: number;
  /** The day on which that is, from 0: what is on it is washed up before another. */
  day: number;
  previous: SetUp | null;
}

/** One plan laid out over the days of a visit: each set-up is tried on beds, then booked. See `timelineOf`. */
export class PlanLayout {
  readonly #rules: PressRules;
  /** By sheet and pull: when its film is dry, −1 before it is printed. */
  readonly #dryAt: Float64Array[];
  /** By sheet: when it leaves the racks, and when it leaves the bed it is on. */
  readonly #stackAt: Float64Array;
  readonly #freeAt: Float64Array;
  /** Where the test sheet stands among those that leave the racks; -1 without one. */
  readonly #testPlace: number;
  readonly #beds: Bed[];
  /** Where each screen was used last, and until when. */
  readonly #screenFree = new Map<string, { bed: number; at: number }>();
  readonly #mixed: Set<string>;
  readonly #times: SetUpTime[] = [];
  readonly #parts: DayPart[] = [];
  readonly #problems: Problem[] = [];

  constructor(rules: PressRules) {
    const { input, start } = rules;
    const { sheets } = input.problem;
    this.#rules = rules;
    this.#dryAt = sheets.map((sheet) => new Float64Array(sheet.pulls.length).fill(-1));
    const stackAt = start.stackAt ?? sheets.map(() => 0);
    this.#testPlace = rules.testPulls > 0 ? stackAt.length : -1;
    this.#stackAt = Float64Array.from(rules.testPulls > 0 ? [...stackAt, start.testStackAt ?? 0] : stackAt);
    this.#freeAt = new Float64Array(sheets.length);
    const begin = start.minute ?? 0;
    this.#beds = Array.from({ length: input.visit.beds ?? 1 }, (_, bed) => ({
      clock: begin,
      day: Math.floor(begin / DAY_MINUTES),
      previous: start.onPress?.[bed] ? { ...start.onPress[bed], pulls: [] } : null,
    }));
    this.#mixed = new Set(start.mixed);
  }

  /** @throws EngineError 'visit.unknown-ink' when a drying time is missing */
  run(setUps: readonly SetUp[], bedOf?: readonly number[]): LaidOut {
    const { input, rackPlaces } = this.#rules;
    setUps.forEach((setUp, i) => {
      const dryMinutes = input.dryMinutesByInk[setUp.ink];
      if (dryMinutes === undefined) throw unknownInk(setUp.ink);
      const stackMinutes = this.#rules.stackMinutesByInk[setUp.ink] ?? dryMinutes;
      const work = { setUp, queue: this.#queueOf(setUp), stackMinutes, test: this.#testOf(setUp) };
      const trial = this.#soonest(work, bedOf?.[i]);
      if (!trial.inDay) this.#problems.push(this.#tooLong(i, trial));
      this.#bookSheets(work, trial, dryMinutes);
      this.#bookBed(i, setUp, trial);
    });
    this.#washUp();
    this.#parts.sort((a, b) => a.day - b.day || a.bed - b.bed || a.fromMinute - b.fromMinute);
    const times = this.#times;
    const daysNeeded = times.reduce((most, t) => Math.max(most, t.day), 0);
    const before = input.start?.setUpsBefore;
    return {
      timeline: {
        times,
        parts: this.#parts,
        daysNeeded,
        waitMinutes: times.reduce((sum, t) => sum + t.waitMinutes, 0),
        racksNeeded: times.reduce((most, t) => Math.max(most, t.wetSheets), 0),
      },
      problems: [...this.#problems, ...rackProblems(times, rackPlaces, before), ...lateProblems(times, daysNeeded, input.visit, before)],
    };
  }

  /** The sheets that a set-up prints, those that are dry first first. */
  #queueOf(setUp: SetUp): WaitingSheet[] {
    return setUp.pulls
      .map(([sheet, pull]) => this.#waiting(sheet, pull))
      .sort((a, b) => a.ready - b.ready || a.sheet - b.sheet || a.pull - b.pull);
  }

  #testOf({ pulls }: SetUp): SetUpWork['test'] {
    if (this.#testPlace < 0) return null;
    return { minutes: this.#minutesOf(...testPullOf(pulls)), place: this.#testPlace };
  }

  #minutesOf(sheet: number, pull: number): number {
    const { strokes = 1 } = entryAt(entryAt(this.#rules.input.problem.sheets, sheet).pulls, pull);
    return this.#rules.pullMinutes + (strokes - 1) * this.#rules.strokeMinutes;
  }

  #waiting(sheet: number, pull: number): WaitingSheet {
    const { input, start, touching } = this.#rules;
    const dryAt = entryAt(this.#dryAt, sheet);
    let { minute: ready, ink } = start.readyAt?.[sheet]?.[pull] ?? AT_REST;
    for (const other of entryAt(entryAt(touching, sheet), pull)) {
      if (f64(dryAt, other) <= ready) continue;
      ready = f64(dryAt, other);
      ink = entryAt(entryAt(input.problem.sheets, sheet).pulls, other).ink;
    }
    const free = f64(this.#freeAt, sheet);
    const minutes = this.#minutesOf(sheet, pull);
    return free > ready ? { sheet, pull, minutes, ready: free, ink: null } : { sheet, pull, minutes, ready, ink };
  }

  /** On the bed named, or on the one that is done with it first. */
  #soonest(work: SetUpWork, named: number | undefined): SetUpTrial {
    let best = this.#tryOn(named ?? 0, work);
    for (let bed = 1; bed < this.#beds.length && named === undefined; bed++) {
      const other = this.#tryOn(bed, work);
      if (other.end < best.end - 1e-9) best = other;
    }
    return best;
  }

  /** As soon as a bed can, on a later day when it does not end within the first. */
  #tryOn(bed: number, work: SetUpWork): SetUpTrial {
    const { clock, washUpMinutes } = this.#rules;
    const { clock: freeFrom, day: since, previous } = entryAt(this.#beds, bed);
    const lastReady = work.queue.at(-1)?.ready ?? 0;
    const elsewhere = this.#screenFree.get(work.setUp.screen);
    const screenAt = elsewhere !== undefined && elsewhere.bed !== bed ? clock.workEnd(elsewhere.at, washUpMinutes) : 0;
    const from = Math.max(freeFrom, screenAt);
    let day = Math.floor(from / DAY_MINUTES);
    let trial = this.#tryAt({ bed, day, start: from }, work, day > since ? null : previous);
    const next = (): void => {
      day++;
      trial = this.#tryAt({ bed, day, start: Math.max(day * DAY_MINUTES, screenAt) }, work, null);
    };
    if (!trial.inDay && from > day * DAY_MINUTES) next();
    // Sheets that dry overnight may hold a morning up; later mornings find them dry.
    while (!trial.inDay && trial.start < Math.max(lastReady, trial.rackWait > 0 ? mostOf(this.#stackAt) : 0)) next();
    return trial;
  }

  #tryAt(place: { bed: number; day: number; start: number }, work: SetUpWork, previous: SetUp | null): SetUpTrial {
    const trial = new SetUpTrial(this.#rules, place);
    trial.prepare(work.setUp, previous, this.#mixed.has(work.setUp.ink));
    trial.print(work, this.#stackAt);
    return trial;
  }

  #bookSheets({ queue, stackMinutes, test }: SetUpWork, { ends, testEnd }: SetUpTrial, dryMinutes: number): void {
    if (test !== null) this.#stackAt[test.place] = Math.max(f64(this.#stackAt, test.place), testEnd + stackMinutes);
    for (const [k, { sheet, pull }] of queue.entries()) {
      const end = num(ends, k);
      entryAt(this.#dryAt, sheet)[pull] = end + dryMinutes;
      this.#stackAt[sheet] = Math.max(f64(this.#stackAt, sheet), end + stackMinutes);
      this.#freeAt[sheet] = Math.max(f64(this.#freeAt, sheet), end);
    }
  }

  #bookBed(index: number, setUp: SetUp, trial: SetUpTrial): void {
    const { bed, day, end } = trial;
    const from = day * DAY_MINUTES;
    const place = { setUp: index, day: day + 1, bed };
    this.#times.push({
      ...place,
      startMinute: trial.start - from,
      firstPullMinute: trial.first - from,
      endMinute: end - from,
      waitMinutes: trial.wait,
      waitFor: [...trial.waitFor].sort((a, b) => b[1] - a[1]).map(([ink]) => ink),
      rackWaitMinutes: trial.rackWait,
      wetSheets: wetAfter(this.#stackAt, end),
      fits: day < this.#rules.input.visit.days && trial.inDay,
    });
    for (const part of trial.parts) this.#parts.push({ ...place, kind: part.kind, fromMinute: part.from - from, toMinute: part.to - from });
    this.#mixed.add(setUp.ink);
    this.#screenFree.set(setUp.screen, { bed, at: end });
    // A set-up that overran its day pushes the next one to the morning after.
    this.#beds[bed] = { clock: end, day: Math.floor(Math.max(0, end - 1e-9) / DAY_MINUTES), previous: setUp };
    // A frame that went to another bed is to be mounted again where it was.
    for (const [b, other] of this.#beds.entries()) {
      if (b !== bed && other.previous?.screen === setUp.screen) other.previous = { ...other.previous, screen: '' };
    }
  }

  /** The wash-up of each bed at the end of each day. */
  #washUp(): void {
    const { clock, washUpMinutes } = this.#rules;
    if (washUpMinutes <= 0) return;
    const last = new Map(this.#times.map(({ day, bed }, k) => [`${day} ${bed}`, k]));
    for (const [k, { setUp, day, bed, endMinute }] of this.#times.entries()) {
      if (last.get(`${day} ${bed}`) !== k) continue;
      const fromMinute = clock.afterLunch(endMinute);
      this.#parts.push({ kind: 'wash', setUp, day, bed, fromMinute, toMinute: clock.workEnd(fromMinute, washUpMinutes) });
    }
  }

  #tooLong(index: number, { start, end }: SetUpTrial): Problem {
    const { input, washUpMinutes } = this.#rules;
    const number = (input.start?.setUpsBefore ?? 0) + index + 1;
    return {
      code: 'visit.long-set-up',
      message: say.setUpTakesMinutes(number, Math.ceil(end - start + washUpMinutes), input.visit.hoursPerDay),
      where: `set-up ${number}`,
    };
  }
}

function unknownInk(ink: string): EngineError {
  return new EngineError('visit.unknown-ink', say.inkHasNoDrying(ink), { path: ['dryMinutesByInk', ink] });
}

/** A plain loop: it runs for every set-up of every order that is tried. */
function wetAfter(stackAt: Float64Array, end: number): number {
  let wet = 0;
  for (const until of stackAt) if (until > end) wet++;
  return wet;
}

function mostOf(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, value), 0);
}
