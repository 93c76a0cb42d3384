export { checkPlan } from './check-plan.ts';
export { createPlanner, planPulls, UNITS_PER_MS, type Planner, type PlanOptions } from './planner.ts';
export type * from './types.ts';
export { DEFAULT_PRESS_TIMES } from './timeline.ts';
