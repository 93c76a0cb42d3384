import { defined } from '../base/at.ts';
import { combinationsOf } from './combinations.ts';
import { choiceOf, type FitChoice, proven } from './fit-choice.ts';
import { fitsIn, Trials, type Tried } from './trials.ts';
import { type Taking, takingsOf, timesOf } from './visit-changes.ts';
import type { PressPlan, VisitInput } from './visit.ts';

/** Choices given at most: single ones that take something away, and combinations. */
const MOST = 5;
const MOST_COMBINATIONS = 3;
/** Pulls looked at by the searches for single changes: on a large visit only those that promise most get one. */
const MOST_SEARCHED = 100_000;

/** A single change that helps. */
interface Single {
  changes: [Taking];
  tried: Tried;
  /** Minutes saved for its harm. */
  worth: number;
}

/**
 * What to leave out, or how much longer to stay, so that a visit fits: screens of a recipe, whole
 * recipes, a quarter or half of its sheets, more days, longer days. Each is tried on the order at
 * hand with the rest struck and on a short search of its own, and the shorter counts. Where hardly
 * one of them makes the visit fit, combinations of up to four are built, each time the change that
 * saves most for its harm or most in all, also with a longer day or a day more, and what turns out
 * not to be needed is put back. What is said to fit was planned anew, as it will be printed.
 * @param plan an order of `input` that does not fit
 * @yields the share that is done, 0–1
 * @returns first combinations and single changes that fit; what takes something away by minutes
 *   saved per harm (mean ΔE00 × area × sheets), at most five; then the least more time that fits.
 *   Changes that save nothing are left out
 */
export function* whatToDrop(input: VisitInput, plan: PressPlan): Generator<number, FitChoice[]> {
  const trials = new Trials(input, plan);
  const takings = takingsOf(input);
  const singles = yield* singlesOf(trials, takings);
  const combined = singles.filter(({ tried }) => tried.fits).length < 2 ? yield* combinationsOf(trials, takings) : [];
  const longer = timesOf(input, plan).map((change) => ({ changes: [change], tried: trials.quick([change]) }));
  const hours = longer.filter(({ changes: [change], tried }) => defined(change).kind === 'hours' && tried.fits).slice(0, 1);
  const days = longer.filter(({ changes: [change] }) => defined(change).kind === 'days');

  const out: FitChoice[] = [];
  for (const changes of combined.slice(0, MOST_COMBINATIONS)) {
    const choice = yield* proven(trials, changes, 0.8);
    if (choice.fits) out.push(choice);
  }
  for (const { changes, tried } of singles.slice(0, MOST)) {
    out.push(tried.fits ? yield* proven(trials, changes, 0.9) : choiceOf(trials, changes, tried, null));
  }
  const taking = out.sort((a, b) => Number(b.fits) - Number(a.fits));
  for (const { changes, tried } of [...hours, ...days]) {
    if (!tried.fits) continue;
    const longerPlan = trials.longer(changes);
    taking.push(choiceOf(trials, changes, tried, fitsIn(longerPlan) ? longerPlan : null));
  }
  return taking;
}

/**
 * The single changes that help, what fits first, then by worth.
 * @yields the share of all work that is done, 0–0.4
 */
function* singlesOf(trials: Trials, takings: readonly Taking[]): Generator<number, Single[]> {
  const single = (change: Taking, tried: Tried): Single => ({
    changes: [change],
    tried,
    worth: (trials.base.minutes - tried.minutes) / trials.harm(change),
  });
  const all: Single[] = [];
  for (const [i, change] of takings.entries()) {
    all.push(single(change, trials.quick([change])));
    yield (0.1 * (i + 1)) / takings.length;
  }
  const promising = [...all].sort(firstTold).slice(0, Math.max(MOST, Math.floor(MOST_SEARCHED / trials.pulls)));
  for (const [i, { changes }] of promising.entries()) {
    all[all.findIndex((each) => each.changes === changes)] = single(changes[0], trials.searched(changes));
    yield 0.1 + (0.3 * (i + 1)) / promising.length;
  }
  return all.filter(({ tried }) => tried.fits || trials.base.minutes - tried.minutes >= 1).sort(firstTold);
}

function firstTold(a: Single, b: Single): number {
  return Number(b.tried.fits) - Number(a.tried.fits) || b.worth - a.worth;
}
