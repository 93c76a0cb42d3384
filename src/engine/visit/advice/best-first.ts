import { type AdviceFigures, isLess } from './advice-figures.ts';
import type { Advice } from './advice.ts';

/** What somebody would rather have least of. */
export type AdviceGoal = 'mounts' | 'setUps' | 'days' | 'inks';

const FIGURE_OF = {
  mounts: ({ mounts }: AdviceFigures) => mounts,
  setUps: ({ setUps }: AdviceFigures) => setUps,
  days: ({ days, minutes }: AdviceFigures) => days * 1440 + minutes,
  inks: ({ inksADay }: AdviceFigures) => inksADay,
} as const;

/** ΔE00 by which the whole visit may move before what is saved counts half. */
const HALF_WORTH_DELTA_E = 3;

/**
 * Advice in the order of its worth for a goal: the share that it saves of it, against how far the prints
 * move; what saves nothing of it comes last, by hours and then by its change. What saves nothing at all
 * is left out.
 * @param before of the visit as it stands, planned with as much work
 */
export function bestFirst(all: readonly Advice[], before: AdviceFigures, goal: AdviceGoal): Advice[] {
  const of = FIGURE_OF[goal];
  const worth = ({ figures, deltaE }: Advice): number => {
    const saved = (of(before) - of(figures)) / Math.max(1, of(before));
    return saved <= 0 ? saved : saved / (1 + deltaE / HALF_WORTH_DELTA_E);
  };
  return all
    .filter(({ figures }) => isLess(figures, before))
    .sort((a, b) => worth(b) - worth(a) || a.figures.minutes - b.figures.minutes || a.deltaE - b.deltaE);
}
