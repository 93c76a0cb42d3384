import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { type Grey, greyOf } from '../../../engine/shapes/trace/grey.ts';
import type { Traced, TraceSettings } from '../../../engine/shapes/trace/trace.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { tracePicture } from '../../../workers/client/stencils.ts';
import { controls } from '../../ui/controls-style.ts';
import { FileReading } from '../../ui/files/file-reading.ts';
import '../../ui/kit/choice.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/drawer/trace.ts';
import { drawGrey, drawMeasure, drawTraced, lengthOf, type Measure, shownScale } from './trace-picture.ts';
import { traceStyle } from './trace-style.ts';

/** How long the longer side of a picture is taken to be at first, mm. */
const FIRST_LONGEST_MM = 300;
const LONGEST_MM = 5000;

const FIRST: Omit<TraceSettings, 'widthMm'> = { threshold: null, lightIsInk: false, evenLight: true, speckMm2: 1, errorMm: 0.1 };

const SHOWN = [
  { value: 'outlines', label: say.asShape },
  { value: 'picture', label: say.thePicture },
];

/** Shown lines of fewer pixels are slips of the finger. */
const SLIP_PX = 8;

/**
 * Makes shapes of pictures, one after the other.
 * @fires traced CustomEvent<Traced>: a shape was made
 */
@customElement('drawer-trace')
export class TraceDialog extends LitElement {
  static override styles = [controls, dialogStyle, traceStyle];

  @state() private file: File | null = null;
  @state() private grey: Grey | null = null;
  @state() private settings: TraceSettings = { ...FIRST, widthMm: FIRST_LONGEST_MM };
  @state() private shown = 'outlines';
  @state() private measure: Measure | null = null;
  @state() private refusal = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('canvas') private canvas!: HTMLCanvasElement | null;
  private waiting: File[] = [];
  private readonly reading = new FileReading(this);
  private readonly tracing = new Work<Traced>(this, { found: () => void this.draw() });

  /** Asks how each of some pictures is to be traced. */
  async take(files: readonly File[]): Promise<void> {
    this.waiting.push(...files);
    if (this.file === null) await this.next();
  }

  private async next(): Promise<void> {
    const file = this.waiting.shift() ?? null;
    this.tracing.clear();
    [this.file, this.grey, this.measure, this.refusal, this.shown] = [file, null, null, '', 'outlines'];
    if (file === null) return this.dialog.close();
    await this.updateComplete;
    if (!this.dialog.open) this.dialog.showModal();
    try {
      const { pixels, problems } = await this.reading.read('picture', file);
      if (this.file !== file) return;
      if (pixels === null) return void (this.refusal = problems[0]?.message ?? '');
      this.grey = greyOf(pixels);
      const { width, height } = pixels;
      this.settings = { ...FIRST, widthMm: roundTo((FIRST_LONGEST_MM * width) / Math.max(width, height), 1) };
      this.trace();
    } catch (error) {
      if (this.file === file) this.refusal = sentenceOf(error);
    }
  }

  private onClose = (): void => {
    this.waiting = [];
    this.reading.stop();
    this.tracing.clear();
    [this.file, this.grey] = [null, null];
  };

  private set(part: Partial<TraceSettings>): void {
    this.settings = { ...this.settings, ...part };
    this.trace();
  }

  private trace(): void {
    const { grey, file, settings } = this;
    if (grey === null || file === null) return;
    this.tracing.follow((control) => tracePicture({ grey, name: file.name, settings }, control));
  }

  private async draw(): Promise<void> {
    await this.updateComplete;
    const { canvas, grey, measure } = this;
    const { found } = this.tracing;
    if (canvas === null || grey === null) return;
    const scale = shownScale(grey);
    if (this.shown === 'outlines' && found !== null) drawTraced(canvas, found, scale);
    else await drawGrey(canvas, grey);
    if (this.shown === 'picture' && measure !== null) drawMeasure(canvas, measure, scale);
  }

  private at(event: PointerEvent): [number, number] {
    const { canvas, grey } = this;
    const box = canvas?.getBoundingClientRect();
    if (box === undefined || grey === null) return [0, 0];
    return [((event.clientX - box.left) / box.width) * grey.width, ((event.clientY - box.top) / box.height) * grey.height];
  }

  private onDown(event: PointerEvent): void {
    if (this.shown !== 'picture') return;
    this.canvas?.setPointerCapture(event.pointerId);
    const [x, y] = this.at(event);
    this.measure = { fromX: x, fromY: y, toX: x, toY: y };
  }

  private onMove(event: PointerEvent): void {
    if (this.measure === null || event.buttons === 0 || this.shown !== 'picture') return;
    const [toX, toY] = this.at(event);
    this.measure = { ...this.measure, toX, toY };
    void this.draw();
  }

  private onUp(): void {
    if (this.measure !== null && this.grey !== null && lengthOf(this.measure) * shownScale(this.grey) < SLIP_PX) this.measure = null;
    void this.draw();
  }

  private make(): void {
    const { found } = this.tracing;
    if (found === null || found.shape === null) return;
    this.dispatchEvent(new CustomEvent<Traced>('traced', { detail: found }));
    void this.next();
  }

