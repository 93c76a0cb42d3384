import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { entryAt } from '../../engine/base/at.ts';
import { LESSON_PULLS } from '../../engine/base/limits.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import '../ui/kit/ink-chip.ts';
import { controls } from '../ui/controls-style.ts';
import { cardList } from '../ui/layout-style.ts';
import { screenGlyph } from '../ui/print/screen-outline.ts';
import { say } from '../words/en/lesson/room.ts';
import { chipStyles, pullChip } from './board/order-chips.ts';

/**
 * Tickets of the Bench's pulls, in stack order, to tick.
 * @fires pulls CustomEvent<string[]>: ids of the pulls that shall be compared, in stack order
 */
@customElement('ps-pull-picker')
export class PullPicker extends LitElement {
  static override styles = [
    controls,
    chipStyles,
    cardList,
    css`
      ul {
        --card: 220px;
        gap: 0 var(--space-9);
        max-height: 250px;
        margin: 0;
        padding: var(--space-1);
        overflow: auto;
      }
      label {
        display: grid;
        grid-template-columns: 20px 30px minmax(0, 1fr) 28px;
        gap: var(--space-5);
        min-height: var(--touch);
        width: 100%;
        border-bottom: 1px solid var(--line);
        cursor: pointer;
      }
      label:has(:disabled) {
        opacity: 0.5;
        cursor: default;
      }
      .glyph {
        width: 30px;
        height: 30px;
      }
      .name {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      label:has(:checked) .name {
        font-weight: 600;
      }
      ps-ink-chip {
        width: 28px;
      }
    `,
  ];

  /** Pulls to choose from, first down first. */
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  /** Pulls of the lesson. */
  @property({ attribute: false }) chosen: readonly Pull[] = [];
  @property({ attribute: false }) studio!: Studio;

  private toggle(id: string, on: boolean): void {
    const ids = new Set(this.chosen.map((pull) => pull.id));
    if (on) ids.add(id);
    else ids.delete(id);
    this.dispatchEvent(
      new CustomEvent<string[]>('pulls', { detail: this.pulls.filter((pull) => ids.has(pull.id)).map((pull) => pull.id) }),
    );
  }

  override render() {
    const full = this.chosen.length >= LESSON_PULLS.most;
    return html`<ul aria-label=${say.pullsOfStackFirst}>
      ${repeat(
        this.pulls,
        (pull) => pull.id,
        (pull) => {
          const at = this.chosen.findIndex((entry) => entry.id === pull.id);
          const screen = this.studio.screens.find((entry) => entry.id === pull.screen);
          const ink = this.studio.inks.find((entry) => entry.id === pull.ink);
          return html`<li>
            <label title="${screen?.name ?? ''}, ${ink?.name ?? ''}">
              <input
                type="checkbox"
                .checked=${at >= 0}
                ?disabled=${full && at < 0}
                @change=${(event: Event) => this.toggle(pull.id, (event.target as HTMLInputElement).checked)}
              />
              ${screenGlyph(screen, this.studio)}
              <span class="name">${screen === undefined ? say.gone : screen.name}<span class="visually-hidden">, ${ink?.name}</span></span>
              ${at >= 0 ? pullChip(entryAt(this.chosen, at), at, this.studio) : ink === undefined ? nothing : html`<ps-ink-chip .ink=${ink}></ps-ink-chip>`}
            </label>
          </li>`;
        },
      )}
    </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-pull-picker': PullPicker;
  }
}
