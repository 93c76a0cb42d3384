import type { Draft } from 'immer';
import { EngineError } from '../../base/error.ts';
import { frameState } from '../../explore/prepare/frames.ts';
import { type TasteChoice, withChoices, withoutChoices } from '../../explore/taste/choices.ts';
import type { ExploreSettings, Hold } from '../../explore/types.ts';
import { cutLineage } from '../../recipe/lineage.ts';
import type { Pin } from '../../recipe/prints/pinned-prints.ts';
import { madeAsMirror, missingMirrors } from '../../shapes/place/mirrored.ts';
import type { Screen } from '../../shapes/types.ts';
import { say } from '../../words/en/project/commands.ts';
import { forgetScreen } from '../forget.ts';
import { MOST_PINS, type Project } from '../types.ts';
import { checkedPull, requireFew } from './checks.ts';
import { fieldsOf, type RulesOf } from './rule.ts';

/** What can be done to what the Wall is asked for and what stays on it. */
export type WallCommand =
  | { kind: 'set-explore'; change: Partial<Omit<ExploreSettings, 'holds'>> }
  | { kind: 'set-holds'; holds: Hold[] }
  /** With what a new pin says of one's taste; what a pin that goes said is forgotten. */
  | { kind: 'set-pins'; pins: Pin[]; taught?: readonly TasteChoice[] }
  | { kind: 'teach-taste'; choices: readonly TasteChoice[] }
  | { kind: 'forget-taste'; choices: readonly TasteChoice[] };

/** Adds to what a project knows of one's taste. */
export function teach(draft: Draft<Project>, choices: readonly TasteChoice[]): void {
  if (choices.length === 0) return;
  draft.taste = withChoices(draft.taste ?? [], choices) as Draft<TasteChoice[]>;
}

function forgetPins(draft: Draft<Project>, pins: readonly Pin[]): void {
  if (draft.taste === undefined) return;
  const gone = (draft.pins ?? []).flatMap(({ key }) => (pins.some((pin) => pin.key === key) ? [] : [key]));
  if (gone.length > 0) draft.taste = draft.taste.filter(({ way, chosen }) => way !== 'pinned' || !gone.includes(chosen.key));
}

/** Puts a mirror of each screen into the drawer, or takes those out again that nothing uses and nobody made. */
function setMirrors(draft: Draft<Project>, wanted: boolean): void {
  const { drawer: studio, bench, lesson, pins = [], frames } = draft;
  if (wanted) {
    studio.screens.push(...(missingMirrors(studio.screens, studio.paper.widthMm) as Draft<Screen>[]));
    return;
  }
  const used = new Set([...bench, ...lesson, ...pins.flatMap(({ pulls }) => pulls)].map(({ screen }) => screen));
  const gone = studio.screens.filter((screen) => madeAsMirror(screen) && !used.has(screen.id) && frameState(screen.id, frames) === 'drawn');
  studio.screens = studio.screens.filter((screen) => !gone.includes(screen));
  for (const { id } of gone) forgetScreen(draft.explore, id);
}

/** How it is done. */
export const WALL_RULES: RulesOf<WallCommand> = {
  'set-explore': {
    label: say.changeWhatMayVary,
    mergeKey: ({ kind, change }) => `${kind}:${fieldsOf(change)}`,
    change(draft, { change }) {
      Object.assign(draft.explore, change);
      if ('mirrored' in change) setMirrors(draft, change.mirrored === true);
      // A number of one's own stands for itself.
      if ('minDeltaE' in change && !('unwidenedDeltaE' in change)) delete draft.explore.unwidenedDeltaE;
    },
  },
  'set-holds': {
    label: say.changeWhatMustStay,
    change(draft, { holds }) {
      draft.explore.holds = holds;
    },
  },
  'set-pins': {
    label: say.changeWhatIsPinned,
    change(draft, { pins, taught = [] }) {
      if (pins.length > MOST_PINS) {
        throw new EngineError('command.pins', say.atMostPrintsStay(MOST_PINS));
      }
      for (const { pulls } of pins) requireFew(pulls.length);
      forgetPins(draft, pins);
      teach(draft, taught);
      draft.pins = pins.map((pin) => ({
        ...pin,
        pulls: pin.pulls.map((pull) => checkedPull(draft, pull)),
        lineage: cutLineage(pin.lineage),
      }));
    },
  },
  'teach-taste': {
    label: say.teachWhatYouChoose,
    change: (draft, { choices }) => teach(draft, choices),
  },
  'forget-taste': {
    label: say.forgetWhatWasChosen,
    change(draft, { choices }) {
      draft.taste = withoutChoices(draft.taste ?? [], choices) as Draft<TasteChoice[]>;
    },
  },
};
