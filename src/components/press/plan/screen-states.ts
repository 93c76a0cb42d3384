import { type FrameSize, type FrameState, frameState } from '../../../engine/explore/prepare/frames.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { VisitScreen } from '../../../engine/visit/registry.ts';
import type { MadePlan } from '../../output/made-plan.ts';

type Screens = Pick<Project, 'drawer' | 'frames'>;

/** An order with what is said of its screens in the Drawer; the same object while neither changes. */
export class ScreenStates {
  private kept: { of: MadePlan; drawer: Screens['drawer']; frames: Screens['frames']; made: MadePlan } | null = null;

  /** The order with the states of its screens and the sizes of their frames; itself where nothing is said of them. */
  made(of: MadePlan, { drawer, frames }: Screens): MadePlan {
    const { kept } = this;
    if (kept !== null && kept.of === of && kept.drawer === drawer && kept.frames === frames) return kept.made;
    const states = new Map<string, FrameState>();
    const sizes = new Map<string, FrameSize>();
    for (const { screen } of of.plan.cards) {
      const id = drawerId(screen, drawer);
      if (id === undefined) continue;
      const state = frameState(id, frames);
      if (state !== 'drawn') states.set(screen.key, state);
      const size = frames?.inside?.[id];
      if (size !== undefined) sizes.set(screen.key, size);
    }
    const made =
      states.size + sizes.size === 0
        ? of
        : { ...of, ...(states.size === 0 ? {} : { screenStates: states }), ...(sizes.size === 0 ? {} : { frameSizes: sizes }) };
    this.kept = { of, drawer, frames, made };
    return made;
  }
}

/** Which screen of the Drawer a screen of the visit is; undefined when it is not there. */
function drawerId({ number, name }: VisitScreen, drawer: Screens['drawer']): string | undefined {
  return drawer.screens.find((each) => each.number === number && each.name === name)?.id;
}
