import { html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { OFFSET_MM } from '../../../engine/base/limits.ts';
import { rangesText } from '../../../engine/base/words.ts';
import type { PullChange } from '../../../engine/project/commands/bench.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { pickStyle } from '../../ui/pick-style.ts';
import { say } from '../../words/en/bench/many.ts';
import { inkPick } from '../pull/ink-pick.ts';
import { pullPanelStyle } from '../pull/pull-panel-style.ts';

const MAX_STROKES = 9;

/**
 * What can be done to several pulls together, each thing a step that one undo takes back.
 * @fires pull-change CustomEvent<PullChange>
 * @fires pull-further CustomEvent<{ dxMm: number; dyMm: number }>: further than each lies
 * @fires pull-place CustomEvent<number>: the place that the first of them shall have, first down 0
 * @fires pull-remove Event
 * @fires pull-one Event: only the one of them that was chosen last is to stay selected
 */
@customElement('bench-many-panel')
export class ManyPanel extends LitElement {
  static override styles = [controls, pickStyle, pullPanelStyle];

  /** The whole stack, and the ids of it that are selected, first down first. */
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) ids: readonly string[] = [];
  @property({ attribute: false }) drawer!: Studio;
  @state() private dxMm = 0;
  @state() private dyMm = 0;

  private tell<T>(name: string, detail?: T): void {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }

  /** What all of them have alike; null where they differ. */
  private common<K extends keyof Pull>(chosen: readonly Pull[], field: K): Pull[K] | null {
    const [first] = chosen;
    return first !== undefined && chosen.every((pull) => pull[field] === first[field]) ? first[field] : null;
  }

  private shift() {
    const mm = (field: 'dxMm' | 'dyMm', label: string) => html`<ps-number
      live
      label=${label}
      unit="mm"
      .value=${this[field]}
      .min=${OFFSET_MM.least}
      .max=${OFFSET_MM.most}
      .step=${0.1}
      @pick=${(event: NumberPick) => (this[field] = event.detail)}
    ></ps-number>`;
    const { dxMm, dyMm } = this;
    return html`<div class="pair" role="group" aria-label=${say.moveOnSheet}>
      ${mm('dxMm', say.furtherRight)} ${mm('dyMm', say.furtherDown)}
      <button ?disabled=${dxMm === 0 && dyMm === 0} @click=${() => this.tell('pull-further', { dxMm, dyMm })}>${say.moveThem}</button>
    </div>`;
  }

  override render() {
    const { pulls, ids, drawer: studio } = this;
    const places = pulls.flatMap(({ id }, at) => (ids.includes(id) ? [at] : []));
    const chosen = places.map((at) => entryAt(pulls, at));
    const first = places[0] ?? 0;
    const strokes = this.common(chosen, 'strokes');
    const last = pulls.length - ids.length;
    return html`<div class="head">
        <div>
          <p class="soft small">${say.pullsOf(rangesText(places.map((at) => at + 1)), pulls.length)}</p>
          <h3>${say.pullsSelected(ids.length)}</h3>
        </div>
        <button class="quiet" @click=${() => this.tell('pull-one')}>${say.onlyOne}</button>
      </div>
      ${inkPick(studio.inks, this.common(chosen, 'ink'), (ink) => this.tell<PullChange>('pull-change', { ink }))} ${this.shift()}
      <ps-number
        label=${strokes === null ? say.strokesNowDifferent : say.strokes}
        whole
        .value=${strokes ?? 0}
        .min=${1}
        .max=${MAX_STROKES}
        @pick=${(event: NumberPick) => this.tell<PullChange>('pull-change', { strokes: event.detail })}
      ></ps-number>
      <div class="order">
        <button aria-disabled=${first === 0} @click=${() => first > 0 && this.tell('pull-place', first - 1)}>${say.earlier}</button>
        <button aria-disabled=${first >= last} @click=${() => first < last && this.tell('pull-place', first + 1)}>${say.later}</button>
        <ps-number
          label=${say.firstOfThemTo}
          whole
          .value=${first + 1}
          .min=${1}
          .max=${last + 1}
          @pick=${(event: NumberPick) => this.tell('pull-place', event.detail - 1)}
        ></ps-number>
        <button class="remove" @click=${() => this.tell('pull-remove')}>${say.remove(ids.length)}</button>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-many-panel': ManyPanel;
  }
}
