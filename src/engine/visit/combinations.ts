import type { Trials, Tried } from './trials.ts';
import { canAlso, leftOf, takes, type Taking, timesOf, type VisitChange } from './visit-changes.ts';

const MOST_CHANGES = 4;
/** Set-ups laid out for all combinations; on a large visit fewer changes are tried, those that promise most. */
const MOST_LAID = 150_000;
/** Changes that are tried in any case. */
const LEAST_TRIED = 12;

/** What a combination begins with, what it goes by, and the share of all work that is done by then. */
interface Beginning {
  start: readonly VisitChange[];
  /** Whether what is saved counts by its harm, or alone. */
  byHarm: boolean;
  share: number;
  /** By so many set-ups laid out in all it ends without having found any. */
  until: number;
}

interface Scored {
  change: Taking;
  tried: Tried;
  score: number;
}

/**
 * Combinations of changes that make a visit fit by the order at hand.
 * @yields the share of all work that is done, 0.4–0.8
 * @returns each of two to four changes; shortest first
 */
export function* combinationsOf(trials: Trials, takings: readonly Taking[]): Generator<number, VisitChange[][]> {
  const combined: VisitChange[][] = [];
  const starts = startsOf(trials);
  const end = trials.laid + MOST_LAID;
  for (const [i, start] of starts.entries()) {
    for (const byHarm of [true, false]) {
      const before = 2 * i + Number(!byHarm);
      const ways = 2 * starts.length;
      const until = trials.laid + (end - trials.laid) / (ways - before);
      const likely = promising(trials, takings, byHarm, Math.floor(MOST_LAID / ways / MOST_CHANGES / trials.base.setUps));
      const found = yield* combination(trials, likely, { start, byHarm, share: 0.4 + (0.4 * before) / ways, until });
      if (found !== null && found.length > 1) combined.push(found);
    }
  }
  return withoutDoubles(combined);
}

/** The changes that save most by themselves, in the order given; all of them where there are not so many. */
function promising(trials: Trials, takings: readonly Taking[], byHarm: boolean, most: number): readonly Taking[] {
  const left = Math.max(LEAST_TRIED, most);
  if (takings.length <= left) return takings;
  const worth = (change: Taking): number => {
    const { minutes, fits } = trials.quick([change]);
    return fits ? Infinity : (trials.base.minutes - minutes) / (byHarm ? trials.harm(change) : 1);
  };
  const scored = takings.map((change) => ({ change, worth: worth(change) })).sort((a, b) => b.worth - a.worth);
  const chosen = new Set(scored.slice(0, left).map(({ change }) => change));
  return takings.filter((change) => chosen.has(change));
}

/** What combinations begin with: nothing, an hour or two more a day, a day more. */
function startsOf({ input, plan }: Trials): VisitChange[][] {
  const more = timesOf(input, plan)
    .filter((change) => change.kind === 'hours')
    .slice(0, 2);
  const day: VisitChange[] = plan.daysNeeded > input.press.days + 1 ? [{ kind: 'days', days: input.press.days + 1 }] : [];
  return [[], ...more.map((change) => [change]), ...(day.length > 0 ? [day] : [])];
}

/** Adds changes until the visit fits, then puts back what was not needed; null when four do not do. */
function* combination(
  trials: Trials,
  takings: readonly Taking[],
  { start, byHarm, share, until }: Beginning,
): Generator<number, VisitChange[] | null> {
  let changes = [...start];
  let now = trials.quick(changes);
  while (!now.fits) {
    if (changes.length >= MOST_CHANGES || trials.laid > until) return null;
    const best = yield* bestTaking(trials, takings, { changes, now, byHarm, share });
    if (best === null) return null;
    changes = [...changes, best.change];
    now = best.tried.fits ? best.tried : trials.searched(changes);
    yield share;
  }
  for (const change of [...changes]) {
    const without = changes.filter((other) => other !== change);
    if (without.length > 0 && trials.quick(without).fits) changes = without;
    yield share;
  }
  return changes.filter((change) => change.kind !== 'sheets' || change.fewer === leftOf(changes, change.run).fewer);
}

/** The change that saves most, for its harm or in all; of those that make the visit fit the least harmful. */
function* bestTaking(
  trials: Trials,
  takings: readonly Taking[],
  { changes, now, byHarm, share }: { changes: readonly VisitChange[]; now: Tried; byHarm: boolean; share: number },
): Generator<number, Scored | null> {
  let best: Scored | null = null;
  for (const change of takings) {
    if (!canAlso(trials.input, changes, change)) continue;
    const tried = trials.quick([...changes, change]);
    const saved = now.minutes - tried.minutes;
    if (saved <= 0 && !tried.fits) continue;
    const score = tried.fits ? 1 / trials.harm(change) : byHarm ? saved / trials.harm(change) : saved;
    if (best === null || Number(tried.fits) > Number(best.tried.fits) || (tried.fits === best.tried.fits && score > best.score))
      best = { change, tried, score };
    yield share;
  }
  return best;
}

/** Of combinations that take the same away only the one that gives least more time, which is the first; shortest first. */
function withoutDoubles(combinations: readonly VisitChange[][]): VisitChange[][] {
  const known = new Map<string, VisitChange[]>();
  for (const changes of combinations) {
    const taken = changes
      .filter(takes)
      .map((change) => JSON.stringify(change))
      .sort();
    const days = changes.some((change) => change.kind === 'days');
    const key = [days, ...taken].join();
    if (!known.has(key)) known.set(key, changes);
  }
  return [...known.values()].sort((a, b) => a.length - b.length);
}
