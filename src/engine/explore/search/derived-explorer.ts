import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { randomFrom } from '../../base/random.ts';
import type { Pull } from '../../stack/types.ts';
import { Describer, type Descriptor, descriptorDistance } from '../look/descriptor.ts';
import { checkExplore } from '../settings/check.ts';
import type { ExploreInput, DerivedKind, Lineage, Variant } from '../types.ts';
import { crossStacks, nearStack, walkStacks } from './derive.ts';
import { type Explorer, MAX_ATTEMPTS } from './explorer.ts';
import { Finder } from './finder.ts';
import { NearPool } from './near-pool.ts';
import { Spread } from './spread.ts';

/** What is to be found from which prints. */
export interface DerivedRequest {
  kind: DerivedKind;
  /** One print; two, first and second, for 'between' and 'cross'. */
  parents: readonly { id: string; pulls: readonly Pull[] }[];
  /** How many prints; for 'between' how many steps lie between the two, at most. */
  count: number;
}

/** Candidates from which the first print is taken, and more for each further one. */
const FIRST_POOL = 24;
const DRAWS_EACH = 3;
/** Near prints are all drawn before the nearest hangs, and more of them: many small edits do not show. */
const NEAR_DRAWS_EACH = 5;

/**
 * Finds prints from other prints, in steps: nearest first, farthest first, along a walk, or crossed and
 * spread out. Every print keeps the holds and caps of the settings and carries its lineage; its seed
 * is made from its parents' ids, so the same parents give the same prints.
 * @param input what the parents were found from
 * @throws EngineError with the first problem of checkExplore; 'explore.parents' for the wrong number
 */
export function createDerivedExplorer(input: ExploreInput, request: DerivedRequest): Explorer {
  const [problem] = checkExplore(input.explore, input.drawer, input.bench);
  if (problem !== undefined) throw new EngineError(problem.code, problem.message, { path: [problem.where] });
  const { kind, parents } = request;
  const two = kind === 'between' || kind === 'cross';
  if (parents.length !== (two ? 2 : 1)) {
    throw new EngineError('explore.parents', two ? 'Choose two prints for this; one was given.' : 'Choose one print for this.');
  }
  return kind === 'between' ? new Walk(input, request) : new Draws(input, request);
}

/** The seed of what comes from prints: it names them, and what was asked. */
function derivedSeed({ kind, parents }: Pick<DerivedRequest, 'kind' | 'parents'>): string {
  const first = entryAt(parents, 0).id;
  if (kind !== 'between' && kind !== 'cross') return `(${first}) ${kind}`;
  const second = entryAt(parents, 1).id;
  return kind === 'between' ? `(${first}) to (${second})` : `(${first}) × (${second})`;
}

/** What both ways of finding share. */
abstract class Derived implements Explorer {
  abstract readonly asked: number;
  reason = '';
  found = 0;
  protected readonly input: ExploreInput;
  protected readonly request: DerivedRequest;
  protected readonly seed: string;
  protected readonly finder: Finder;
  protected readonly describer: Describer;
  protected readonly seen = new Set<string>();
  private readonly looks: Descriptor[] = [];

  constructor(input: ExploreInput, request: DerivedRequest) {
    this.seed = derivedSeed(request);
    this.input = { ...input, explore: { ...input.explore, seed: this.seed } };
    this.request = request;
    this.finder = new Finder(this.input);
    this.describer = new Describer(input.drawer);
  }

  abstract step(draws: number): Variant[];

  get done(): boolean {
    return this.found >= this.asked || this.reason !== '';
  }

  lookOf(index: number): Descriptor | null {
    return this.looks[index] ?? null;
  }

  /** The next print of the wall. */
  protected hang({ pulls, key }: Variant, look: Descriptor): Variant {
    const lineage: Lineage = { kind: this.request.kind, parents: this.request.parents.map(({ id }) => id), seed: this.seed };
    const index = this.found++;
    this.looks.push(look);
    return { id: `${this.seed}:${index}`, seed: this.seed, index, pulls, key, lineage };
  }
}

/** Nearer, away and crossed: candidates are drawn, the fittest hung. */
class Draws extends Derived {
  readonly asked: number;
  private readonly pool = new Spread<Variant>();
  private readonly near: NearPool<Variant>;
  private readonly parentLooks: Descriptor[];
  /** The farthest of the candidates drawn since the last was put into the pool. */
  private far: { variant: Variant; at: Descriptor; distance: number } | null = null;
  private candidates = 0;
  private attempt = 0;

  constructor(input: ExploreInput, request: DerivedRequest) {
    super(input, request);
    this.asked = request.count;
    this.parentLooks = request.parents.map(({ pulls }) => {
      const look = this.describer.look(pulls);
      // From here on it has been seen.
      this.describer.isNew(pulls, look);
      return look.at;
    });
    this.near = new NearPool(entryAt(this.parentLooks, 0));
    request.parents.forEach(({ pulls }, i) => {
      const known = this.finder.fit(pulls, 0);
      if (known !== null) this.seen.add(known.key);
      this.pool.avoid(entryAt(this.parentLooks, i));
    });
  }

