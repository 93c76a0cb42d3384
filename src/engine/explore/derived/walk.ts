import { entryAt, num } from '../../base/at.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/explore/derived.ts';
import { type Descriptor, descriptorDistance } from '../look/descriptor.ts';
import type { ExploreInput, Variant } from '../types.ts';
import { walkStacks } from './derive.ts';
import { Derived, type DerivedRequest } from './derived.ts';

/** Between two prints: the stacks of a walk that fit the settings, as evenly apart as they look. */
export class Walk extends Derived {
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
      this.reason = say.wayFromOnePrint(this.found);
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
