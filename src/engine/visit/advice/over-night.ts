import { entryAt, num } from '../../base/at.ts';
import { endOf } from '../../pullorder/timeline/beds.ts';
import { timelineOf } from '../../pullorder/timeline/timeline.ts';
import type { SetUp } from '../../pullorder/types.ts';
import type { OrderAtHand } from '../problem/order-at-hand.ts';
import type { VisitFigures } from '../visit-figures.ts';
import type { VisitProblem } from '../visit-problem.ts';
import { timelineInput } from '../visit-times.ts';

/** An order with the bed of each set-up. */
type OnBeds = Pick<OrderAtHand, 'setUps' | 'beds'>;

const MOST_SPLIT = 8;

/**
 * Begins set-ups that wait for the next morning the evening before, with as many sheets as still fit,
 * where the visit then ends sooner: each is a set-up in the evening and the same again in the morning.
 * @returns the order, and the numbers of the set-ups of the order given that were split; none when nothing is won
 */
export function splitOverNight(order: OnBeds, visit: VisitProblem, press: VisitFigures): { order: OnBeds; split: number[] } {
  const lay = timelineOf(timelineInput(visit, press));
  const endsAt = (of: OnBeds): number => endOf(lay(of.setUps, of.beds).timeline);
  let best = order;
  let end = endsAt(order);
  const split: number[] = [];
  for (let at = 1; at < best.setUps.length && split.length < MOST_SPLIT; at++) {
    const { times } = lay(best.setUps, best.beds).timeline;
    if (!isPutOff(times, best.beds, at)) continue;
    const evening = mostThatFit(
      best,
      at,
      (of) =>
        num(
          lay(of.setUps, of.beds).timeline.times.map(({ day }) => day),
          at,
        ) < entryAt(times, at).day,
    );
    if (evening === 0) continue;
    const tried = splitAt(best, at, evening);
    const sooner = endsAt(tried);
    if (sooner >= end - 0.5) continue;
    split.push(at + 1 - split.length);
    best = tried;
    end = sooner;
  }
  return { order: best, split };
}

/** Whether a set-up begins on a later day than the one before it on its bed. */
function isPutOff(times: readonly { day: number }[], beds: readonly number[], at: number): boolean {
  for (let k = at - 1; k >= 0; k--) if (num(beds, k) === num(beds, at)) return entryAt(times, k).day < entryAt(times, at).day;
  return false;
}

/** How many pulls of a set-up fit before it; halving, as fewer never take longer. */
function mostThatFit(order: OnBeds, at: number, fits: (of: OnBeds) => boolean): number {
  let [least, most] = [0, entryAt(order.setUps, at).pulls.length - 1];
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (fits(splitAt(order, at, middle))) least = middle;
    else most = middle - 1;
  }
  return least;
}

function splitAt({ setUps, beds }: OnBeds, at: number, pulls: number): OnBeds {
  const whole = entryAt(setUps, at);
  const parts: SetUp[] = [
    { ...whole, pulls: whole.pulls.slice(0, pulls) },
    { ...whole, pulls: whole.pulls.slice(pulls) },
  ];
  return { setUps: setUps.toSpliced(at, 1, ...parts), beds: beds.toSpliced(at, 1, num(beds, at), num(beds, at)) };
}
