import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import { controls } from '../../ui/controls-style.ts';
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
      way('drawn', 'As drawn', 'screens lie where they were drawn'),
      way('near', 'Near', 'whole screens lie a little elsewhere'),
      way('anywhere', 'Anywhere', 'whole screens lie anywhere on the sheet'),
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
      way('half', 'Half turns', 'pulls may be turned by 180°'),
      way('quarter', 'Quarter turns', 'pulls may be turned by 90°, 180° or 270°'),
      way('any', 'Any turn', 'pulls may be turned by any whole degree'),
    ];
  }

  private more(): Way[] {
    const { repeats = 0, onSheet = 1, places, turns, mirrored = false } = this.project.explore;
    const moved = places !== undefined || turns === 'quarter' || repeats > 0 || mirrored;
    const over = onSheet < 1;
    return [
      {
        picture: 'mirrored',
        label: 'Mirrored',
        title: 'films may be turned over, which makes another screen',
        on: mirrored,
        pick: { mirrored: mirrored ? undefined : true },
      },
      {
        picture: 'again',
        label: 'Pulled again',
        title: 'some screens are pulled a second time elsewhere, each a set-up more',
        on: repeats > 0,
        pick: { repeats: repeats > 0 ? undefined : REPEATS },
      },
      {
        picture: 'edge',
        label: 'Over the edge',
        title: 'screens may lie partly beside the sheet, so that its edge crops them',
        on: over,
        // By itself it would let nothing hang over.
        pick: { onSheet: over ? undefined : OVER_EDGE, ...(over || moved ? {} : { places: 'anywhere' }) },
      },
    ];
  }

  override render() {
    const { places, repeats = 0, onSheet = 1, mirrored = false } = this.project.explore;
    return html`
      ${this.row('Where screens lie', this.where())} ${this.row('Turns', this.turns())} ${this.row('How often, and how far on the sheet', this.more())}
      <div class="fields">
        ${places === 'near' ? this.number('placeMm') : this.wrong('placeMm')}
        ${repeats > 0 ? this.number('repeats') : this.wrong('repeats')} ${onSheet < 1 ? this.number('onSheet') : this.wrong('onSheet')}
        ${this.wrong('places')} ${this.wrong('turns')}
        ${this.wrong('mirrored')}
        ${mirrored ? html`<p class="soft small">Each mirrored film is a screen of its own; they stand in the Drawer after the others.</p>` : nothing}
        ${
          places === undefined
            ? nothing
            : html`<p class="soft small">What must lie as it does, such as a key or a ground, is said under What must stay.</p>`
        }
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-places': WallPlaces;
  }
}
