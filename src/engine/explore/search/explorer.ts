import { defined, entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { PullSlots } from '../../stack/pull-slots.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/explore/search.ts';
import { Describer, descriptorOfText, type Descriptor, type Look } from '../look/descriptor.ts';
import { rearranged } from '../places/asked.ts';
import { checkExplore } from '../settings/check.ts';
import type { ExploreInput, Variant } from '../types.ts';
import { Finder } from './finder.ts';
import { firstDraw, type FirstDraw } from './first-draw.ts';
import { isNext, type OrderRange, orderRange } from './order-range.ts';
import { Spread } from './spread.ts';

/** Draws for one variant before the space counts as exhausted. */
export const MAX_ATTEMPTS = 200;

/** Candidates from which the first variant is taken: few, so that prints stand at once. */
const FIRST_POOL = 12;
/** Candidates drawn for each further one, on average. */
const DRAWS_EACH = 1.5;
/** Where screens may lie anywhere, so many more for each of the first twelve: of few compositions they would be any twelve. */
const MORE_DRAWS = { each: 4, prints: 12 };

/** A print that was seen before. */
export interface SeenPrint {
  key: string;
  /** What it looks like, as descriptorText gives it. */
  look: string;
}

/** A search that goes on in steps, so that whoever runs it can stop it between two. */
export interface Explorer {
  /**
   * Goes on.
   * @param draws how many draws to try, 1 or more; some give a variant
   * @returns the variants found, in their order on the wall
   */
  step(draws: number): Variant[];
  /** What a found variant looks like, by its number; null when there is none. */
  lookOf(index: number): Descriptor | null;
  /** Variants found so far and asked for. */
  readonly found: number;
  readonly asked: number;
  /** True when all were found or no more can be. */
  readonly done: boolean;
  /** Why fewer were found than asked, in a sentence; '' while going on or when all were found. */
  readonly reason: string;
}

/** A search from a base stack. */
export interface WallExplorer extends Explorer {
  /** The candidate that is drawn next; null when all are listed and none is drawn. */
  readonly next: number | null;
  /** How many candidates are drawn of those that the next print is taken from. */
  readonly candidates: Readonly<{ drawn: number; of: number }>;
  /** The first attempt at a candidate, as FirstDraws gives it, whenever it is asked for. */
  firstDraw(candidate: number): FirstDraw | null;
}

/**
 * Finds stacks that print different pictures, from a seed, the most different first.
 * Candidate c is the first draw of `seed:c:attempt` whose picture no candidate before it has. The
 * first variant is taken when FIRST_POOL candidates are there, each further one when DRAWS_EACH more
 * are (and MORE_DRAWS for the first of a wall of compositions); it is the candidate farthest from all
 * taken before it, from the base stack's own print and from the prints that were seen; where orders may
 * stray by a range, of the part of it that is next. A wall is so the same however the work is cut up,
 * and begins alike when more is asked for. When only the order may change and there are few order classes, all are
 * listed, so that none is missed.
 * @param input drawer, base stack and what may change; a project is one
 * @param alreadySeen prints that shall not come again: picture keys, or with what they look like;
 *   changes which variants are found
 * @param first what FirstDraws gives for a candidate, where it was drawn elsewhere already; changes
 *   nothing but the time it takes
 * @throws EngineError with the code and sentence of the first problem of checkExplore
 */
export function createExplorer(
  input: ExploreInput,
  alreadySeen: Iterable<string | SeenPrint> = [],
  first: DrawnFirst = () => undefined,
): WallExplorer {
  const [problem] = checkExplore(input.explore, input.drawer, input.bench);
  if (problem !== undefined) {
    throw new EngineError(problem.code, problem.message, { path: [problem.where] });
  }
  return new WallSearch(input, alreadySeen, first);
}

/** A candidate's first draw, where it was drawn elsewhere: null when it came to nothing, undefined when it was not drawn. */
type DrawnFirst = (candidate: number) => FirstDraw | null | undefined;

/** What is kept of a candidate that waits. */
interface Kept {
  key: string;
  strays: number | undefined;
  slot: number;
}

class WallSearch implements WallExplorer {
  found = 0;
  reason = '';
  readonly asked: number;
  private readonly seed: string;
  private readonly range: OrderRange | null;
  private readonly first: DrawnFirst;
  private readonly more: number;
  private readonly finder: Finder;
  private readonly list: ReturnType<Finder['list']>;
  private readonly describer: Describer;
  private readonly pool = new Spread<Kept>();
  /** The pulls of those in the pool. */
  private readonly slots = new PullSlots();
  /** Where those that were found lie in the pool. */
  private readonly places: number[] = [];
  private readonly seen = new Set<string>();
  /** Whether there are prints that shall not come again. */
  private readonly someSeen: boolean;
  private drawnSoFar = 0;
  /** The attempt at each candidate that made it, or its entry of the list. */
  private readonly drawnBy: number[] = [];
  /** Draws for the next candidate. */
  private attempt = 0;
  /** Entries of the list that were taken. */
  private listed = 0;

  constructor(input: ExploreInput, alreadySeen: Iterable<string | SeenPrint>, first: DrawnFirst) {
    this.asked = input.explore.count;
    this.seed = input.explore.seed;
    this.range = input.explore.order ? orderRange(input.explore) : null;
    this.first = first;
    this.finder = new Finder(input);
    this.list = this.finder.list(4 * this.asked + 1000);
    const composed = rearranged(input.explore);
    this.more = composed ? MORE_DRAWS.each : 0;
    this.describer = new Describer(input.drawer, composed);
    for (const print of alreadySeen) this.avoid(print);
    this.someSeen = this.seen.size > 0;
    if (input.bench.length > 0) this.pool.avoid(this.describer.describe(input.bench));
  }

  step(draws: number): Variant[] {
    const fresh: Variant[] = [];
    for (let left = draws; left > 0 && !this.done; left--) {
      if (!this.exhausted && this.drawnSoFar < this.enough) {
        this.drawCandidate();
        continue;
      }
      const { range } = this;
      const taken = this.pool.take(range === null ? undefined : ({ strays }) => isNext(strays, range, this.found));
      if (taken === null) {
        this.reason = exhaustedReason(this.found, this.asked, this.someSeen, this.list !== null);
        break;
      }
      fresh.push(this.hung(taken.item));
      this.places.push(this.pool.last);
      this.found++;
    }
    return fresh;
  }

  private hung({ key, strays, slot }: Kept): Variant {
    const { seed, found } = this;
    const variant: Variant = { id: `${seed}:${found}`, seed, index: found, pulls: this.slots.take(slot), key };
    return strays === undefined ? variant : { ...variant, strays };
  }

  lookOf(index: number): Descriptor | null {
    const place = this.places[index];
    return place === undefined ? null : this.pool.takenAt(place);
  }

  get next(): number | null {
    return this.list === null ? this.drawnSoFar : null;
  }

  get candidates(): { drawn: number; of: number } {
    return { drawn: this.drawnSoFar, of: Math.ceil(this.enough) };
  }

  get done(): boolean {
    return this.found >= this.asked || this.reason !== '';
  }

  /** Candidates from which the next is taken. */
  private get enough(): number {
    return FIRST_POOL + DRAWS_EACH * this.found + this.more * Math.min(this.found, MORE_DRAWS.prints);
  }

  private get exhausted(): boolean {
    return this.list === null ? this.attempt >= MAX_ATTEMPTS : this.listed >= this.list.length;
  }

  private avoid(print: string | SeenPrint): void {
    this.seen.add(typeof print === 'string' ? print : print.key);
    const at = typeof print === 'string' ? null : descriptorOfText(print.look);
    // What a wall of another kind showed was described otherwise.
    if (at !== null && at.length === this.describer.length) this.pool.avoid(at);
  }

  /** One draw, which makes a candidate when its picture is new. */
  private drawCandidate(): void {
    const { drawnSoFar: candidates, attempt, list, listed } = this;
    const { variant, look } = this.drawn();
    this.attempt++;
    if (variant === null || this.seen.has(variant.key)) return;
    this.seen.add(variant.key);
    // Offsets that differ only where they are hidden have keys of their own.
    const at = look ?? this.describer.look(variant.pulls);
    // Ten thousand prints are twenty megabytes of pulls, and hardly any is asked for again.
    this.drawnBy[candidates] = list === null ? attempt : listed;
    if (!this.describer.isNew(variant.pulls, at, { print: candidates, pullsOf: this.pullsOf })) return;
    const { key, strays } = variant;
    const gone = this.pool.offer({ key, strays, slot: this.slots.keep(variant.pulls) }, at.at);
    if (gone !== null) this.slots.drop(gone.slot);
    this.drawnSoFar++;
    this.attempt = 0;
  }

  firstDraw(candidate: number): FirstDraw | null {
    return firstDraw(this.finder, this.describer, candidate);
  }

  /** The pulls of a candidate that was drawn before. */
  private readonly pullsOf = (candidate: number): readonly Pull[] => {
    const { list, finder } = this;
    const by = num(this.drawnBy, candidate);
    return defined(list === null ? finder.draw(candidate, by) : entryAt(list, by)(candidate)).pulls;
  };

  private drawn(): { variant: Variant | null; look?: Look } {
    const { drawnSoFar: candidates, attempt, list } = this;
    if (list !== null) return { variant: entryAt(list, this.listed++)(candidates) };
    const elsewhere = attempt === 0 ? this.first(candidates) : undefined;
    if (elsewhere === undefined) return { variant: this.finder.draw(candidates, attempt) };
    return elsewhere ?? { variant: null };
  }
}

function exhaustedReason(found: number, asked: number, someSeen: boolean, all: boolean): string {
  const pictures = say.prints(found);
  const what = someSeen ? say.new(pictures) : say.different(pictures);
  if (found === 0 && !someSeen) return say.noPrintKeepsWhat;
  const mend = say.letMoreChangeLoosen;
  return all ? say.ordersOfThesePulls(found, what, asked, mend) : say.onlyOfCameOut(found, what, asked, mend);
}

/**
 * Variants of a project, for scripts in Node without workers.
 * @param project anything with a drawer, a bench and explore settings
 * @param options the seed and how many; both take the place of the project's own
 * @returns variants one by one; fewer when no more can be found
 * @throws EngineError 'explore.project', 'explore.seed' and as createExplorer, at the first variant
 */
export function* explore(project: ExploreInput, options: { seed: string | number; count: number }): Generator<Variant> {
  const lists = [project?.bench, project?.drawer?.shapes, project?.drawer?.screens, project?.drawer?.inks];
  if (!lists.every(Array.isArray) || !project.drawer.paper || !project.explore) {
    throw new EngineError('explore.project', say.projectNeedsDrawerOf);
  }
  const { drawer, bench } = project;
  const { seed, ...rest } = { ...project.explore, ...options };
  if (typeof seed !== 'string' && !Number.isFinite(seed)) {
    throw new EngineError('explore.seed', say.nameOfWallIts(String(seed)), {
      path: ['seed'],
    });
  }
  const explorer = createExplorer({ drawer, bench, explore: { ...rest, seed: String(seed) } });
  while (!explorer.done) yield* explorer.step(1);
}
