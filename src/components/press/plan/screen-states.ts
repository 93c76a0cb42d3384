import { type FrameSize, type FrameState, frameState } from '../../../engine/explore/prepare/frames.ts';
import { screensPrinted } from '../../../engine/log/ticks/screens-printed.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { VisitScreen } from '../../../engine/visit/registry.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';

type Screens = Pick<Project, 'drawer' | 'frames'>;
type Log = Pick<LogKeeper, 'sheets' | 'recipes'>;

const NO_LOG: Log = { sheets: [], recipes: [] };

/** An order with what is said of its screens in the Drawer; the same object while neither changes. */
export class ScreenStates {
  private kept: { key: readonly unknown[]; made: MadePlan } | null = null;

  /**
   * The order with the states of its screens and the sizes of their frames; itself where none of its screens is in the Drawer.
   * @param log of the visit: a screen that was pulled is made
   */
  made(of: MadePlan, { drawer, frames }: Screens, { sheets, recipes }: Log = NO_LOG): MadePlan {
    const key = [of, drawer, frames, sheets];
    const { kept } = this;
    if (kept !== null && key.every((each, i) => each === kept.key[i])) return kept.made;
    const pulled = screensPrinted(sheets, recipes);
    const printed = new Set<string>();
    const states = new Map<string, FrameState>();
    const sizes = new Map<string, FrameSize>();
    const ids = new Map<string, string>();
    for (const { screen } of of.plan.cards) {
      if (pulled.some(({ number, name }) => number === screen.number && name === screen.name)) printed.add(screen.key);
      const id = drawerId(screen, drawer);
      if (id === undefined) continue;
      if (!printed.has(screen.key)) ids.set(screen.key, id);
      const state = frameState(id, frames);
      if (state !== 'drawn') states.set(screen.key, state);
      const size = frames?.inside?.[id];
      if (size !== undefined) sizes.set(screen.key, size);
    }
    // Where nothing is said of any, a screen that was pulled says nothing of the others.
    if (states.size > 0) for (const screen of printed) states.set(screen, 'made');
    const made =
      ids.size + states.size + sizes.size === 0
        ? of
        : {
            ...of,
            ...(ids.size === 0 ? {} : { drawerScreens: ids }),
            ...(states.size === 0 ? {} : { screenStates: states }),
            ...(sizes.size === 0 ? {} : { frameSizes: sizes }),
          };
    this.kept = { key, made };
    return made;
  }
}

/** Which screen of the Drawer a screen of the visit is; undefined when it is not there. */
function drawerId({ number, name }: VisitScreen, drawer: Screens['drawer']): string | undefined {
  return drawer.screens.find((each) => each.number === number && each.name === name)?.id;
}
