import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Problem } from '../../../engine/base/error.ts';
import { SHIFT_MM } from '../../../engine/base/limits.ts';
import { MAX_EXPLORE_PULLS } from '../../../engine/explore/settings/check.ts';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { inkChip, inkChipStyles } from '../print/print-ink-chip.ts';
import './order-count.ts';
import { nextSeed } from './seeds.ts';
import './wall-limits.ts';
import './wall-ink-limits.ts';
import './wall-offsets.ts';
import './wall-screens.ts';

/** From more pulls than this on, fewer are offered; so many then. */
const MANY_PULLS = 16;
const FEW_PULLS = 10;
const LEAST_PULLS = 4;

type NumberKey = 'count' | 'offsetRangeMm' | 'leaveOut' | 'bringIn' | 'minDeltaE';

interface NumberField {
  key: NumberKey;
  label: string;
  after: string;
  min: number;
  max: number;
  step: number;
}

/** What may change from print to print. */
@customElement('wall-settings')
export class WallSettings extends LitElement {
  static override styles = [
    controls,
    inkChipStyles,
    css`
      :host {
        display: grid;
        gap: var(--space-6);
      }
      .field {
        display: grid;
        grid-template-columns: 1fr auto 3.5em;
        align-items: center;
        gap: var(--space-4);
      }
      .field .soft {
        font-size: var(--type-small);
      }
      .field input {
        width: 4.8em;
        appearance: textfield;
      }
      .field input::-webkit-inner-spin-button {
        appearance: none;
        margin: 0;
      }
      .more {
        margin-top: calc(-1 * var(--space-4));
      }
      .more button {
        min-height: 30px;
        margin-left: var(--space-2);
      }
      .seed {
        display: grid;
        gap: var(--space-3);
      }
      .seed label {
        display: grid;
        gap: var(--space-2);
      }
      .seed input {
        width: 100%;
      }
      .seed div {
        display: grid;
        grid-template-columns: 1fr auto;
        gap: var(--space-4);
      }
      .problem {
        border-left: 3px solid var(--accent);
        padding-left: var(--space-5);
        font-size: var(--type-label);
      }
      .tick {
        min-height: 32px;
      }
      .inks {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(108px, 1fr));
        gap: var(--space-1) var(--space-4);
        margin: var(--space-1) 0 0 var(--space-9);
        padding: 0;
      }
      .inks button {
        justify-content: flex-start;
        gap: var(--space-4);
        min-height: 34px;
        padding: var(--space-1) var(--space-3) var(--space-1) var(--space-2);
        border-color: transparent;
        background: none;
        box-shadow: none;
        font-size: var(--type-label);
        overflow: hidden;
      }
      .inks button:hover {
        border-color: var(--line);
      }
      .inks button[aria-pressed='false'] {
        color: var(--ink-soft);
        text-decoration: line-through;
      }
      .inks button[aria-pressed='false'] .chip {
        opacity: 0.35;
      }
      @media (pointer: coarse) {
        .tick,
        .inks button {
          min-height: var(--touch);
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;

  @property({ attribute: false }) problems: readonly Problem[] = [];

  /** What is wrong with a field, beside it. */
  private wrong(field: string) {
    return this.problems
      .filter(({ where }) => where === field || where.startsWith(`${field}[`))
      .map(({ message }) => html`<p class="problem" role="alert">${message}</p>`);
  }

  private change(change: Partial<Omit<ExploreSettings, 'holds'>>): void {
    this.store.dispatch({ kind: 'set-explore', change });
    this.requestUpdate();
  }

  private number({ key, label, after, min, max, step }: NumberField) {
    const { explore } = this.project;
    const id = `field-${key}`;
    return html`<div class="field">
      <label for=${id}>${label}</label>
      <input
        id=${id}
        type="number"
        inputmode=${step < 1 ? 'decimal' : 'numeric'}
        min=${min}
        max=${max}
        step=${step}
        .value=${live(String(explore[key]))}
        @change=${(event: Event) => {
          const typed = (event.target as HTMLInputElement).valueAsNumber;
          if (Number.isNaN(typed)) return this.requestUpdate();
          const stepped = Math.round(Math.round(typed / step) * step * 1000) / 1000;
          return this.change({ [key]: Math.min(max, Math.max(min, stepped)) });
        }}
      />
      <span class="soft">${after}</span>
    </div>
    ${this.wrong(key)}`;
  }

  private inks() {
    const { drawer, explore } = this.project;
    const inks = printInks(drawer.inks);
    return html`<div class="inks" role="group" aria-label="Inks that the wall may use">
      ${inks.map((ink) => {
        const used = explore.palette.includes(ink.id);
        return html`<button
          type="button"
          aria-pressed=${used}
          aria-label=${ink.name}
          title="${ink.name}, over white and over black"
          @click=${() =>
            this.change({
              palette: inks.filter((other) => (other.id === ink.id ? !used : explore.palette.includes(other.id))).map((other) => other.id),
            })}
        >
          ${inkChip(ink)}<span>${ink.name}</span>
        </button>`;
      })}
    </div>`;
  }

  /** A whole drawer on the Bench makes prints of all of it, which hardly anyone pulls; here is the way to fewer. */
  private fewer() {
    const { explore, bench } = this.project;
    const least = bench.length - explore.leaveOut;
    if (explore.maxPulls !== undefined || least <= MANY_PULLS) return nothing;
    return html`<p class="more soft small">
      Each print has at least ${least} pulls.
      <button type="button" @click=${() => this.change({ maxPulls: FEW_PULLS, leaveOut: bench.length - LEAST_PULLS })}>Make it ${LEAST_PULLS} to ${FEW_PULLS}</button>
    </p>`;
  }

  override render() {
    const { explore, bench, drawer } = this.project;
    const left = drawer.screens.filter((screen) => !bench.some((pull) => pull.screen === screen.id)).length;
    return html`
      <div class="seed">
        <label for="seed">Seed</label>
        <div>
          <input
            id="seed"
            type="text"
            autocomplete="off"
            spellcheck="false"
            maxlength="80"
            .value=${live(explore.seed)}
            @change=${(event: Event) => this.change({ seed: (event.target as HTMLInputElement).value.trim() })}
          />
          <button type="button" @click=${() => this.change({ seed: nextSeed(explore.seed) })}>Another seed</button>
        </div>
      </div>
      ${this.number({ key: 'count', label: 'How many', after: 'prints', min: 1, max: 10_000, step: 1 })}
      <div>
        <h3>What may change</h3>
        <label class="tick">
          <input type="checkbox" .checked=${live(explore.order)} @change=${(event: Event) => this.change({ order: (event.target as HTMLInputElement).checked })} />
          Order of the pulls
        </label>
        ${explore.order ? html`<wall-order-count .project=${this.project} .sound=${!this.problems.some(({ where }) => /^(bench|drawer|holds|minDeltaE)/u.test(where))}></wall-order-count>` : html`<br />`}
        <label class="tick">
          <input type="checkbox" .checked=${live(explore.recolour)} @change=${(event: Event) => this.change({ recolour: (event.target as HTMLInputElement).checked })} />
          Inks
        </label>
        ${this.wrong('order')}
        ${explore.recolour || explore.bringIn > 0 ? this.inks() : nothing}
        ${this.wrong('palette')}
        <wall-ink-limits .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-ink-limits>
      </div>
      ${this.number({ key: 'offsetRangeMm', label: 'Shift up to', after: 'mm', min: SHIFT_MM.least, max: SHIFT_MM.most, step: 0.1 })}
      <wall-offsets class="more" .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-offsets>
      ${bench.length < 2 ? nothing : this.number({ key: 'leaveOut', label: 'Leave out up to', after: 'pulls', min: 0, max: Math.min(MAX_EXPLORE_PULLS, Math.max(0, bench.length - 1)), step: 1 })}
      ${this.fewer()}
      ${this.number({ key: 'bringIn', label: 'Bring in up to', after: 'screens', min: 0, max: Math.min(MAX_EXPLORE_PULLS, Math.max(explore.bringIn, left)), step: 1 })}
      <div class="more">
        <wall-screens .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-screens>
        <wall-limits .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-limits>
      </div>
      ${this.number({ key: 'minDeltaE', label: 'Same picture under', after: 'ΔE00', min: 0, max: 100, step: 0.5 })}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-settings': WallSettings;
  }
}
