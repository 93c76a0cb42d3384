import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import { FRAME_SIDE_MM } from '../../engine/base/limits.ts';
import { roundTo } from '../../engine/base/units.ts';
import { type FrameSize, type FrameState, frameState, withFrame, withInside } from '../../engine/explore/prepare/frames.ts';
import { shapeBounds } from '../../engine/geometry/rings.ts';
import { readsWrong, USUAL_LIE } from '../../engine/output/film/ways.ts';
import { isMirrored } from '../../engine/shapes/place/mirrored.ts';
import { placedOutlines } from '../../engine/shapes/place/placed.ts';
import type { Screen } from '../../engine/shapes/types.ts';
import { emulsionMl, FRAME_MARGIN_MM } from '../../engine/visit/stencils/frames.ts';
import { StoreElement } from '../store-element.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/number-field.ts';
import type { NumberPick } from '../ui/kit/number-field.ts';
import { closeStackHost } from '../ui/layout-style.ts';
import { say } from '../words/en/drawer/room.ts';

/** A larger number on a frame is taken for a slip. */
const MOST_NUMBER = 99_999;
/** How a screen may stand, in words. */
const STATES: readonly (readonly [FrameState, string])[] = [
  ['drawn', say.drawnNotMade],
  ['to make', say.toMake],
  ['film made', say.filmMadeToExpose],
  ['made', say.madeExposedReadyTo],
  ['reclaimed', say.reclaimed],
];

/** A screen as a thing: how it stands, its frame and what that prints, and its emulsion. */
@customElement('drawer-screen-frame')
export class ScreenFrame extends StoreElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      .fields {
        display: grid;
        grid-template-columns: repeat(2, minmax(0, 1fr));
        gap: var(--space-5) var(--space-6);
        align-items: end;
      }
      .problem {
        color: var(--accent);
      }
      .quiet {
        justify-self: start;
        margin-left: calc(-1 * var(--space-4));
      }
    `,
  ];

  @property({ attribute: false }) screen!: Screen;

  /** How often a number was refused: its field begins anew with the number that counts. */
  @state() private refused = 0;

  /** Sides of the box that holds what is on the screen, mm; null when nothing is. */
  private image(): FrameSize | null {
    const rings = placedOutlines(this.screen, this.store.project.drawer.shapes).flatMap((outline) => outline.rings);
    return rings.length === 0 ? null : shapeBounds(rings);
  }

  private setInside(size: FrameSize | null): void {
    this.store.dispatch({ kind: 'set-frames', frames: withInside(this.store.project.frames, this.screen.id, size) });
  }

  private setNumber(number: number): void {
    if (!this.store.dispatch({ kind: 'change-screen', screen: this.screen.id, number })) this.refused++;
  }

  private setState(state: FrameState): void {
    this.store.dispatch({ kind: 'set-frames', frames: withFrame(this.store.project.frames, this.screen.id, state) });
  }

  /** What a frame must be inside for an image, in whole centimetres. */
  private least(image: FrameSize): FrameSize {
    const side = (mm: number): number => Math.min(FRAME_SIDE_MM.most, 10 * Math.ceil((mm + 2 * FRAME_MARGIN_MM) / 10));
    return { widthMm: side(image.widthMm), heightMm: side(image.heightMm) };
  }

  private frame(image: FrameSize | null) {
    const inside = this.store.project.frames?.inside?.[this.screen.id];
    if (inside === undefined) {
      if (image === null) return nothing;
      const least = this.least(image);
      return html`<p class="soft small">
          ${say.itsImageIsMm({ roundTo: roundTo(image.widthMm, 0), roundTo2: roundTo(image.heightMm, 0), widthMm: least.widthMm, heightMm: least.heightMm, frameMarginMm: FRAME_MARGIN_MM })}
        </p>
        <button class="quiet" @click=${() => this.setInside(least)}>${say.sayWhichFrameIt}</button>`;
    }
    const area = { widthMm: inside.widthMm - 2 * FRAME_MARGIN_MM, heightMm: inside.heightMm - 2 * FRAME_MARGIN_MM };
    const fits = image === null || (image.widthMm <= area.widthMm && image.heightMm <= area.heightMm);
    const side = (name: keyof FrameSize, label: string) =>
      html`<ps-number .label=${label} unit="mm" .min=${FRAME_SIDE_MM.least} .max=${FRAME_SIDE_MM.most} .value=${inside[name]} @pick=${({ detail }: NumberPick) => this.setInside({ ...inside, [name]: detail })}></ps-number>`;
    return html`<div class="fields">${side('widthMm', say.frameInsideWidth)} ${side('heightMm', say.height)}</div>
      <p class="soft small">
        ${
          Math.min(area.widthMm, area.heightMm) > 0
            ? say.imageAreaMmWith(roundTo(area.widthMm, 0), roundTo(area.heightMm, 0), FRAME_MARGIN_MM)
            : say.tooSmallToPrint(FRAME_MARGIN_MM)
        }
      </p>
      ${
        fits || image === null
          ? nothing
          : html`<p class="problem small" role="alert">
            ${say.itsImageIsMmAnd(roundTo(image.widthMm, 0), roundTo(image.heightMm, 0))}
          </p>`
      }
      <button class="quiet" @click=${() => this.setInside(null)}>${say.forgetFrame}</button>`;
  }

  override render() {
    const image = this.image();
    const lie = this.store.project.films ?? USUAL_LIE;
    const now = frameState(this.screen.id, this.store.project.frames);
    return html`<h3>${say.frame}</h3>
      <div class="row">
        <label for="frame">${say.screenIs}</label>
        <select id="frame" @change=${(event: Event) => this.setState((event.target as HTMLSelectElement).value as FrameState)}>
          ${STATES.map(([value, text]) => html`<option value=${value} .selected=${value === now}>${text}</option>`)}
        </select>
      </div>
      ${keyed(
        this.refused,
        html`<ps-number label=${say.numberOnIt} whole .min=${1} .max=${MOST_NUMBER} .value=${this.screen.number} @pick=${({ detail }: NumberPick) => this.setNumber(detail)}></ps-number>`,
      )}
      ${this.frame(image)}
      ${
        image === null
          ? nothing
          : html`<p class="soft small">
            ${say.emulsionAboutMLFrom({ ceil: Math.ceil(emulsionMl({ imageWidthMm: image.widthMm, imageHeightMm: image.heightMm })), sideIsPaper: lie.side === 'paper', printedIsAgainst: lie.printed === 'against', readsWrong: readsWrong(lie), isMirrored: isMirrored(this.screen) })}
          </p>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-screen-frame': ScreenFrame;
  }
}
