import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { LIMITS, limitText } from '../../../engine/explore/settings/limits.ts';
import { SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import { say } from '../../words/en/wall/settings.ts';
import { WallMore } from './setting-fields.ts';

type PairKey = 'apart' | 'neverOver';

/** How many inks, which of them go first or last, and which keep away from each other. */
@customElement('wall-ink-limits')
export class WallInkLimits extends WallMore {
  /** First ink chosen of a pair that is being made. */
  @state() private begun: Partial<Record<PairKey, string>> = {};

  private nameOf(id: string): string {
    return this.project.drawer.inks.find((ink) => ink.id === id)?.name ?? id;
  }

  private get inks(): [string, string][] {
    const { drawer: studio, bench, explore } = this.project;
    return studio.inks
      .filter(({ id, stock }) => stock !== true || explore.palette.includes(id) || bench.some((pull) => pull.ink === id))
      .map(({ id, name }) => [id, name]);
  }

  private known(key: PairKey): [string, string][] {
    const there = new Set(this.project.drawer.inks.map(({ id }) => id));
    return (this.project.explore[key] ?? []).filter((pair) => pair.every((id) => there.has(id)));
  }

  private set(key: PairKey, pairs: [string, string][]): void {
    this.change({ [key]: pairs.length > 0 ? pairs : undefined });
  }

  private pairs(key: PairKey, title: string, between: string, says: (a: string, b: string) => string) {
    const pairs = this.known(key);
    const first = this.begun[key] ?? '';
    const { inks } = this;
    const add = (second: string): void => {
      this.begun = { ...this.begun, [key]: '' };
      if (first === '' || second === '') return this.requestUpdate();
      if (pairs.some(([a, b]) => (a === first && b === second) || (key === 'apart' && a === second && b === first)))
        return this.requestUpdate();
      return this.set(key, [...pairs, [first, second]]);
    };
    return html`<div role="group" aria-label=${title}>
      ${
        pairs.length > 0
          ? html`<ul>
            ${pairs.map(
              (pair) => html`<li>
                <span>${says(this.nameOf(pair[0]), this.nameOf(pair[1]))}</span>
                <button class="quiet" aria-label=${say.takeAway(says(this.nameOf(pair[0]), this.nameOf(pair[1])))} @click=${() =>
                  this.set(
                    key,
                    pairs.filter((each) => each !== pair),
                  )}>✕</button>
              </li>`,
            )}
          </ul>`
          : nothing
      }
      <div class="pair">
        <select aria-label=${say.oneInk(title)} .value=${live(first)} @change=${(event: Event) => (this.begun = { ...this.begun, [key]: (event.target as HTMLSelectElement).value })}>
          <option value="">${say.anInk}</option>
          ${inks.map(([id, name]) => html`<option value=${id} ?selected=${id === first}>${name}</option>`)}
        </select>
        <span class="soft">${between}</span>
        <select aria-label=${say.otherInk(title)} ?disabled=${first === ''} .value=${live('')} @change=${(event: Event) => add((event.target as HTMLSelectElement).value)}>
          <option value="">${say.anInk2}</option>
          ${inks.filter(([id]) => id !== first).map(([id, name]) => html`<option value=${id}>${name}</option>`)}
        </select>
      </div>
      ${this.wrong(key)}
    </div>`;
  }

  private inkChoice(key: 'inkFirst' | 'inkLast', ink = '') {
    const choices: [string, string][] = [['', say.any], ...this.inks];
    return this.pickOne(key, { label: SETTINGS[key].label, value: ink, choices }, (picked) =>
      this.change({ [key]: picked === '' ? undefined : picked }),
    );
  }

  override render() {
    const { explore, drawer: studio } = this.project;
    const there = (id: string | undefined): string | undefined => studio.inks.find((ink) => ink.id === id)?.id;
    const { maxInks } = explore;
    const inkFirst = there(explore.inkFirst);
    const inkLast = there(explore.inkLast);
    const count = this.known('apart').length + this.known('neverOver').length;
    const said = [
      maxInks === undefined ? '' : LIMITS.maxInks.brief(limitText('maxInks', maxInks)),
      inkFirst === undefined ? '' : say.first(this.nameOf(inkFirst)),
      inkLast === undefined ? '' : say.last(this.nameOf(inkLast)),
      count === 0 ? '' : say.pairs(count),
    ].filter((text) => text !== '');
    return this.fold(
      { title: say.whichInkWhere, set: said.join(', '), fields: ['maxInks', 'inkFirst', 'inkLast', 'apart', 'neverOver'] },
      () => html`
      ${this.number('maxInks')}
      ${this.inkChoice('inkFirst', inkFirst)}
      ${this.inkChoice('inkLast', inkLast)}
      ${this.pairs('apart', SETTINGS.apart.label, say.neverTouches, (a, b) => say.neverTouchesA(a, b))}
      ${this.pairs('neverOver', SETTINGS.neverOver.label, say.neverOver, (a, b) => say.neverOverA(a, b))}
    `,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-ink-limits': WallInkLimits;
  }
}
