import { entryAt } from '../../base/at.ts';
import { randomFrom } from '../../base/random.ts';
import { say } from '../../words/en/explore/derived.ts';
import { type Descriptor, descriptorDistance } from '../look/descriptor.ts';
import { MAX_ATTEMPTS } from '../search/explorer.ts';
import { Spread } from '../search/spread.ts';
import type { ExploreInput, Variant } from '../types.ts';
import { crossStacks, nearStack } from './derive.ts';
import { Derived, type DerivedRequest } from './derived.ts';
import { NearPool } from './near-pool.ts';

/** Candidates from which the first print is taken, and more for each further one. */
const FIRST_POOL = 24;
const DRAWS_EACH = 3;
/** Near prints are all drawn before the nearest hangs, and more of them: many small edits do not show. */
const NEAR_DRAWS_EACH = 5;

/** Nearer, away and crossed: candidates are drawn, the fittest hung. */
export class Draws extends Derived {
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
        this.reason = say.onlyPrintsOfCame(this.found, this.asked);
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
