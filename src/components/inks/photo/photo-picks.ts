import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { defined } from '../../../engine/base/at.ts';
import type { PatchRgb } from '../../../engine/ink/characterise/drawdown-photo.ts';
import { averagePatch, onPhoto, patchReach, type Pixels } from '../../../engine/ink/characterise/photo-patch.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import '../add/file-well.ts';
import { controls } from '../../ui/controls-style.ts';
import { FileReading } from '../../ui/files/file-reading.ts';
import { say } from '../../words/en/inks/photo.ts';
import { photoStyles } from './photo-style.ts';

/** A place on a photo that is to be picked. */
export interface PhotoPatch {
  key: string;
  name: string;
}

/** What was picked so far, by key; empty for a new photo. */
export type PhotoPicks = ReadonlyMap<string, PatchRgb>;

/** Of more patches than this a list to choose from replaces one button each. */
const MOST_RADIOS = 6;

/** Pixels of the photo across the loupe, and the loupe itself. */
const LOUPE_PIXELS = 31;
const LOUPE_PX = 124;

const STEPS: Record<string, [number, number]> = { ArrowUp: [0, -1], ArrowDown: [0, 1], ArrowLeft: [-1, 0], ArrowRight: [1, 0] };

/** Picks patches from a photo with a loupe, one after the other. Sends `picks` with all of them after each. */
@customElement('photo-picks')
export class PhotoPicker extends LitElement {
  static override styles = [controls, photoStyles];

