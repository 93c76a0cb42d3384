import { html, nothing } from 'lit';
import type { AppStore } from '../app-store.ts';
import { putOnBench } from '../ui/put-on-bench.ts';

/** What lies over bare paper: how to come to a first pull. @param add opens the choice of a pull */
export function bareBench(store: AppStore, add: () => void) {
  const { screens } = store.project.drawer;
  const none = screens.length === 0;
  return html`<div class="empty midst">
    <p>
      ${
        none
          ? 'Bare paper, and no screens in the drawer yet. Put some shapes into it first.'
          : 'Bare paper. Put down a first pull here, or choose a print on the Wall.'
      }
    </p>
    ${
      none
        ? html`<button class="main" @click=${() => store.go('drawer')}>To the Drawer</button>`
        : html`<button class="main" @click=${add}>Add a pull</button>
          ${screens.length < 2 ? nothing : html`<button @click=${() => putOnBench(store, screens)}>Put all ${screens.length} down</button>`}`
    }
  </div>`;
}
