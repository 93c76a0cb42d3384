import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { drawdownFromPhoto, type DrawdownPhoto, type PatchRgb, type PhotoColours } from '../../engine/ink/drawdown-photo.ts';
import { controls } from '../ui/styles.ts';
import './file-well.ts';
import { averagePatch, onPhoto, patchReach, type Pixels } from './photo-patch.ts';
import { photoStyles } from './photo-styles.ts';
import { type Colours, shown } from './two-colours.ts';

type Patch = keyof DrawdownPhoto;

const PATCHES: readonly Patch[] = ['white', 'black', 'overWhite', 'overBlack'];
const PATCH_NAMES: Record<Patch, string> = {
  white: 'Card white',
  black: 'Card black',
  overWhite: 'Ink over white',
  overBlack: 'Ink over black',
};

/** Photos are read at most so wide or high; patches are averages anyway. */
const MOST_PX = 1600;
/** Pixels of the photo across the loupe, and the loupe itself. */
const LOUPE_PIXELS = 31;
const LOUPE_PX = 124;

const STEPS: Record<string, [number, number]> = { ArrowUp: [0, -1], ArrowDown: [0, 1], ArrowLeft: [-1, 0], ArrowRight: [1, 0] };

/** Picks a drawdown's four patches from a photo of its card. Sends `colours` once all four are there. */
@customElement('photo-card')
export class PhotoCard extends LitElement {
  static override styles = [controls, photoStyles];

