import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/settings.ts';
import { placePicture, type PlacePicture } from './place-pictures.ts';
import { moreStyles, WallMore } from './setting-fields.ts';

/** Of what hangs over the edge so much stays on the sheet, where nothing else is said. */
const OVER_EDGE = 0.7;
const REPEATS = 2;

/** A way in which pulls may lie, as a button with its picture. */
interface Way {
  picture: PlacePicture;
  label: string;
  /** Said in full where a pointer rests, and to those who hear the page. */
  title: string;
  on: boolean;
  pick: Partial<ExploreSettings>;
}

/** How pulls may lie on the sheet, in pictures: where their screens lie, how they turn, how often and how far on it. */
@customElement('wall-places')
export class WallPlaces extends WallMore {
  static override styles = [
    controls,
    moreStyles,
    css`
      .ways {
        display: grid;
        grid-template-columns: repeat(3, minmax(0, 1fr));
        gap: var(--space-3);
        margin-top: var(--space-3);
      }
      .ways button {
        display: grid;
        justify-items: center;
        align-content: start;
        gap: var(--space-1);
        min-height: var(--touch);
        padding: var(--space-3) var(--space-1) var(--space-2);
        font-size: var(--type-small);
        line-height: 1.2;
      }
      .ways svg {
        height: 52px;
        overflow: visible;
      }
      .fields {
        display: grid;
        gap: var(--space-4);
        margin: var(--space-5) 0;
      }
      p {
        margin: 0;
      }
    `,
  ];

  /** A row of ways; of the first rows one holds at a time. */
  private row(label: string, ways: readonly Way[]) {
    return html`<div class="ways" role="group" aria-label=${label}>
      ${ways.map(
        ({ picture, label: text, title, on, pick }) => html`<button
          type="button"
          title=${title}
          aria-label="${text}: ${title}"
          aria-pressed=${on}
          @click=${() => this.change(pick)}
        >
          ${placePicture(picture)}<span>${text}</span>
        </button>`,
      )}
    </div>`;
  }

  private where(): Way[] {
    const { places = 'drawn' } = this.project.explore;
    const way = (value: 'drawn' | 'near' | 'anywhere', label: string, title: string): Way => ({
      picture: value,
      label,
      title,
      on: places === value,
      pick: { places: value === 'drawn' ? undefined : value },
    });
    return [
      way('drawn', say.asDrawn, say.screensLieWhereThey),
      way('near', say.near, say.wholeScreensLieLittle),
      way('anywhere', say.anywhere, say.wholeScreensLieAnywhere),
    ];
  }

  private turns(): Way[] {
    const { turns = 'none' } = this.project.explore;
    const way = (value: 'half' | 'quarter' | 'any', label: string, title: string): Way => ({
      picture: value,
      label,
      title,
      on: turns === value,
      pick: { turns: turns === value ? undefined : value },
    });
    return [
      way('half', say.halfTurns, say.pullsMayBeTurned),
      way('quarter', say.quarterTurns, say.pullsMayBeTurnedBy),
      way('any', say.anyTurn, say.pullsMayBeTurnedByAny),
    ];
  }

  private more(): Way[] {
    const { repeats = 0, onSheet = 1, places, turns, mirrored = false } = this.project.explore;
    const moved = places !== undefined || turns === 'quarter' || repeats > 0 || mirrored;
    const over = onSheet < 1;
    return [
      {
        picture: 'mirrored',
        label: say.mirrored,
        title: say.filmsMayBeTurned,
        on: mirrored,
        pick: { mirrored: mirrored ? undefined : true },
      },
      {
        picture: 'again',
        label: say.pulledAgain,
        title: say.someScreensArePulled,
        on: repeats > 0,
        pick: { repeats: repeats > 0 ? undefined : REPEATS },
      },
      {
        picture: 'edge',
        label: say.overEdge,
        title: say.screensMayLiePartly,
        on: over,
        // By itself it would let nothing hang over.
        pick: { onSheet: over ? undefined : OVER_EDGE, ...(over || moved ? {} : { places: 'anywhere' }) },
      },
    ];
  }

  override render() {
    const { places, repeats = 0, onSheet = 1, mirrored = false } = this.project.explore;
    return html`
      ${this.row(say.whereScreensLie, this.where())} ${this.row(say.turns, this.turns())} ${this.row(say.howOftenAndHow, this.more())}
      <div class="fields">
        ${places === 'near' ? this.number('placeMm') : this.wrong('placeMm')}
        ${repeats > 0 ? this.number('repeats') : this.wrong('repeats')} ${onSheet < 1 ? this.number('onSheet') : this.wrong('onSheet')}
        ${this.wrong('places')} ${this.wrong('turns')}
        ${this.wrong('mirrored')}
        ${mirrored ? html`<p class="soft small">${say.eachMirroredFilmIs}</p>` : nothing}
        ${places === undefined ? nothing : html`<p class="soft small">${say.whatMustLieAs}</p>`}
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-places': WallPlaces;
  }
}
