import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { ifDefined } from 'lit/directives/if-defined.js';
import { live } from 'lit/directives/live.js';
import type { Problem } from '../../../engine/base/error.ts';
import { MOST_PULLS } from '../../../engine/base/limits.ts';
import { nextSeed } from '../../../engine/explore/settings/next-seed.ts';
import { numberSetting, SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import { keptNumber } from '../../../engine/explore/settings/typed-number.ts';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { decimalSign } from '../../ui/length-unit.ts';
import { stepOnArrows, typedIn } from '../../ui/typed/typed-input.ts';
import { unlessTyped } from '../../ui/typed/unless-typed.ts';
import { say } from '../../words/en/wall/settings.ts';
import { inkChip, inkChipStyles } from '../print/print-ink-chip.ts';
import './wall-limits.ts';
import './wall-ink-limits.ts';
import './wall-offsets.ts';
import './wall-order-range.ts';
import './wall-places.ts';
import './wall-screens.ts';
import './wall-widen.ts';
import { fewerPulls } from './fewer-pulls.ts';
import { fieldLine } from './field-line-style.ts';
import { wallSettingsStyle } from './wall-settings-style.ts';

/** What may change from print to print. */
@customElement('wall-settings')
export class WallSettings extends LitElement {
  static override styles = [controls, closeStackHost, inkChipStyles, fieldLine, wallSettingsStyle];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;

  @property({ attribute: false }) problems: readonly Problem[] = [];
  /** What stands below has a task of its own, as all at once hold the page up. */
  @state() private whole = false;

  protected override firstUpdated(): void {
    setTimeout(() => (this.whole = true));
  }

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

  /** @param most greatest that makes sense with this project */
  private number(key: 'count' | 'offsetRangeMm' | 'leaveOut' | 'bringIn' | 'minDeltaE', most?: number) {
    const { explore } = this.project;
    const { label, unit, range } = numberSetting(key);
    const id = `field-${key}`;
    const greatest = Math.min(range.most, most ?? Infinity);
    return html`<div class="field">
      <label for=${id}>${label}</label>
      <input
        id=${id}
        type="text"
        role="spinbutton"
        autocomplete="off"
        inputmode=${range.whole ? 'numeric' : 'decimal'}
        aria-valuemin=${range.least}
        aria-valuemax=${ifDefined(greatest === Infinity ? undefined : greatest)}
        aria-valuenow=${explore[key]}
        @keydown=${(event: KeyboardEvent) => stepOnArrows(event, range.step)}
        ${unlessTyped(String(explore[key]).replace('.', decimalSign()))}
        @change=${(event: Event) => {
          const input = event.target as HTMLInputElement;
          const typed = typedIn(input);
          if (!input.validity.valid) return;
          if (Number.isNaN(typed)) return this.requestUpdate();
          return this.change({ [key]: keptNumber(key, typed, most) });
        }}
      />
      <span class="soft">${unit}</span>
    </div>
    ${this.wrong(key)}`;
  }

  private inks() {
    const { drawer: studio, explore } = this.project;
    const inks = printInks(studio.inks);
    return html`<div class="inks" role="group" aria-label=${SETTINGS.palette.label}>
      ${inks.map((ink) => {
        const used = explore.palette.includes(ink.id);
        return html`<button
          type="button"
          aria-pressed=${used}
          aria-label=${ink.name}
          title=${say.overWhiteAndOver(ink.name)}
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

  /** A whole drawer on the Bench makes prints of all of it; here is the way to fewer. */
  private fewer() {
    const offer = fewerPulls(this.project.bench.length, this.project.explore);
    if (offer === null) return nothing;
    const { least, from, to, change } = offer;
    return html`<p class="more soft small">
      ${say.eachPrintHasAt(least)}
      <button type="button" @click=${() => this.change(change)}>${say.makeItTo(from, to)}</button>
    </p>`;
  }

  /** How pulls lie on the sheet. */
  private lying() {
    return html`<section aria-labelledby="lie">
        <h3 id="lie">${say.howPullsLie}</h3>
        <wall-places .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-places>
        ${this.number('offsetRangeMm')}
        <p class="soft small">${say.offsetIsHowFar}</p>
        <wall-offsets .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-offsets>
      </section>`;
  }

  override render() {
    const { explore } = this.project;
    return html`
      <div class="seed">
        <label for="seed">${SETTINGS.seed.label}</label>
        <div>
          <input
            id="seed"
            type="text"
            autocomplete="off"
            spellcheck="false"
            maxlength="80"
            ${unlessTyped(explore.seed)}
            @change=${(event: Event) => this.change({ seed: (event.target as HTMLInputElement).value.trim() })}
          />
          <button type="button" @click=${() => this.change({ seed: nextSeed(explore.seed) })}>${say.anotherWall}</button>
        </div>
        <p class="soft small">${say.sameNameAndSettings}</p>
      </div>
      ${this.number('count')}
      ${this.lying()}
      ${this.whole ? this.changes() : nothing}
    `;
  }

  /** What else may change. */
  private changes() {
    const { explore, bench, drawer: studio } = this.project;
    const left = studio.screens.filter((screen) => !bench.some((pull) => pull.screen === screen.id)).length;
    return html`
      <div>
        <h3>${say.whatMayChange}</h3>
        <label class="tick">
          <input type="checkbox" .checked=${live(explore.order)} @change=${(event: Event) => this.change({ order: (event.target as HTMLInputElement).checked })} />
          ${SETTINGS.order.label}
        </label>
        ${
          explore.order
            ? html`<wall-order-count .project=${this.project} .sound=${!this.problems.some(({ where }) => /^(bench|drawer|holds|minDeltaE)/u.test(where))}></wall-order-count>
          <wall-order-range .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-order-range>`
            : html`<br />`
        }
        <label class="tick">
          <input type="checkbox" .checked=${live(explore.recolour)} @change=${(event: Event) => this.change({ recolour: (event.target as HTMLInputElement).checked })} />
          ${SETTINGS.recolour.label}
        </label>
        ${this.wrong('order')}
        ${explore.recolour || explore.bringIn > 0 ? this.inks() : nothing}
        ${this.wrong('palette')}
        <wall-ink-limits .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-ink-limits>
      </div>
      ${bench.length < 2 ? nothing : this.number('leaveOut', Math.min(MOST_PULLS, Math.max(0, bench.length - 1)))}
      ${this.fewer()}
      ${this.number('bringIn', Math.min(MOST_PULLS, Math.max(explore.bringIn, left)))}
      <div class="more">
        <wall-screens .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-screens>
        <wall-limits .store=${this.store} .project=${this.project} .problems=${this.problems}></wall-limits>
      </div>
      <div>${this.number('minDeltaE')}
        <p class="soft small">${say.deltaE00IsDifferenceBetween}</p>
        <wall-widen .store=${this.store} .project=${this.project}></wall-widen>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-settings': WallSettings;
  }
}