  @state() private pixels: Pixels | null = null;
  @state() private fileName = '';
  @state() private refusal = '';
  @state() private picks: Partial<Record<Patch, { x: number; y: number; rgb: PatchRgb }>> = {};
  @state() private next: Patch = 'white';
  @state() private at: [number, number] = [0, 0];
  @query('canvas.photo') private canvas!: HTMLCanvasElement;
  @query('canvas.loupe') private loupe!: HTMLCanvasElement;
  private found: PhotoColours | null = null;
  private bitmap: ImageBitmap | null = null;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.bitmap?.close();
    this.bitmap = null;
  }

  private async take(file: File): Promise<void> {
    this.refusal = '';
    try {
      const whole = await createImageBitmap(file);
      const scale = Math.min(1, MOST_PX / Math.max(whole.width, whole.height));
      const width = Math.max(1, Math.round(whole.width * scale));
      const height = Math.max(1, Math.round(whole.height * scale));
      const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })!;
      context.drawImage(whole, 0, 0, width, height);
      whole.close();
      const image = context.getImageData(0, 0, width, height);
      const bitmap = await createImageBitmap(image);
      this.bitmap?.close();
      this.bitmap = bitmap;
      this.pixels = image;
      this.fileName = file.name;
      this.picks = {};
      this.found = null;
      this.next = 'white';
      this.at = [Math.round(width / 2), Math.round(height / 2)];
    } catch {
      this.refusal = `${file.name} cannot be read as a picture; choose a JPEG or PNG photo.`;
    }
  }

  private onPointer(event: PointerEvent, pick: boolean): void {
    const box = this.canvas.getBoundingClientRect();
    const { pixels } = this;
    if (pixels === null) return;
    this.at = onPhoto(pixels, ((event.clientX - box.left) / box.width) * pixels.width, ((event.clientY - box.top) / box.height) * pixels.height);
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

  private pick(): void {
    const { pixels } = this;
    if (pixels === null) return;
    const [x, y] = this.at;
    this.picks = { ...this.picks, [this.next]: { x, y, rgb: averagePatch(pixels, x, y, patchReach(pixels)) } };
    const left = PATCHES.find((patch) => this.picks[patch] === undefined);
    if (left !== undefined) {
      this.next = left;
      return;
    }
    const photo = Object.fromEntries(PATCHES.map((patch) => [patch, this.picks[patch]!.rgb])) as unknown as DrawdownPhoto;
    this.found = drawdownFromPhoto(photo);
    const { colours } = this.found;
    if (colours === null) return;
    const detail = { overWhite: shown(colours.overWhite), overBlack: shown(colours.overBlack) };
    this.dispatchEvent(new CustomEvent<Colours>('colours', { detail }));
  }

  protected override updated(changed: Map<string, unknown>): void {
    const { pixels, bitmap } = this;
    if (pixels === null || bitmap === null) return;
    if (changed.has('pixels')) {
      this.canvas.width = pixels.width;
      this.canvas.height = pixels.height;
      this.canvas.getContext('2d')!.drawImage(bitmap, 0, 0);
    }
    const [x, y] = this.at;
    const context = this.loupe.getContext('2d')!;
    const scale = LOUPE_PX / LOUPE_PIXELS;
    context.imageSmoothingEnabled = false;
    context.clearRect(0, 0, LOUPE_PX, LOUPE_PX);
    const corner = (LOUPE_PIXELS - 1) / 2;
    context.drawImage(bitmap, (corner - x) * scale, (corner - y) * scale, pixels.width * scale, pixels.height * scale);
    const reach = Math.min(corner, patchReach(pixels));
    const side = (2 * reach + 1) * scale;
    context.strokeStyle = '#fff';
    context.lineWidth = 3;
    context.strokeRect((corner - reach) * scale, (corner - reach) * scale, side, side);
    context.strokeStyle = '#000';
    context.lineWidth = 1;
    context.strokeRect((corner - reach) * scale, (corner - reach) * scale, side, side);
  }

  override render() {
    const { pixels } = this;
    return html`
      <file-well label=${pixels === null ? 'Choose a photo' : 'Another photo'} accept="image/*" @file=${(event: CustomEvent<File>) => void this.take(event.detail)}>
        ${pixels === null
          ? html`<p class="small soft">One stroke on a contrast card, lit evenly, without glare, with some bare white and bare black in view. The photo stays in this browser.</p>`
          : html`<p class="file small">${this.fileName}</p>`}
        ${this.refusal === '' ? nothing : html`<p slot="after" class="problem small" role="alert">${this.refusal}</p>`}
      </file-well>
      ${pixels === null ? nothing : this.renderPhoto(pixels)}
    `;
  }

  private renderPhoto(pixels: Pixels) {
    const reach = patchReach(pixels);
    const [x, y] = this.at;
    const marks = PATCHES.filter((patch) => this.picks[patch] !== undefined);
    return html`
      <div class="photo-box">
        <canvas
          class="photo"
          tabindex="0"
          role="application"
          aria-label="Photo: arrow keys move the loupe, with shift further, Enter picks ${PATCH_NAMES[this.next]}"
          @pointermove=${(event: PointerEvent) => this.onPointer(event, false)}
          @click=${(event: PointerEvent) => this.onPointer(event, true)}
          @keydown=${this.onKey}
        ></canvas>
        ${marks.map((patch) => html`<span class="mark" aria-hidden="true" style="left:${(this.picks[patch]!.x / pixels.width) * 100}%;top:${(this.picks[patch]!.y / pixels.height) * 100}%">${PATCHES.indexOf(patch) + 1}</span>`)}
        <span class="mark aim" aria-hidden="true" style="left:${(x / pixels.width) * 100}%;top:${(y / pixels.height) * 100}%"></span>
      </div>
      <div class="picking">
        <canvas class="loupe" width=${LOUPE_PX} height=${LOUPE_PX} aria-hidden="true"></canvas>
        <div class="patches" role="radiogroup" aria-label="Patch to pick">
          ${PATCHES.map((patch, i) => {
            const rgb = this.picks[patch]?.rgb;
            return html`<label>
              <input type="radio" name="patch" .checked=${this.next === patch} @change=${() => (this.next = patch)} />
              <span class="chip" style=${rgb === undefined ? '' : `background:rgb(${rgb.join()})`}></span>
              <span>${i + 1} ${PATCH_NAMES[patch]}</span>
            </label>`;
          })}
          <p class="small soft">Averages ${2 * reach + 1} × ${2 * reach + 1} px.</p>
        </div>
      </div>
      <p class="visually-hidden" role="status">${marks.length} of 4 patches picked; next ${PATCH_NAMES[this.next]}, loupe at ${x}, ${y}</p>
      ${this.found === null ? nothing : this.found.problems.map(({ message }) => html`<p class="problem small" role="alert">${message}</p>`)}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'photo-card': PhotoCard;
  }
}
