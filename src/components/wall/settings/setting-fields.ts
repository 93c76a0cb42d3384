import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { ifDefined } from 'lit/directives/if-defined.js';
import { live } from 'lit/directives/live.js';
import type { Problem } from '../../../engine/base/error.ts';
import { type NumberField, numberSetting, SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import { keptNumber } from '../../../engine/explore/settings/typed-number.ts';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import type { Project } from '../../../engine/project/types.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/fold.ts';
import type { Fold } from '../../ui/kit/fold.ts';
import { decimalSign } from '../../ui/length-unit.ts';
import { stepOnArrows, typedIn } from '../../ui/typed/typed-input.ts';
import { unlessTyped } from '../../ui/typed/unless-typed.ts';
import { say } from '../../words/en/wall/settings.ts';
import { fieldLine } from './field-line-style.ts';

type Settings = Omit<ExploreSettings, 'holds'>;
/** What a choice shows. */
interface Choices {
  label: string;
  value: string;
  /** Values with their words. */
  choices: readonly (readonly [string, string])[];
}

/** What a number field shows that the table of settings does not say. */
export interface NumberChange {
  /** Greatest that makes sense with this project. */
  most?: number;
  /** Changed with it. */
  also?: Partial<Settings>;
}

/** A fold of settings. */
interface SettingsFold {
  title: string;
  /** What is set in it, in few words; '' for nothing. */
  set: string;
  /** Of the settings that it holds. */
  fields: readonly string[];
  /** Said while nothing is set. */
  unset?: string;
}

export const moreStyles = css`
  ${fieldLine}
  :host {
    display: block;
  }
  ps-fold {
    --fold-height: 32px;
    font-size: var(--type-label);
  }
  .inside {
    display: grid;
    gap: var(--space-4);
    padding: var(--space-2) 0 var(--space-6) var(--space-7);
  }
  .field {
    font-size: var(--type-label);
  }
  .field.wide {
    grid-template-columns: minmax(0, 1fr) minmax(0, 10.5em);
  }
  .field select {
    width: 100%;
    min-width: 0;
    font-size: var(--type-label);
  }
  .tick {
    min-height: 32px;
    font-size: var(--type-label);
  }
  ul {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    align-items: center;
    gap: var(--space-4);
    font-size: var(--type-label);
  }
  li button {
    min-height: 28px;
    padding: 0 var(--space-4);
  }
  .pair {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 88px minmax(0, 1fr);
    align-items: center;
    gap: var(--space-3);
    font-size: var(--type-small);
    text-align: center;
  }
  .pair select {
    width: 100%;
    min-width: 0;
  }
  .problem {
    border-left: 3px solid var(--accent);
    padding-left: var(--space-5);
    font-size: var(--type-label);
  }
  @media (pointer: coarse) {
    .tick,
    li button {
      min-height: var(--touch);
      align-items: center;
    }
  }
`;

/** A fold of settings that most walls do without. */
export abstract class WallMore extends LitElement {
  static override styles = [controls, moreStyles];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;
  @property({ attribute: false }) problems: readonly Problem[] = [];

  protected change(change: Partial<Settings>): void {
    this.store.dispatch({ kind: 'set-explore', change });
    this.requestUpdate();
  }

  /** What is wrong with a field, beside it. */
  protected wrong(field: string) {
    return this.problems.filter(({ where }) => where === field).map(({ message }) => html`<p class="problem" role="alert">${message}</p>`);
  }

  /**
   * The fold; it stands open while something in it is wrong.
   * @param inside what it holds, drawn while it is open
   */
  protected fold({ title, set, fields, unset = say.any }: SettingsFold, inside: () => unknown): TemplateResult {
    const wrong = this.problems.some(({ where }) => fields.includes(where));
    if (wrong) this.unfolded = true;
    return html`<ps-fold
      quiet
      label=${title}
      note=${set === '' ? unset : set}
      ?strong=${set !== ''}
      ?open=${this.unfolded}
      @toggle=${(event: Event) => {
        this.unfolded = (event.target as Fold).open;
        this.requestUpdate();
      }}
    >
      ${this.unfolded ? html`<div class="inside">${inside()}</div>` : nothing}
    </ps-fold>`;
  }

  private unfolded = false;

  protected number(key: NumberField, { most, also }: NumberChange = {}) {
    const { label, unit, range, shownTimes = 1, empty = '' } = numberSetting(key);
    const value = this.project.explore[key];
    const shown = value === undefined ? '' : String(Math.round(value * shownTimes * 1000) / 1000);
    const greatest = Math.min(range.most, most ?? Infinity) * shownTimes;
    return html`<label class="field">
        <span>${label}</span>
        <input
          type="text"
          role="spinbutton"
          autocomplete="off"
          aria-label=${label}
          inputmode=${range.whole ? 'numeric' : 'decimal'}
          aria-valuemin=${range.least * shownTimes}
          aria-valuemax=${ifDefined(greatest === Infinity ? undefined : greatest)}
          aria-valuenow=${ifDefined(shown === '' ? undefined : shown)}
          @keydown=${(event: KeyboardEvent) => stepOnArrows(event, range.step * shownTimes)}
          placeholder=${empty}
          ${unlessTyped(shown.replace('.', decimalSign()))}
          @change=${(event: Event) => {
            const input = event.target as HTMLInputElement;
            const typed = typedIn(input);
            if (!input.validity.valid) return;
            if (Number.isNaN(typed)) return empty === '' ? this.requestUpdate() : this.change({ [key]: undefined });
            return this.change({ [key]: keptNumber(key, typed, most), ...also });
          }}
        />
        <span class="soft">${unit}</span>
      </label>
      ${this.wrong(key)}`;
  }

  /** A setting that is one of a few, in the table's words. */
  protected choice(key: 'offsetDirection' | 'offsetSnapMm', value: string, pick: (value: string) => void) {
    const { label, choices } = SETTINGS[key];
    const shown = choices.map(([each, text]): [string, string] => [String(each), text]);
    return this.pickOne(key, { label, value, choices: shown }, pick);
  }

  protected pickOne(key: keyof Settings, shown: Choices, pick: (value: string) => void) {
    const { label, value, choices } = shown;
    return html`<label class="field wide">
        <span>${label}</span>
        <select .value=${live(value)} @change=${(event: Event) => pick((event.target as HTMLSelectElement).value)}>
          ${choices.map(([each, text]) => html`<option value=${each} ?selected=${each === value}>${text}</option>`)}
        </select>
      </label>
      ${this.wrong(key)}`;
  }
}
