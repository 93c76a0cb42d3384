import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { Picture } from '../../../workers/api/picture-api.ts';

/** Puts a picture on a canvas, which takes its size. */
export function putPicture(canvas: HTMLCanvasElement, picture: Picture): void {
  if (canvas.width !== picture.widthPx) canvas.width = picture.widthPx;
  if (canvas.height !== picture.heightPx) canvas.height = picture.heightPx;
  canvas.getContext('2d')?.putImageData(new ImageData(picture.pixels, picture.widthPx, picture.heightPx), 0, 0);
}

/** Shows a picture from a worker as it is, scaled by CSS. */
@customElement('ps-picture')
export class PictureView extends LitElement {
  static override styles = css`
    :host {
      display: block;
      line-height: 0;
    }
    canvas {
      display: block;
      width: 100%;
      height: auto;
      background: var(--picture-ground, var(--sheet));
    }
  `;

  @property({ attribute: false }) picture: Picture | null = null;
  /** What a screen reader says; '' where the picture stands beside words that say it. */
  @property() label = '';
  @query('canvas') private canvas!: HTMLCanvasElement;

  override render() {
    const told = this.label !== '';
    return html`<canvas role=${told ? 'img' : nothing} aria-label=${told ? this.label : nothing} aria-hidden=${told ? nothing : 'true'}></canvas>`;
  }

  override updated(): void {
    if (this.picture !== null) putPicture(this.canvas, this.picture);
    // What was shown is not of what is asked for now.
    else this.canvas.getContext('2d')?.clearRect(0, 0, this.canvas.width, this.canvas.height);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-picture': PictureView;
  }
}
