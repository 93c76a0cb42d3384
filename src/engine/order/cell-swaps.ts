import { entryAt, f64, num, u32, u8 } from '../base/at.ts';
import { deltaE2000 } from '../colour/delta-e.ts';
import type { Lab } from '../colour/lab.ts';
import { MOST_IN_ALL_ORDERS, type PileColours, Piles } from './pile-colours.ts';

/** Films that differ by less than this over every ground commute: what is left is rounding. */
const COMMUTE = 1e-6;
// ΔE00 is not quite a distance: differences may add up to a little more than their sum.
const SUM_SLACK = 0.9;
/** So many colours are compared each with each. */
const FEW = 12;
/** Looks at a pair in a cell, some ten microseconds each. */
const MOST_LOOKS = 6_000_000;

/** Looks from one step to the next. */
const LOOKS_A_STEP = 500;

/** Pulls that meet, and what each pair of them shows. */
interface Meeting {
  /** Film numbers of the pulls. */
  films: readonly number[];
  /** Pulls × pulls, a < b: ΔE00 of the pair's two orders; negative where they do not meet. Raised in place. */
  deltaE: Float64Array;
  /** Pairs that show less may change places, ΔE00. */
  minDeltaE: number;
}

/**
 * Raises what pairs of pulls show until every swap that stays below the threshold is unseen in the
 * print: over all films that lie under, between and over the two in a cell, and together with all
 * other swaps that are as free there.
 * @param cells places of the pulls in each cell, ascending
 * Cells of up to five films are looked at in all orders, so that nothing depends on the order of the
 * stack; deeper ones as the stack lies, and there the sum of what may change places stays below the
 * threshold. Where that would take minutes, pairs that were not looked at everywhere are held.
 * @yields about the share that is done, 0–1
 */
export function* raiseSteps(cells: readonly (readonly number[])[], meeting: Meeting, piles: Piles): Generator<number, void> {
  const rows = cells.filter((cell) => cell.length > 2 && meets(cell, meeting)).map((pulls) => new Cell(pulls, meeting, piles));
  // Deep cells first: what they hold need not be looked at in the others. Cells as deep as each other do
  // not see what the others find, so that their order makes no difference.
  let looks = MOST_LOOKS;
  const clock = new StepClock(rows.length);
  const depths = [...new Set(rows.map(({ depth }) => depth))].sort((a, b) => b - a);
  for (const depth of depths) {
    const level = rows.filter((row) => row.depth === depth);
    // Those deeper than all orders depend on the stack's own in any case, and are quicker one after the other.
    const steps = depth > MOST_IN_ALL_ORDERS ? level.map((row) => [row]) : [level];
    for (const step of steps) {
      for (const row of step) looks -= row.looks();
      if (looks < 0) return holdAll(rows, meeting);
      const found: { pair: number; shown: number }[] = [];
      for (const row of step) {
        found.push(...row.swaps());
        if (clock.tick(row.looks())) yield clock.share;
      }
      for (const { pair, shown } of found) meeting.deltaE[pair] = Math.max(f64(meeting.deltaE, pair), shown);
    }
  }
  let raised = true;
  while (raised) {
    for (const row of rows) looks -= row.looks();
    if (looks < 0) return holdAll(rows, meeting);
    // All cells are asked before any pair is raised: their order makes no difference.
    const wanted: ReturnType<Cell['tooMuch']>[] = [];
    for (const row of rows) {
      wanted.push(row.tooMuch());
      if (clock.tick(row.looks())) yield clock.share;
    }
    raised = false;
    for (const found of wanted) {
      if (found === null) continue;
      meeting.deltaE[found.pair] = Math.max(f64(meeting.deltaE, found.pair), found.deltaE);
      raised = true;
    }
  }
}

/** Tells when a step is full, and about how far the cells are: all are looked at once, and again until nothing is raised. */
class StepClock {
  private readonly cells: number;
  private looks = 0;
  private seen = 0;

  constructor(cells: number) {
    this.cells = cells;
  }

  /** @param looks at pairs of one more cell @returns whether a step is full */
  tick(looks: number): boolean {
    this.seen++;
    this.looks += looks + 1;
    if (this.looks < LOOKS_A_STEP) return false;
    this.looks = 0;
    return true;
  }

  get share(): number {
    return this.seen / (this.seen + this.cells);
  }
}

/** Holds every pair that could be free somewhere. */
function holdAll(rows: readonly Cell[], { deltaE, minDeltaE }: Meeting): void {
  for (const row of rows) for (const pair of row.free()) deltaE[pair] = Math.max(f64(deltaE, pair), minDeltaE);
}

/** The cells of a map as ascending places. */
export function cellsOf(map: { cells: number; words: number; cover: Uint32Array; screens: number }): number[][] {
  return Array.from({ length: map.cells }, (_, cell) => {
    const pulls: number[] = [];
    for (let bit = 0; bit < map.screens; bit++) if ((u32(map.cover, cell * map.words + (bit >> 5)) >>> (bit & 31)) & 1) pulls.push(bit);
    return pulls;
  });
}