  step(draws: number): Variant[] {
    const fresh: Variant[] = [];
    const nearer = this.request.kind === 'nearer';
    for (let left = draws; left > 0 && !this.done; left--) {
      if (this.attempt < MAX_ATTEMPTS && this.candidates < FIRST_POOL + (nearer ? NEAR_DRAWS_EACH * this.asked : DRAWS_EACH * this.found)) {
        this.draw();
        continue;
      }
      if (this.far !== null && this.pool.size === 0) this.offerFar();
      const taken = nearer ? this.near.take() : this.pool.take();
      if (taken === null) {
        this.reason = `Only ${this.found} ${this.found === 1 ? 'print' : 'prints'} of ${this.asked} came of this; let more change, or let a pull move that must stay.`;
        break;
      }
      fresh.push(this.hang(taken.item, taken.at));
    }
    return fresh;
  }

  private draw(): void {
    const { kind, parents } = this.request;
    const random = randomFrom(`${this.seed}:${this.candidates}:${this.attempt}`);
    let variant: Variant | null;
    if (kind === 'away') variant = this.finder.draw(this.candidates, this.attempt);
    else {
      const first = entryAt(parents, 0).pulls;
      const pulls =
        kind === 'nearer'
          ? nearStack(first, this.input.explore, this.finder.spares, random)
          : crossStacks(first, entryAt(parents, 1).pulls, random);
      variant = this.finder.fit(pulls, this.candidates);
    }
    this.attempt++;
    if (variant === null || this.seen.has(variant.key)) return;
    this.seen.add(variant.key);
    const look = this.describer.look(variant.pulls);
    if (!this.describer.isNew(variant.pulls, look)) return;
    const { at } = look;
    this.candidates++;
    this.attempt = 0;
    if (kind === 'nearer') this.near.offer(variant, at);
    else if (kind === 'cross') this.pool.offer(variant, at);
    else {
      const distance = descriptorDistance(at, entryAt(this.parentLooks, 0));
      if (this.far === null || distance > this.far.distance) this.far = { variant, at, distance };
      // Of so many drawn, the one farthest from the parent.
      if (this.candidates % DRAWS_EACH === 0) this.offerFar();
    }
  }

  private offerFar(): void {
    if (this.far !== null) this.pool.offer(this.far.variant, this.far.at);
    this.far = null;
  }
}

/** Between two prints: the stacks of a walk that fit the settings, as evenly apart as they look. */
class Walk extends Derived {
  asked: number;
  private readonly walk: Pull[][];
  private at = 0;
  private readonly fitting: { variant: Variant; at: Descriptor }[] = [];
  private picks: { variant: Variant; at: Descriptor }[] | null = null;

  constructor(input: ExploreInput, request: DerivedRequest) {
    super(input, request);
    const { parents } = request;
    this.walk = walkStacks(entryAt(parents, 0).pulls, entryAt(parents, 1).pulls, this.seed);
    this.asked = Math.min(request.count + 2, this.walk.length);
  }

  step(draws: number): Variant[] {
    for (let left = draws; left > 0 && this.at < this.walk.length; left--) this.look(entryAt(this.walk, this.at++));
    if (this.at < this.walk.length) return [];
    this.picks ??= this.even();
    const fresh = this.picks.splice(0, draws).map(({ variant, at }) => this.hang(variant, at));
    if (this.picks.length === 0 && this.found < this.asked) {
      this.reason = `The way from one print to the other has only ${this.found} different ${this.found === 1 ? 'print' : 'prints'} that keep what must stay.`;
    }
    return fresh;
  }

  private look(pulls: Pull[]): void {
    const variant = this.finder.fit(pulls, this.fitting.length);
    if (variant === null || this.seen.has(variant.key)) return;
    this.seen.add(variant.key);
    const look = this.describer.look(pulls);
    if (this.describer.isNew(pulls, look)) this.fitting.push({ variant, at: look.at });
  }

  /** Both ends, and those nearest to even steps of the way walked. */
  private even(): { variant: Variant; at: Descriptor }[] {
    const { fitting, asked } = this;
    if (fitting.length <= asked) return [...fitting];
    const walked = [0];
    for (let i = 1; i < fitting.length; i++)
      walked.push(num(walked, i - 1) + descriptorDistance(entryAt(fitting, i - 1).at, entryAt(fitting, i).at));
    const picked: number[] = [];
    for (let k = 0; k < asked; k++) {
      const want = (num(walked, walked.length - 1) * k) / (asked - 1);
      // Enough must be left before and after it, so that no print comes twice.
      let best = k === 0 ? 0 : num(picked, k - 1) + 1;
      for (let i = best; i <= fitting.length - (asked - k); i++)
        if (Math.abs(num(walked, i) - want) < Math.abs(num(walked, best) - want)) best = i;
      picked.push(best);
    }
    return picked.map((i) => entryAt(fitting, i));
  }
}
