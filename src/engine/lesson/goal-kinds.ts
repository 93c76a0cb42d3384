/** What a level of a lesson asks for, in the order in which levels are offered. */
export const GOAL_KINDS = [
  'on-top',
  'alike',
  'found-back',
  'overprint-made',
  'overprint-avoided',
  'three-pictures',
  'one-picture',
  'less-contrast',
] as const;

export type GoalKind = (typeof GOAL_KINDS)[number];

/** What may be changed to reach a goal. */
export interface GoalRights {
  order: boolean;
  place: boolean;
  ink: boolean;
}

/** What may be changed on the way to a goal. */
export function rightsOf(kind: GoalKind): GoalRights {
  switch (kind) {
    case 'on-top':
      return { order: false, place: false, ink: false };
    case 'alike':
    case 'found-back':
      return { order: true, place: false, ink: false };
    case 'less-contrast':
      return { order: true, place: false, ink: true };
    case 'overprint-made':
    case 'overprint-avoided':
    case 'three-pictures':
    case 'one-picture':
      return { order: true, place: true, ink: true };
  }
}

/** Whether a goal is about an order that is hidden until someone asks. */
export function asksForOrder(kind: GoalKind): boolean {
  return kind === 'on-top' || kind === 'found-back';
}
