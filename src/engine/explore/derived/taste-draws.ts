import { defined, entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { type Random, randomFrom } from '../../base/random.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/explore/derived.ts';
import { rearranged } from '../places/asked.ts';
import { MAX_ATTEMPTS } from '../search/explorer.ts';
import { TasteEye } from '../taste/taste-eye.ts';
import type { TasteGuide } from '../taste/taste-guide.ts';
import { learnOnScale, type Taste, viewOf } from '../taste/taste.ts';
import type { ExploreInput, Variant } from '../types.ts';
import { crossStacks, nearStack } from './derive.ts';
import { Derived, type DerivedParent, type DerivedRequest } from './derived.ts';
import { TastePool } from './taste-pool.ts';

/** Candidates from which the first print is taken, and more for each further one. */
const FIRST_POOL = 48;
const DRAWS_EACH = 8;
/** Of so many draws all but one cross two prints; the other goes on from one. */
const CROSSES = 3;
/** Small edits of a print that goes on from one are made so often at most. */
const MOST_ROUNDS = 3;

/** A stack that was drawn, and the prints that it comes from. */
interface Drawn {
  pulls: Pull[];
  from: readonly DerivedParent[];
}

/**
 * Prints that a taste likes: crosses of prints that it likes and small edits of them, of which those hang that it likes best,
 * with a share that it is unsure about, and none that looks like another.
 */
export class TasteDraws extends Derived {
  readonly asked: number;
  private readonly taste: Taste;
  private readonly eye: TasteEye;
  private readonly pool: TastePool<{ variant: Variant; from: readonly DerivedParent[] }>;
  private candidates = 0;
  private attempt = 0;

  constructor(input: ExploreInput, request: DerivedRequest, guide: TasteGuide) {
    super(input, request, rearranged(input.explore));
    const { parents } = request;
    if (parents.length === 0) throw new EngineError('explore.parents', say.choosePrintForThis);
    this.asked = request.count;
    this.taste = defined(learnOnScale(guide.choices, guide.scale) ?? undefined);
    this.eye = new TasteEye(input.drawer, guide.relative);
    const looks = parents.map(({ pulls }) => {
      const look = this.describer.look(pulls);
      // From here on it has been seen.
      this.describer.isNew(pulls, look);
      const known = this.finder.fit(pulls, 0);
      if (known !== null) this.seen.add(known.key);
      return look.at;
    });
    this.pool = new TastePool(looks, guide);
  }

  step(draws: number): Variant[] {
    const fresh: Variant[] = [];
    for (let left = draws; left > 0 && !this.done; left--) {
      if (this.attempt < MAX_ATTEMPTS && this.candidates < FIRST_POOL + DRAWS_EACH * this.found) {
        this.draw();
        continue;
      }
      const taken = this.pool.take();
      if (taken === null) {
        this.reason = say.onlyPrintsOfCameOf(this.found, this.asked);
        break;
      }
      const { variant, from } = taken.item;
      fresh.push(this.hang(variant, taken.at, from));
    }
    return fresh;
  }

  private draw(): void {
    const random = randomFrom(`${this.seed}:${this.candidates}:${this.attempt}`);
    const { pulls, from } = this.drawn(random);
    const variant = this.finder.fit(pulls, this.candidates);
    this.attempt++;
    if (variant === null || this.seen.has(variant.key)) return;
    this.seen.add(variant.key);
    const look = this.describer.look(variant.pulls);
    if (!this.describer.isNew(variant.pulls, look)) return;
    this.candidates++;
    this.attempt = 0;
    this.pool.offer({ variant, from }, look.at, viewOf(this.taste, this.eye.facts(variant.pulls)));
  }

  private drawn(random: Random): Drawn {
    const { parents } = this.request;
    const one = entryAt(parents, this.liked(parents.length, random));
    if (parents.length === 1 || !random.chance(CROSSES, CROSSES + 1)) {
      let pulls = this.edited(one.pulls, random);
      for (let round = random.int(MOST_ROUNDS); round > 0; round--) pulls = this.edited(pulls, random);
      return { pulls, from: [one] };
    }
    const others = parents.filter((parent) => parent !== one);
    const other = entryAt(others, this.liked(others.length, random));
    const pulls = crossStacks(one.pulls, other.pulls, random);
    return { pulls: random.chance(1, 2) ? this.edited(pulls, random) : pulls, from: [one, other] };
  }

  private edited(pulls: readonly Pull[], random: Random): Pull[] {
    return nearStack(pulls, this.input.explore, this.finder.spares, random);
  }

  /** A place among so many, the first ones likelier. */
  private liked(count: number, random: Random): number {
    return Math.min(random.int(count), random.int(count));
  }
}
