import { type FrameState, frameState } from '../../../engine/explore/prepare/frames.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { VisitScreen } from '../../../engine/visit/registry.ts';
import type { MadePlan } from '../../output/made-plan.ts';

type Screens = Pick<Project, 'drawer' | 'frames'>;

/** An order with what is said of its screens in the Drawer; the same object while neither changes. */
export class ScreenStates {
  private kept: { of: MadePlan; drawer: Screens['drawer']; frames: Screens['frames']; made: MadePlan } | null = null;

  /** The order with the states of its screens; itself where none is made or to make. */
  made(of: MadePlan, { drawer, frames }: Screens): MadePlan {
    const { kept } = this;
    if (kept !== null && kept.of === of && kept.drawer === drawer && kept.frames === frames) return kept.made;
    const states = new Map<string, FrameState>();
    for (const { screen } of of.plan.cards) {
      const state = stateOf(screen, { drawer, frames });
      if (state !== 'drawn') states.set(screen.key, state);
    }
    const made = states.size === 0 ? of : { ...of, screenStates: states };
    this.kept = { of, drawer, frames, made };
    return made;
  }
}

/** How a screen of the visit stands in the Drawer; 'drawn' when it is not there. */
function stateOf({ number, name }: VisitScreen, { drawer, frames }: Screens): FrameState {
  const screen = drawer.screens.find((each) => each.number === number && each.name === name);
  return screen === undefined ? 'drawn' : frameState(screen.id, frames);
}
