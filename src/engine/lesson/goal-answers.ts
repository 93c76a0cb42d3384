import type { GoalState, MadeGoal } from './check-goal.ts';
import { goalSheet } from './goal-sheets.ts';

/** Whether an ink lets all through or hides all that is below. */
const [CLEAR, OPAQUE] = [-1, 1];

/** One way to reach a goal on its own sheet. */
export function goalAnswer(kind: MadeGoal): GoalState {
  const { pulls, inks } = goalSheet(kind);
  const all = (opacity: number): GoalState => ({ pulls, inks: pulls.map(({ ink }) => ({ ink, opacity })) });
  switch (kind) {
    case 'three-pictures':
      // The second tile comes to lie where the third does.
      return { pulls: pulls.map((pull) => (pull.id === 'p2' ? { ...pull, dxMm: 60, dyMm: -40 } : pull)), inks };
    case 'one-picture':
    case 'overprint-made':
      return all(CLEAR);
    case 'overprint-avoided':
      return all(OPAQUE);
    case 'less-contrast':
      // The large light disc goes over the dark bar and over what crosses it.
      return { pulls: ['p2', 'p4', 'p3', 'p1'].flatMap((id) => pulls.filter((pull) => pull.id === id)), inks };
  }
}
