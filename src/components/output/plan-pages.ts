import type { MadePlan } from './made-plan.ts';
import type { DrawState, PageWriter } from './page-writer.ts';

/** A plan on its way to paper: what is written, where it is written, and how its states are drawn. */
export interface PlanPages {
  out: PageWriter;
  made: MadePlan;
  draw: DrawState;
}
