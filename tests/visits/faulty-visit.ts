import { randomFrom } from '../../src/engine/base/random.ts';
import { recipesAsPulled, type SheetAsPulled, sheetsAsPulled } from '../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../src/engine/log/check.ts';
import { oversFor } from '../../src/engine/log/overs.ts';
import { planRest, type RestInput, type RestPlan } from '../../src/engine/log/rest.ts';
import { tickedOn } from '../../src/engine/log/ticks/ticking.ts';
import type { Happening, LogEvent, VisitHead } from '../../src/engine/log/types.ts';
import { visitHeadOf } from '../../src/engine/log/visit-head.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../src/engine/visit/visit.ts';
import { CASE_PRESS, inventedVisit } from '../helpers/printer-cases.ts';
import { countedBy, goingOn, gramsByHand, less, unsound } from '../helpers/rest-checks.ts';

/** What became of a simulated visit. */
export interface FaultyVisit {
  seed: string;
  replans: number;
  /** Plans of the rest that were better than going on. */
  better: number;
  faults: { spoiled: number; replaced: number; otherwise: number; lateHours: number };
  /** Most that grams left, used and dropped together differ from those planned, g. */
  gramsOff: number;
  /** What must not be, a sentence each. */
  wrong: string[];
}

const MINUTE = 60_000;
const DAY_MINUTES = 1440;
/** Shares of sheets, set-ups and replans at which something happens; invented. */
const ODDS = { spoiled: 0.03, otherwise: 0.05, late: 0.2, replan: 0.3 };
const PLAN_MS = 15;
const REST_MS = 3;

function last<T>(steps: Iterable<T>): T {
  return [...steps].at(-1)!;
}

/** A visit that is worked off by the plan of the moment, with faults by chance, and planned anew now and then. */
class Simulation {
  private readonly random;
  private readonly input: VisitInput;
  private readonly first: PressPlan;
  private readonly head: VisitHead;
  private readonly events: LogEvent[] = [];
  private plan: PressPlan;
  /** Minutes from the first day's start. */
  private clock = 0;
  readonly report: FaultyVisit;

  constructor(seed: string) {
    this.random = randomFrom(`faulty visit ${seed}`);
    const { random } = this;
    const size = { recipes: 2 + random.int(2), sheets: 2 + random.int(2), pulls: 5 + random.int(4), screens: 5, odd: 4 };
    const visit = inventedVisit({ ...size, seed }, { ...CASE_PRESS, registrationMm: random.int(2) / 2 });
    this.input = { ...visit, runs: visit.runs.map((run) => ({ ...run, overs: 1, proofs: random.int(2) })) };
    this.plan = this.first = last(planVisit(this.input, PLAN_MS));
    const recipes = this.input.runs.map((run) => run.recipe);
    this.head = visitHeadOf(this.plan, recipes, { id: 'v', title: 'v', begunMs: 0, minDeltaE: this.input.minDeltaE });
    const faults = { spoiled: 0, replaced: 0, otherwise: 0, lateHours: 0 };
    this.report = { seed, replans: 0, better: 0, faults, gramsOff: 0, wrong: [] };
  }

  private get sheets(): SheetAsPulled[] {
    return sheetsAsPulled(this.head, this.events);
  }

  private chance(share: number): boolean {
    return this.random.int(1000) < 1000 * share;
  }

  private log(happenings: readonly Happening[]): void {
    for (const happening of happenings) {
      this.events.push({ ...happening, id: `e${this.events.length}`, atMs: MINUTE * this.clock + this.events.length, device: 'd' });
    }
  }

  /** Pulls one sheet in a set-up, and what may go wrong with it. */
  private pull(card: PressPlan['cards'][number], number: number): void {
    const { head, events, random, report } = this;
    this.clock += 1 + random.int(3);
    const ticking = { card, numbers: [number], sheets: this.sheets, recipes: recipesAsPulled(head, events) };
    if (this.chance(ODDS.otherwise)) {
      const inks = head.recipes.flatMap((recipe) => recipe.inks);
      const how = random.int(2) === 0 ? { ink: random.pick(inks), dxMm: 0, dyMm: 0 } : { strokes: 3, dxMm: 0.4, dyMm: -0.3 };
      this.log(tickedOn(ticking, { how, note: '' }));
      report.faults.otherwise++;
    } else this.log(tickedOn(ticking));
    if (!this.chance(ODDS.spoiled)) return;
    const sheet = this.sheets.find((each) => each.number === number)!;
    const [over] = oversFor(sheet, this.sheets);
    report.faults.spoiled++;
    if (over === undefined) this.log([{ kind: 'spoiled', sheet: number, note: '' }]);
    else {
      report.faults.replaced++;
      this.log([{ kind: 'replaced', sheet: number, by: over, note: '' }]);
    }
  }

