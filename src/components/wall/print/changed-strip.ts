import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { Work } from '../../ui/work.ts';
import '../../ui/print/picture-view.ts';
import { say } from '../../words/en/wall/print.ts';

const HEIGHT_PX = 144;

/** A print's states, small and in a row, those that changed marked. */
@customElement('wall-changed-strip')
export class ChangedStrip extends LitElement {
  static override styles = css`
    ol {
      display: flex;
      gap: var(--space-4);
      margin: 0;
      padding: var(--space-2);
      list-style: none;
      overflow-x: auto;
      scrollbar-width: thin;
    }
    li {
      /* Ten states fit beside each other; of more, the rest is scrolled to. */
      flex: 1 1 56px;
      min-width: 46px;
      max-width: 56px;
      font-size: var(--type-fine);
      text-align: center;
      color: var(--ink-soft);
    }
    ps-picture {
      display: block;
      width: 100%;
      outline: 1px solid var(--line);
    }
    li[data-changed] {
      color: var(--ink);
      font-weight: 650;
    }
    li[data-changed] ps-picture {
      outline: 3px solid var(--accent);
    }
  `;

  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) drawer: Studio | null = null;
  @property({ attribute: false }) relative = true;
  @property({ attribute: false }) touched: readonly string[] = [];
  // Without pictures it still marks the pulls; why there are none, the sentence above the strip says.
  private readonly states = new Work<readonly Picture[]>(this);

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('pulls') || changed.has('drawer') || changed.has('relative')) this.draw();
  }

  private draw(): void {
    const { drawer, pulls, relative } = this;
    if (drawer === null || pulls.length === 0) this.states.clear();
    else void this.states.start(() => engineFor('picture').states({ studio: drawer, pulls, heightPx: HEIGHT_PX, relative }));
  }

  override render() {
    return html`<ol aria-label=${say.statesThoseThatChanged}>
      ${this.pulls.map((pull, i) => {
        const changed = this.touched.includes(pull.id);
        return html`<li ?data-changed=${changed}>
          <ps-picture .picture=${this.states.found?.[i + 1] ?? null}></ps-picture>
          <span aria-label=${changed ? say.changed(i + 1) : nothing}>${i + 1}</span>
        </li>`;
      })}
    </ol>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-changed-strip': ChangedStrip;
  }
}
