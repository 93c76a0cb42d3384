import { css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import { isAtHand } from '../../../engine/explore/prepare/frames.ts';
import { SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/settings.ts';
import { moreStyles, WallMore } from './setting-fields.ts';

/** Which screens every print has, and which none. */
@customElement('wall-screens')
export class WallScreens extends WallMore {
  static override styles = [
    controls,
    moreStyles,
    css`
      ul {
        max-height: 320px;
        overflow: auto;
      }
      li select {
        border-color: transparent;
        background: none;
        color: var(--ink-soft);
        font-size: var(--type-small);
      }
      li select[data-set] {
        color: var(--ink);
        font-weight: 600;
      }
      .name {
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
      }
    `,
  ];

  private put(screen: string, condition: string): void {
    const { mustScreens = [], notScreens = [] } = this.project.explore;
    const others = (ids: readonly string[]): string[] => ids.filter((id) => id !== screen);
    const must = condition === 'must' ? [...others(mustScreens), screen] : others(mustScreens);
    const not = condition === 'not' ? [...others(notScreens), screen] : others(notScreens);
    this.change({ mustScreens: must.length > 0 ? must : undefined, notScreens: not.length > 0 ? not : undefined });
  }

  override render() {
    const { drawer: studio, explore } = this.project;
    const conditionOf = (id: string): string =>
      explore.mustScreens?.includes(id) === true ? 'must' : explore.notScreens?.includes(id) === true ? 'not' : 'may';
    const conditions = studio.screens.map(({ id }) => conditionOf(id));
    const [must, not] = ['must', 'not'].map((condition) => conditions.filter((each) => each === condition).length);
    const { onlyAtHand = false } = explore;
    const there = studio.screens.filter(({ id }) => isAtHand(id, this.project.frames)).length;
    const said = [
      onlyAtHand ? say.atHand : '',
      defined(must) > 0 ? say.must(must ?? '') : '',
      defined(not) > 0 ? say.mustNot(not ?? '') : '',
    ]
      .filter((text) => text !== '')
      .join(', ');
    return this.fold(
      { title: say.whichScreens, set: said, fields: ['mustScreens', 'notScreens', 'onlyAtHand'] },
      () => html`
      <label class="tick">
        <input type="checkbox" .checked=${live(onlyAtHand)} @change=${(event: Event) => this.change({ onlyAtHand: (event.target as HTMLInputElement).checked || undefined })} />
        ${SETTINGS.onlyAtHand.label}
      </label>
      <p class="soft small">${there === 0 ? say.noScreenIsMade : say.ofScreensAreAt(there, studio.screens.length)}</p>
      ${this.wrong('mustScreens')}${this.wrong('notScreens')}
      <ul aria-label=${say.screensOfDrawer}>
        ${studio.screens.map((screen, i) => {
          // Where none is at hand, all may be there.
          const gone = onlyAtHand && there > 0 && !isAtHand(screen.id, this.project.frames);
          return html`<li>
            <span class="name" title=${screen.name}>${screen.number} ${screen.name}</span>
            <select
              aria-label=${say.screen(screen.number, screen.name)}
              ?data-set=${conditions[i] !== 'may'}
              ?disabled=${gone}
              .value=${live(gone ? 'may' : entryAt(conditions, i))}
              @change=${(event: Event) => this.put(screen.id, (event.target as HTMLSelectElement).value)}
            >
              ${[
                ['may', gone ? say.notAtHand : say.mayBeThere],
                ['must', SETTINGS.mustScreens.label],
                ['not', SETTINGS.notScreens.label],
              ].map(([value, text]) => html`<option value=${defined(value)} ?selected=${value === conditions[i]}>${text}</option>`)}
            </select>
          </li>`;
        })}
      </ul>
    `,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-screens': WallScreens;
  }
}
