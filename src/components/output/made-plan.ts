import type { FrameSize, FrameState } from '../../engine/explore/prepare/frames.ts';
import type { RestInput } from '../../engine/log/rest.ts';
import type { SettingNoted } from '../../engine/log/settings.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { PressPlan, VisitInput } from '../../engine/visit/visit.ts';

/** A plan and what it was made from. */
export interface MadePlan {
  plan: PressPlan;
  input: VisitInput | RestInput;
  /** By the index that cards and sheets use. */
  recipes: Recipe[];
  /** What was noted of screens before, the latest first; absent = nothing. */
  settings?: readonly SettingNoted[];
  /** Where the plan is on the clock of what was ticked: the order as it was planned, and until when ticks count, 'day 1, 14:05', and the indices of set-ups that are done. */
  clocked?: { planned: PressPlan; at: string; done: ReadonlySet<number> };
  /** How screens stand, by the planner's key; one that is not there is only drawn. */
  screenStates?: ReadonlyMap<string, FrameState>;
  /** What is said in the Drawer of the insides of their frames, by the planner's key. */
  frameSizes?: ReadonlyMap<string, FrameSize>;
  /** Ids of screens in the Drawer, by the planner's key, of which it can be said whether they are made. */
  drawerScreens?: ReadonlyMap<string, string>;
}
