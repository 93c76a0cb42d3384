import { html, nothing } from 'lit';
import type { AppStore } from '../app-store.ts';
import { putOnBench } from '../ui/put-on-bench.ts';
import { say } from '../words/en/bench/room.ts';

/** What lies over bare paper: how to come to a first pull. @param add opens the choice of a pull */
export function bareBench(store: AppStore, add: () => void) {
  const { screens } = store.project.drawer;
  const none = screens.length === 0;
  return html`<div class="empty midst">
    <p>
      ${none ? say.barePaperAndNo : say.barePaperPutDown}
    </p>
    ${
      none
        ? html`<button class="main" @click=${() => store.go('drawer')}>${say.toDrawer}</button>`
        : html`<button class="main" @click=${add}>${say.addPull}</button>
          ${screens.length < 2 ? nothing : html`<button @click=${() => putOnBench(store, screens)}>${say.putAllDown(screens.length)}</button>`}`
    }
  </div>`;
}
