import { GOAL_KINDS, type GoalKind } from './goal-kinds.ts';
import { type SortedOrders, topQuestion } from './hidden-order.ts';

/**
 * Goals that can be given on a sheet: there is something to find, and it is not as it shall be already.
 * @param sorted all orders of its pulls
 * @returns those of GOAL_KINDS that suit, in their order; whether a made goal is reached already is for checkGoal
 */
export function suitingGoals(sorted: SortedOrders): GoalKind[] {
  const pulls = sorted.orders[0]?.length ?? 0;
  const meet = sorted.pairs.some(({ areaMm2 }) => areaMm2 > 0);
  const pictures = sorted.groups.length;
  const suits: Readonly<Record<GoalKind, boolean>> = {
    'on-top': topQuestion(sorted, '') !== null,
    alike: sorted.groups.some((group) => group.length > 1),
    'found-back': pictures > 1,
    'overprint-made': meet,
    'overprint-avoided': meet,
    'three-pictures': pulls >= 3 && pictures !== 3,
    'one-picture': pictures > 1,
    'less-contrast': meet,
  };
  return GOAL_KINDS.filter((kind) => suits[kind]);
}
