import { html } from 'lit';
import type { PullChange } from '../../engine/project/commands/bench.ts';
import { pullsOf } from '../../engine/stack/edit/choose-pulls.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/bench/room.ts';
import './many/many-panel.ts';
import type { Offset } from './bench-table.ts';
import type { PullChoice } from './many/pull-choice.ts';
import './pull/pull-panel.ts';
import type { BenchEdits } from './pull/bench-edits.ts';

interface BenchSelection {
  store: AppStore;
  choice: PullChoice;
  edits: BenchEdits;
  remove(): void;
}

/** What can be changed of what is selected: one pull, or several together. */
export function benchSelection(selection: BenchSelection) {
  const { store, choice } = selection;
  const { bench: pulls } = store.project;
  const pull = pulls.find(({ id }) => id === store.selectedPull);
  if (pull === undefined) {
    const words = pulls.length === 0 ? say.pullThatIsSelected : say.chooseStateInStrip;
    return html`<section>
      <p class="soft">${words}</p>
    </section>`;
  }
  return choice.ids.size > 1 ? several(selection, pull) : one(selection, pull);
}

function one({ store, choice, edits, remove }: BenchSelection, pull: Pull) {
  const { bench: pulls, drawer: studio } = store.project;
  return html`<bench-pull-panel
    role="region"
    aria-label=${say.selectedPull}
    .pull=${pull}
    .index=${pulls.indexOf(pull)}
    .pulls=${pulls}
    .drawer=${studio}
    @pull-change=${(event: CustomEvent<PullChange>) => edits.change([pull.id], event.detail)}
    @pull-place=${(event: CustomEvent<number>) => edits.move([pull.id], event.detail)}
    @pull-alike=${(event: CustomEvent<'ink' | 'screen'>) => choice.all(pullsOf(pulls, event.detail, pull[event.detail]))}
    @ink-replace=${(event: CustomEvent<string>) => edits.replaceInk(pull.ink, event.detail)}
    @pull-remove=${remove}
  ></bench-pull-panel>`;
}

function several({ store, choice, edits, remove }: BenchSelection, last: Pull) {
  const { bench: pulls, drawer: studio } = store.project;
  const ids = choice.inOrder;
  return html`<bench-many-panel
    role="region"
    aria-label=${say.selectedPulls}
    .pulls=${pulls}
    .ids=${ids}
    .drawer=${studio}
    @pull-change=${(event: CustomEvent<PullChange>) => edits.change(ids, event.detail)}
    @pull-further=${(event: CustomEvent<Offset>) => edits.shift(ids, event.detail)}
    @pull-place=${(event: CustomEvent<number>) => edits.move(ids, event.detail)}
    @pull-one=${() => choice.one(last.id)}
    @pull-remove=${remove}
  ></bench-many-panel>`;
}
