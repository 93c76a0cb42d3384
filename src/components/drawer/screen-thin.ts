import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { roundTo } from '../../engine/base/units.ts';
import { leastLine, PAPER_LEAST_MM } from '../../engine/output/thin/least-line.ts';
import type { ThinFound, ThinPlace } from '../../engine/output/thin/thin-places.ts';
import type { Screen } from '../../engine/shapes/types.ts';
import { fixed } from '../../engine/words/language.ts';
import { findThinPlaces } from '../../workers/client/stencils.ts';
import { StoreElement } from '../store-element.ts';
import '../ui/kit/fold.ts';
import '../ui/kit/number-field.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/progress.ts';
import type { NumberPick } from '../ui/kit/number-field.ts';
import { workFailure } from '../ui/work-failure.ts';
import { Work } from '../ui/work.ts';
import { say } from '../words/en/drawer/room.ts';

/** Rows of the list; the picture has them all. */
const MOST_ROWS = 12;
/** What may be asked for, mm. */
const ASKED_MM = { least: 0.02, most: 10 };

/** Thin places to be shown on the sheet, and which of them is pointed out. */
export interface ThinShown {
  places: readonly ThinPlace[];
  chosen: ThinPlace | null;
}

/**
 * Lines and gaps of a screen that are narrower than its mesh prints.
 * @fires thin CustomEvent<ThinShown>
 */
@customElement('drawer-screen-thin')
export class ScreenThin extends StoreElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      .inside {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-4);
        padding-bottom: var(--space-4);
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li button {
        width: 100%;
        justify-content: start;
        margin-left: calc(-1 * var(--space-4));
      }
    `,
  ];

  @property({ attribute: false }) screen!: Screen;
  /** As typed; null takes what the mesh surely prints. */
  @state() private asked: number | null = null;
  @state() private chosen: ThinPlace | null = null;
  private sought = '';
  private readonly looking = new Work<ThinFound>(this, { found: () => this.show(null), failed: () => this.show(null) });

  private get leastMm(): number {
    return this.asked ?? roundTo(leastLine(this.screen.mesh).safeMm, 2);
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    const before = changed.get('screen') as Screen | undefined;
    if (before !== undefined && before.id !== this.screen.id) this.asked = null;
    const { screen, leastMm } = this;
    const used = new Set(screen.placed.map(({ shape }) => shape));
    const shapes = this.store.project.drawer.shapes.filter(({ id }) => used.has(id));
    // Shapes are values: one that was drawn anew has other corners.
    const key = JSON.stringify([
      screen.id,
      screen.placed,
      leastMm,
      shapes.map(({ id, rings }) => [id, rings.length, rings[0]?.length, rings[0]?.[0]]),
    ]);
    if (key === this.sought) return;
    this.sought = key;
    this.show(null, []);
    this.looking.follow((control) => findThinPlaces({ screen, shapes, asked: { lineMm: leastMm, gapMm: leastMm } }, control));
  }

  private show(chosen: ThinPlace | null, places = this.looking.found?.places ?? []): void {
    this.chosen = chosen;
    this.dispatchEvent(new CustomEvent<ThinShown>('thin', { detail: { places, chosen } }));
  }

  private row(place: ThinPlace) {
    const { kind, widthMm, box } = place;
    const long = Math.max(box.widthMm, box.heightMm);
    const words = say.lineOfMmMm({
      kindIsLine: kind === 'line',
      widthMm: fixed(widthMm, 2),
      roundTo: roundTo(long, 1),
      roundTo2: roundTo(box.xMm + box.widthMm / 2, 0),
      roundTo3: roundTo(box.yMm + box.heightMm / 2, 0),
    });
    return html`<li>
      <button class="quiet small" aria-pressed=${this.chosen === place} @click=${() => this.show(this.chosen === place ? null : place)}>${words}</button>
    </li>`;
  }

  private list() {
    const { found } = this.looking;
    if (found === null) return nothing;
    const { places, lines, gaps } = found;
    if (places.length === 0) return html`<p class="small">${say.noLineAndNo(this.leastMm)}</p>`;
    const more = lines + gaps - Math.min(MOST_ROWS, places.length);
    return html`<p class="small">${say.redOnSheetLines(lines, gaps)}</p>
      <ul aria-label=${say.thinPlaces}>
        ${places.slice(0, MOST_ROWS).map((place) => this.row(place))}
      </ul>
      ${more > 0 ? html`<p class="soft small">${say.andShorter(more)}</p>` : nothing}`;
  }

  private note(): string {
    const { found, running } = this.looking;
    if (running) return say.looking;
    if (found === null) return '';
    return found.lines + found.gaps === 0 ? say.none : say.linesGaps(found.lines, found.gaps);
  }

  override render() {
    const { holdsMm, safeMm } = leastLine(this.screen.mesh);
    const { running, found } = this.looking;
    return html`<ps-fold label=${say.thinPlaces} .note=${this.note()} ?strong=${found !== null && found.lines + found.gaps > 0}>
      <div class="inside">
        <ps-number label=${say.linesAndGapsUnder} unit="mm" step="0.05" .min=${ASKED_MM.least} .max=${ASKED_MM.most} .value=${this.leastMm} @pick=${({ detail }: NumberPick) => (this.asked = detail)}></ps-number>
        <p class="soft small">
          ${say.thisMeshHoldsMm(fixed(holdsMm, 2), fixed(safeMm, 2), PAPER_LEAST_MM.line, PAPER_LEAST_MM.gap)}
        </p>
        ${running ? html`<ps-progress label=${say.lookingForThinPlaces} words=${say.looking2} .value=${null} @stop=${() => this.looking.stop()}></ps-progress>` : this.list()}
        ${workFailure(this.looking)}
      </div>
    </ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-screen-thin': ScreenThin;
  }
}
