import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { live } from 'lit/directives/live.js';
import type { Problem } from '../../engine/base/error.ts';
import type { Hold } from '../../engine/explore/types.ts';
import type { Project } from '../../engine/project/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { AppStore } from '../app-store.ts';
import { controls } from '../ui/styles.ts';
import { choiceOf, holdsOf, withHold, withoutHold } from './hold-menu.ts';
import { inkChip, inkChipStyles } from './ink-chip.ts';

const CHOICES: readonly (readonly [string, string])[] = [
  ['free', 'free'],
  ['first', 'first down'],
  ['last', 'last down'],
  ['place', 'keeps its place'],
  ['ink', 'keeps its ink'],
  ['out', 'left out'],
];

/** The stack that the wall starts from, and what of it may not change. */
@customElement('wall-holds')
export class WallHolds extends LitElement {
  static override styles = [
    controls,
    inkChipStyles,
    css`
      :host {
        display: block;
      }
      ol {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li {
        padding: 3px 0;
      }
      .pull {
        display: grid;
        grid-template-columns: 1.9em 22px minmax(0, 1fr) 116px;
        align-items: center;
        gap: 8px;
      }
      .number {
        color: var(--ink-soft);
        text-align: right;
      }
      .name {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      li[data-out] .name {
        text-decoration: line-through;
        color: var(--ink-soft);
      }
      select {
        width: 100%;
        border-color: transparent;
        background: none;
        color: var(--ink-soft);
        font-size: 13.5px;
        padding: 4px 2px;
        text-overflow: ellipsis;
      }
      select:hover {
        border-color: var(--line);
      }
      select[data-held] {
        color: var(--ink);
        font-weight: 600;
      }
      select[data-bad] {
        border-color: var(--accent);
      }
      .more {
        display: flex;
        flex-wrap: wrap;
        gap: 0 8px;
        padding-left: calc(1.9em + 38px);
        font-size: 13px;
        font-weight: 600;
      }
      .more button {
        min-height: 28px;
        padding: 0 6px;
        font-size: 13px;
      }
      .problem {
        border-left: 3px solid var(--accent);
        padding: 4px 0 4px 10px;
        margin: 8px 0;
        font-size: 14px;
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;
  @property({ attribute: false }) problems: readonly Problem[] = [];

  private nameOf(pull: Pull): string {
    return this.project.drawer.screens.find((screen) => screen.id === pull.screen)?.name ?? pull.screen;
  }

  private label(hold: Hold): string {
    if (hold.kind !== 'before') return CHOICES.find(([choice]) => choice === hold.kind)?.[1] ?? hold.kind;
    const then = this.project.bench.findIndex((pull) => pull.id === hold.then);
    return `before ${then + 1}`;
  }

  private set(holds: Hold[]): void {
    this.store.dispatch({ kind: 'set-holds', holds });
  }

  private row(pull: Pull, position: number) {
    const { bench, explore, drawer } = this.project;
    const holds = holdsOf(explore.holds, pull.id);
    const shown = holds[0];
    const choice = shown === undefined ? 'free' : choiceOf(shown);
    const name = this.nameOf(pull);
    const ink = drawer.inks.find((entry) => entry.id === pull.ink);
    const bad = this.problems.some(({ where }) => holds.includes(explore.holds[Number(/^holds\[(\d+)\]$/.exec(where)?.[1])]!));
    return html`<li ?data-out=${choice === 'out'}>
      <div class="pull">
        <span class="number">${position + 1}</span>
        ${inkChip(ink)}
        <span class="name" title="${name} in ${ink?.name ?? pull.ink}">${name}</span>
        <select
          aria-label="Hold on pull ${position + 1}, ${name}"
          ?data-held=${shown !== undefined}
          ?data-bad=${bad}
          aria-invalid=${bad}
          .value=${live(choice)}
          @change=${(event: Event) => {
            this.set(withHold(explore.holds, pull.id, (event.target as HTMLSelectElement).value));
            // An entry that adds to a hold on the place leaves that one in the menu.
            this.requestUpdate();
          }}
        >
          ${CHOICES.map(([value, text]) => html`<option value=${value} ?selected=${value === choice}>${text}</option>`)}
          <optgroup label="goes down before…">
            ${bench.map((then, i) =>
              then.id === pull.id
                ? nothing
                : html`<option value="before:${then.id}" ?selected=${`before:${then.id}` === choice}>
                    before ${i + 1} ${this.nameOf(then)}
                  </option>`,
            )}
          </optgroup>
        </select>
      </div>
      ${holds.length > 1
        ? html`<div class="more">
            ${holds.slice(1).map(
              (hold) => html`<span>
                ${this.label(hold)}<button
                  class="quiet"
                  aria-label="Lift “${this.label(hold)}” from pull ${position + 1}"
                  @click=${() => this.set(withoutHold(explore.holds, hold))}
                >
                  ✕
                </button>
              </span>`,
            )}
          </div>`
        : nothing}
    </li>`;
  }

  override render() {
    const { bench } = this.project;
    const rows = bench.map((pull, position) => ({ pull, position })).reverse();
    return html`
      <div role="alert">${this.problems.filter(({ code }) => code.startsWith('hold.')).map((problem) => html`<p class="problem">${problem.message}</p>`)}</div>
      <ol aria-label="Pulls of the Bench's stack, last down on top">
        ${repeat(
          rows,
          ({ pull }) => pull.id,
          ({ pull, position }) => this.row(pull, position),
        )}
      </ol>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-holds': WallHolds;
  }
}