  /** Plans what is left with and without the clock; neither may be worse than going on, or unsound. */
  private replan(): void {
    const { input, head, events, plan, report } = this;
    const sheets = this.sheets;
    if (sheets.every((sheet) => sheet.spoiled || sheet.done.length === head.recipes[sheet.recipe]!.pulls.length)) return;
    const rest: RestInput = { ...input, atHand: plan, rest: { recipes: recipesAsPulled(head, events), sheets } };
    report.replans++;
    const going = countedBy(goingOn({ plan, events, head }));
    const anew = last(planRest(rest, REST_MS));
    if (less(countedBy(anew.cards), going) > 0) this.wrong(`${countedBy(anew.cards).join()} is worse than ${going.join()}`);
    if (less(countedBy(anew.cards), going) < 0) report.better++;
    const minutes = Math.max(0, this.clock);
    const now = {
      atMs: MINUTE * this.clock + events.length,
      day: 1 + Math.floor(minutes / DAY_MINUTES),
      minuteOfDay: 570 + (minutes % DAY_MINUTES),
    };
    const onClock = last(planRest({ ...rest, rest: { ...rest.rest, now } }, REST_MS));
    this.compareOnClock(onClock);
    for (const each of [anew, onClock]) for (const fault of unsound(each, rest)) this.wrong(fault);
    this.weigh(anew);
    this.plan = onClock;
  }

  private compareOnClock({ before, mounts, inkChanges, registerMoves, ends }: RestPlan): void {
    if (before === undefined) {
      this.wrong('the order at hand was not looked at');
      return;
    }
    const end = (of: { day: number; minute: number }): number => DAY_MINUTES * of.day + of.minute;
    const now = [mounts, inkChanges, registerMoves, end(ends)];
    const was = [before.mounts, before.inkChanges, before.registerMoves, end(before.ends)];
    if (less(now, was) > 0) this.wrong(`by the clock ${now.join()} is worse than ${was.join()}`);
  }

  /** Grams planned = used as planned + left + what spoiled sheets no longer get, ink by ink, weighed by hand. */
  private weigh(rest: PressPlan): void {
    const off = new Map(this.first.inks.map(({ name, printedG, proofsG }) => [name, printedG + proofsG]));
    const take = (name: string, grams: number): void => void off.set(name, off.get(name)! - grams);
    for (const { name, printedG, proofsG } of rest.inks) take(name, printedG + proofsG);
    for (const sheet of this.sheets) {
      const recipe = this.head.recipes[sheet.recipe]!;
      for (const at of recipe.pulls.keys()) {
        if (!sheet.done.includes(at) && !sheet.spoiled) continue;
        const { ink, grams } = gramsByHand(recipe, at);
        take(ink, grams);
      }
    }
    for (const [name, grams] of off) {
      this.report.gramsOff = Math.max(this.report.gramsOff, Math.abs(grams));
      if (Math.abs(grams) > 0.01) this.wrong(`${name}: ${grams.toFixed(3)} g are neither used nor left`);
    }
  }

  private wrong(sentence: string): void {
    this.report.wrong.push(`after ${this.events.length} entries: ${sentence}`);
  }

  run(): FaultyVisit {
    const { report } = this;
    for (let guard = 0; guard < 1000; guard++) {
      const open = goingOn({ plan: this.plan, events: this.events, head: this.head })[0];
      if (open === undefined) break;
      if (this.chance(ODDS.late)) {
        const hours = 1 + this.random.int(14);
        this.clock += 60 * hours;
        report.faults.lateHours += hours;
      }
      for (const number of open.sheets) this.pull(open, number);
      if (this.chance(ODDS.replan)) this.replan();
    }
    for (const sheet of this.sheets) {
      if (!sheet.spoiled && sheet.done.length < this.head.recipes[sheet.recipe]!.pulls.length)
        report.wrong.push(`sheet ${sheet.number} was never finished`);
    }
    for (const { code, message } of checkLog(this.head, this.events)) report.wrong.push(`${code}: ${message}`);
    return report;
  }
}

/** Works a whole invented visit off with random faults, the same for the same seed. */
export function faultyVisit(seed: string): FaultyVisit {
  return new Simulation(seed).run();
}
