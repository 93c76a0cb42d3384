import { randomFrom } from '../../base/random.ts';
import { wordCost, type Compiled, type Meter } from '../model.ts';
import { search, type SearchState } from './search.ts';

/** Units of each stage: what a search of 2, 10, 40 or 160 s is given is a whole number of stages. */
const STAGES: readonly number[] = [20e6, 80e6, 300e6, 1200e6];
/** The last one, which goes on for as long as it may. */
const LONGEST = 4800e6;
/** What shapes a search at least, and one of which it is not known how long it will go on. */
const LEAST_UNITS = 100_000;
const USUAL_UNITS = 4_000_000;

/** What a search in stages begins with. */
interface Stages {
  seed: string | number;
  meter: Meter;
  /** Letters of kinds of an order at hand, whole or not; none = []. */
  from: readonly number[];
  /** Work that will be given in all, where it is known. */
  units: number | undefined;
  /** Units of each stage but the last. */
  sizes?: readonly number[];
}

/**
 * A search that never gives a dearer plan nor a lower bound for more work, from the work of the first stage on.
 *
 * The work that a search is given shapes it, so that one with more may come to a dearer order. So here the first stage
 * is the same whatever is given beyond it; each next one begins afresh with a seed of its own, and the
 * cheapest plan and the best bounds of all stages count.
 * @throws EngineError as `search`
 */
export function* inStages(compiled: Compiled, { seed, meter, from, units, sizes = STAGES }: Stages): Generator<SearchState, void> {
  const first = Math.max(LEAST_UNITS, Math.min(units ?? USUAL_UNITS, sizes[0] ?? Infinity));
  let kept: SearchState | null = null;
  for (const [stage, size] of [...(units === undefined ? [] : sizes), Infinity].entries()) {
    const random = randomFrom(stage === 0 ? `pullorder ${seed}` : `pullorder ${seed} stage ${stage + 1}`);
    const until = meter.units + size;
    let ended = true;
    for (const state of search(compiled, from, { random, meter, firstRound: stage === 0 ? first : Math.min(size, LONGEST) })) {
      yield (kept = better(compiled, kept, state));
      if (meter.units < until) continue;
      ended = false;
      break;
    }
    if (ended) return;
  }
}

/** The cheaper plan with the better bounds. */
function better({ kindModel }: Compiled, one: SearchState | null, other: SearchState): SearchState {
  if (one === null) return other;
  return {
    word: wordCost(kindModel, other.word) < wordCost(kindModel, one.word) ? other.word : one.word,
    bound: { setUps: Math.max(one.bound.setUps, other.bound.setUps), mounts: Math.max(one.bound.mounts, other.bound.mounts) },
  };
}