/** Pulls of which two only touch share no cell that counts. */
function meets(cell: readonly number[], { films, deltaE }: Meeting): boolean {
  return cell.every((a, i) => cell.every((b, j) => j <= i || f64(deltaE, a * films.length + b) >= 0));
}

/** What lies on one part of the sheet. */
class Cell {
  private readonly pulls: readonly number[];
  private readonly meeting: Meeting;
  private readonly piles: Piles;
  private readonly films: readonly number[];
  /**
   * The pairs that may yet change places seen or unseen: index into deltaE, and both places in the cell.
   * Not made before it is asked for: by then most are held, and thousands of deep cells fill no memory.
   */
  private known: { pair: number; i: number; j: number }[] | null = null;

  constructor(pulls: readonly number[], meeting: Meeting, piles: Piles) {
    this.pulls = pulls;
    this.meeting = meeting;
    this.piles = piles;
    this.films = pulls.map((pull) => num(meeting.films, pull));
  }

  get depth(): number {
    return this.films.length;
  }

  /** Pairs that may change places here so far. */
  free(): number[] {
    return this.loose().map(({ pair }) => pair);
  }

  /** How often a pair is looked at to ask this cell once. */
  looks(): number {
    return this.loose().length;
  }

  /** What each pair that is free so far shows here by itself. */
  swaps(): { pair: number; shown: number }[] {
    const loose = this.loose();
    return loose.length === 0 ? [] : this.piles.swaps(this.films, loose).map((shown, at) => ({ pair: entryAt(loose, at).pair, shown }));
  }

  /** The free pair to hold because all that is free here shows too much together, with what it shows; null when it does not. */
  tooMuch(): { pair: number; deltaE: number } | null {
    const { deltaE, minDeltaE } = this.meeting;
    const loose = this.loose();
    let sum = 0;
    let worst = { pair: -1, deltaE: -1 };
    for (const { pair } of loose) {
      const shown = f64(deltaE, pair);
      sum += shown;
      if (shown > worst.deltaE) worst = { pair, deltaE: shown };
    }
    if (loose.length < 2 || sum < SUM_SLACK * minDeltaE) return null;
    const together = this.films.length <= MOST_IN_ALL_ORDERS ? this.together() : sum / SUM_SLACK;
    return together < minDeltaE ? null : { pair: worst.pair, deltaE: together };
  }

  /** Without pairs that are held by now, and those that commute. */
  private loose(): { pair: number; i: number; j: number }[] {
    const { deltaE, minDeltaE, films } = this.meeting;
    const isLoose = (pair: number): boolean => f64(deltaE, pair) >= COMMUTE && f64(deltaE, pair) < minDeltaE;
    if (this.known !== null) return (this.known = this.known.filter(({ pair }) => isLoose(pair)));
    this.known = [];
    for (const [i, a] of this.pulls.entries()) {
      for (let j = i + 1; j < this.pulls.length; j++) {
        const pair = a * films.length + num(this.pulls, j);
        if (isLoose(pair)) this.known.push({ pair, i, j });
      }
    }
    return this.known;
  }

  /** The most that two orders differ which agree in all pairs that are held. */
  private together(): number {
    const pile = this.piles.all(this.films);
    let most = 0;
    for (const labs of this.classes(pile).values()) most = Math.max(most, spreadOf(labs));
    return most;
  }

  private classes({ orders, labs }: PileColours): Map<number, Lab[]> {
    const { films, pulls, meeting } = this;
    const n = films.length;
    const held = new Uint8Array(n * n);
    for (let i = 0; i < n; i++) {
      for (let j = i + 1; j < n; j++) {
        held[i * n + j] = Number(f64(meeting.deltaE, num(pulls, i) * meeting.films.length + num(pulls, j)) >= meeting.minDeltaE);
      }
    }
    const classes = new Map<number, Lab[]>();
    orders.forEach((order, index) => {
      const place = new Uint8Array(n);
      order.forEach((film, at) => (place[film] = at));
      let key = 0;
      for (let i = 0; i < n; i++) {
        for (let j = i + 1; j < n; j++) if (u8(held, i * n + j) === 1) key = 2 * key + Number(u8(place, i) < u8(place, j));
      }
      const found = classes.get(key);
      if (found === undefined) classes.set(key, [entryAt(labs, index)]);
      else found.push(entryAt(labs, index));
    });
    return classes;
  }
}

/** The largest ΔE00 between two of some colours. */
function spreadOf(labs: readonly Lab[]): number {
  if (labs.length < FEW) return labs.reduce((most, lab) => Math.max(most, farthest(labs, lab).deltaE), 0);
  // From one end to the other and back: in so small a region that finds the ends.
  let end = entryAt(labs, 0);
  let most = 0;
  for (let turn = 0; turn < 4; turn++) {
    const far = farthest(labs, end);
    if (far.deltaE <= most) break;
    most = far.deltaE;
    end = far.lab;
  }
  return most;
}

function farthest(labs: readonly Lab[], from: Lab): { lab: Lab; deltaE: number } {
  let far = { lab: from, deltaE: 0 };
  for (const lab of labs) {
    const deltaE = deltaE2000(from, lab);
    if (deltaE > far.deltaE) far = { lab, deltaE };
  }
  return far;
}