  private told(): string {
    const { found, running, failure } = this.tracing;
    if (failure !== '') return failure;
    if (found === null) return running ? say.tracing : '';
    if (found.shape === null) return found.problems[0]?.message ?? '';
    const { pieces, holes, corners, specks, pixelMm } = found;
    const { widthMm, heightMm } = found.shape;
    return say.mmPiecesHolesCorners({
      roundTo: roundTo(widthMm, 1),
      roundTo2: roundTo(heightMm, 1),
      pieces,
      holes,
      corners,
      specks,
      roundTo3: roundTo(pixelMm, 2),
      roundTo4: roundTo(this.settings.errorMm + pixelMm / 2, 2),
    });
  }

  private renderSettings(grey: Grey) {
    const { settings, measure } = this;
    const { found } = this.tracing;
    const threshold = settings.threshold ?? found?.threshold ?? 128;
    return html`<div class="settings">
      <ps-choice
        label=${say.inkIs}
        .value=${settings.lightIsInk ? 'light' : 'dark'}
        .options=${[
          { value: 'dark', label: say.darkIsInk },
          { value: 'light', label: say.lightIsInk },
        ]}
        @pick=${(event: CustomEvent<string>) => this.set({ lightIsInk: event.detail === 'light' })}
      ></ps-choice>
      <label class="stacked"
        >${say.thresholdWhereDarkAnd(settings.threshold === null)}
        <input
          type="range"
          min="1"
          max="255"
          aria-valuetext=${say.ofWhite(Math.round((100 * threshold) / 255))}
          .value=${String(threshold)}
          @input=${(event: Event) => this.set({ threshold: Number((event.target as HTMLInputElement).value) })}
        />
      </label>
      ${settings.threshold === null ? nothing : html`<button @click=${() => this.set({ threshold: null })}>${say.whereDarkAndLight}</button>`}
      <label><input type="checkbox" .checked=${settings.evenLight} @change=${(event: Event) => this.set({ evenLight: (event.target as HTMLInputElement).checked })} /> ${say.evenOutLightOn}</label>
      <ps-number label=${say.leaveOutSpecksUnder} unit="mm²" .value=${settings.speckMm2} .min=${0} .max=${10_000} .step=${0.5} @pick=${(event: NumberPick) => this.set({ speckMm2: event.detail })}></ps-number>
      <ps-number label=${say.outlinesMayStrayBy} unit="mm" .value=${settings.errorMm} .min=${0} .max=${5} .step=${0.05} .decimals=${2} @pick=${(event: NumberPick) => this.set({ errorMm: event.detail })}></ps-number>
      <ps-number label=${say.widthOfWholePicture} unit="mm" .value=${settings.widthMm} .min=${1} .max=${LONGEST_MM} @pick=${(event: NumberPick) => this.set({ widthMm: event.detail })}></ps-number>
      ${
        measure === null
          ? html`<p class="small soft">${say.orShowPictureDraw}</p>`
          : html`<ps-number
              label=${say.lineOnPictureIs}
              unit="mm"
              .value=${roundTo((lengthOf(measure) * settings.widthMm) / grey.width, 1)}
              .min=${0.1}
              .max=${LONGEST_MM}
              @pick=${(event: NumberPick) => this.set({ widthMm: roundTo(Math.min(LONGEST_MM, Math.max(1, (event.detail * grey.width) / lengthOf(measure))), 2) })}
            ></ps-number>`
      }
    </div>`;
  }

  private renderPicture(grey: Grey) {
    const scale = shownScale(grey);
    return html`<div class="shown">
      <ps-choice label=${say.shown} .options=${SHOWN} .value=${this.shown} @pick=${(event: CustomEvent<string>) => {
        this.shown = event.detail;
        void this.draw();
      }}></ps-choice>
      <div class="picture">
        <canvas
          width=${Math.round(grey.width * scale)}
          height=${Math.round(grey.height * scale)}
          role="img"
          aria-label=${this.shown === 'picture' ? say.thePicture : say.pictureAsShape}
          ?data-measuring=${this.shown === 'picture'}
          @pointerdown=${this.onDown}
          @pointermove=${this.onMove}
          @pointerup=${this.onUp}
          @pointercancel=${this.onUp}
        ></canvas>
      </div>
      <p class="small" role="status">${this.told()}</p>
    </div>`;
  }

  override render() {
    const { grey, file, waiting } = this;
    const made = this.tracing.found?.shape ?? null;
    return dialogBox(
      {
        heading: say.tracePicture,
        beside: file === null ? nothing : html`<small class="soft">${file.name}</small>`,
        closable: true,
        onClose: this.onClose,
      },
      html`${this.refusal === '' ? nothing : html`<p role="alert">${this.refusal}</p>`}
        ${this.reading.line()}
        ${grey === null ? nothing : html`<div class="tracing">${this.renderPicture(grey)} ${this.renderSettings(grey)}</div>`}
        <div class="buttons">
          <button @click=${() => void this.next()}>${waiting.length > 0 ? say.leaveItOut : say.cancel}</button>
          <button class="main" ?disabled=${made === null || this.tracing.running} @click=${this.make}>${say.makeShapeOfIt}</button>
        </div>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawer-trace': TraceDialog;
  }
}