  /** In the order in which they are picked. */
  @property({ attribute: false }) patches: readonly PhotoPatch[] = [];
  /** What a good photo shows. */
  @property() hint = '';
  @state() private pixels: Pixels | null = null;
  @state() private fileName = '';
  @state() private refusal = '';
  @state() private picks: ReadonlyMap<string, { x: number; y: number; rgb: PatchRgb }> = new Map();
  @state() private wanted = '';
  @state() private at: [number, number] = [0, 0];
  @query('canvas.photo') private canvas!: HTMLCanvasElement;
  @query('canvas.loupe') private loupe!: HTMLCanvasElement;
  private bitmap: ImageBitmap | null = null;
  private readonly file = new FileReading(this);

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.bitmap?.close();
    this.bitmap = null;
  }

  private async take(file: File): Promise<void> {
    this.refusal = '';
    try {
      const { pixels, problems } = await this.file.read('photo', file);
      if (pixels === null) {
        this.refusal = problems[0]?.message ?? '';
        return;
      }
      const { width, height } = pixels;
      const image = new ImageData(new Uint8ClampedArray(pixels.data), width, height);
      const bitmap = await createImageBitmap(image);
      this.bitmap?.close();
      this.bitmap = bitmap;
      this.pixels = image;
      this.fileName = file.name;
      this.picks = new Map();
      this.wanted = '';
      this.send();
      this.at = [Math.round(width / 2), Math.round(height / 2)];
    } catch (error) {
      this.refusal = sentenceOf(error);
    }
  }

  private onPointer(event: PointerEvent, pick: boolean): void {
    const box = this.canvas.getBoundingClientRect();
    const { pixels } = this;
    if (pixels === null) return;
    this.at = onPhoto(
      pixels,
      ((event.clientX - box.left) / box.width) * pixels.width,
      ((event.clientY - box.top) / box.height) * pixels.height,
    );
    if (pick) this.pick();
  }

  private onKey(event: KeyboardEvent): void {
    const { pixels } = this;
    if (pixels === null) return;
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      this.pick();
      return;
    }
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const far = event.shiftKey ? 10 * patchReach(pixels) : patchReach(pixels);
    this.at = onPhoto(pixels, this.at[0] + step[0] * far, this.at[1] + step[1] * far);
  }

  /** The patch that is picked next: the one chosen, else the first that is left. */
  private get next(): PhotoPatch | undefined {
    return this.patches.find(({ key }) => key === this.wanted) ?? this.patches.find(({ key }) => !this.picks.has(key)) ?? this.patches[0];
  }

  private pick(): void {
    const { pixels, next } = this;
    if (pixels === null || next === undefined) return;
    const [x, y] = this.at;
    this.picks = new Map([...this.picks, [next.key, { x, y, rgb: averagePatch(pixels, x, y, patchReach(pixels)) }]]);
    // Goes on from here, so that squares can be left out.
    const at = this.patches.indexOf(next);
    const left = [...this.patches.slice(at + 1), ...this.patches].find(({ key }) => !this.picks.has(key));
    this.wanted = left?.key ?? next.key;
    this.send();
  }

  private send(): void {
    const there = new Set(this.patches.map(({ key }) => key));
    const detail: PhotoPicks = new Map([...this.picks].filter(([key]) => there.has(key)).map(([key, { rgb }]) => [key, rgb]));
    this.dispatchEvent(new CustomEvent<PhotoPicks>('picks', { detail }));
  }

  protected override updated(changed: Map<string, unknown>): void {
    const { pixels, bitmap } = this;
    if (pixels === null || bitmap === null) return;
    if (changed.has('pixels')) {
      this.canvas.width = pixels.width;
      this.canvas.height = pixels.height;
      defined(this.canvas.getContext('2d')).drawImage(bitmap, 0, 0);
    }
    const [x, y] = this.at;
    const context = defined(this.loupe.getContext('2d'));
    const scale = LOUPE_PX / LOUPE_PIXELS;
    context.imageSmoothingEnabled = false;
    context.clearRect(0, 0, LOUPE_PX, LOUPE_PX);
    const corner = (LOUPE_PIXELS - 1) / 2;
    context.drawImage(bitmap, (corner - x) * scale, (corner - y) * scale, pixels.width * scale, pixels.height * scale);
    const reach = Math.min(corner, patchReach(pixels));
    const side = (2 * reach + 1) * scale;
    const colours = getComputedStyle(this);
    context.strokeStyle = colours.getPropertyValue('--white');
    context.lineWidth = 3;
    context.strokeRect((corner - reach) * scale, (corner - reach) * scale, side, side);
    context.strokeStyle = colours.getPropertyValue('--black');
    context.lineWidth = 1;
    context.strokeRect((corner - reach) * scale, (corner - reach) * scale, side, side);
  }

  override render() {
    const { pixels } = this;
    return html`
      <file-well label=${pixels === null ? say.choosePhoto : say.anotherPhoto} accept="image/*" @file=${(event: CustomEvent<File>) => void this.take(event.detail)}>
        ${
          pixels === null
            ? html`<p class="small soft">${say.photoStaysInThis(this.hint)}</p>`
            : html`<p class="file small">${this.fileName}</p>`
        }
        ${this.refusal === '' ? nothing : html`<p slot="after" class="problem small" role="alert">${this.refusal}</p>`}
      </file-well>
      ${this.file.line()}
      ${pixels === null ? nothing : this.renderPhoto(pixels)}
    `;
  }

  private renderPhoto(pixels: Pixels) {
    const reach = patchReach(pixels);
    const [x, y] = this.at;
    const { next } = this;
    const marks = this.patches.flatMap((patch, i) =>
      this.picks.has(patch.key) ? [{ ...defined(this.picks.get(patch.key)), number: i + 1 }] : [],
    );
    const many = this.patches.length > MOST_RADIOS;
    return html`
      <div class="shot ${many ? 'many' : ''}">
        <div class="photo-box">
          <canvas
            class="photo"
            tabindex="0"
            role="application"
            aria-label=${say.photoArrowKeysMove(next?.name ?? '')}
            @pointermove=${(event: PointerEvent) => this.onPointer(event, false)}
            @click=${(event: PointerEvent) => this.onPointer(event, true)}
            @keydown=${this.onKey}
          ></canvas>
          ${marks.map(({ x: left, y: top, number }) => html`<span class="mark ${many ? 'dot' : ''}" aria-hidden="true" style="left:${(left / pixels.width) * 100}%;top:${(top / pixels.height) * 100}%">${many ? '' : number}</span>`)}
          <span class="mark aim" aria-hidden="true" style="left:${(x / pixels.width) * 100}%;top:${(y / pixels.height) * 100}%"></span>
        </div>
        <div class="picking">
          <canvas class="loupe" width=${LOUPE_PX} height=${LOUPE_PX} aria-hidden="true"></canvas>
          <div class="patches" role=${many ? nothing : 'radiogroup'} aria-label=${many ? nothing : say.patchToPick}>
            ${many ? this.renderSelect() : this.renderRadios()}
            <p class="small soft">${say.averagesPx(2 * reach + 1)}</p>
          </div>
        </div>
      </div>
      <p class="visually-hidden" role="status">${say.ofPatchesPickedNext({ marks: marks.length, patches: this.patches.length, name: next?.name ?? '', x, y })}</p>
    `;
  }

  private renderRadios() {
    return this.patches.map(({ key, name }, i) => {
      const rgb = this.picks.get(key)?.rgb;
      return html`<label>
        <input type="radio" name="patch" .checked=${this.next?.key === key} @change=${() => (this.wanted = key)} />
        <span class="chip" style=${rgb === undefined ? '' : `background:rgb(${rgb.join()})`}></span>
        <span>${i + 1} ${name}</span>
      </label>`;
    });
  }

  private renderSelect() {
    const rgb = this.picks.get(this.next?.key ?? '')?.rgb;
    return html`<label class="one">
        <span class="small soft">${say.tapMiddleOf}</span>
        <select .value=${live(this.next?.key ?? '')} @change=${(event: Event) => (this.wanted = (event.target as HTMLSelectElement).value)}>
          ${this.patches.map(({ key, name }) => html`<option value=${key} ?selected=${key === this.next?.key}>${name}${this.picks.has(key) ? ' ✓' : ''}</option>`)}
        </select>
      </label>
      <p class="small">${rgb === undefined ? '' : html`<span class="chip" style="display:inline-block;background:rgb(${rgb.join()})"></span> `}${say.ofPicked(this.picks.size, this.patches.length)}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'photo-picks': PhotoPicker;
  }
}
