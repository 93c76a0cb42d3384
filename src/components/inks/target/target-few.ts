import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { stackReflectance } from '../../../engine/ink/film/film.ts';
import { type Swatch, swatchOf } from '../../../engine/ink/film/swatch.ts';
import { filmsName, readOf, withSamples, withTyped } from '../../../engine/ink/target/few-squares.ts';
import { type FewSquare, type Target, targetOf } from '../../../engine/ink/target/target.ts';
import { FEW_SQUARES, tellingSquares } from '../../../engine/ink/target/telling-squares.ts';
import type { Misread } from '../../../engine/ink/target/typed-readings.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { missingWords } from '../../output/missing-words.ts';
import { RoomElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../add/cgats-file.ts';
import { say } from '../../words/en/inks/target.ts';
import type { Measurements } from '../add/cgats-file.ts';
import { markStyles } from '../overprint/marked-swatch.ts';
import { squareField } from './target-field.ts';
import { measureStyles } from './target-measure-style.ts';

/** The few squares that tell most: chosen, printed to be pulled, and what was read of them. */
@customElement('target-few')
export class TargetFew extends RoomElement {
  static override styles = [
    controls,
    markStyles,
    measureStyles,
    css`
      :host {
        padding-top: 0;
      }
    `,
  ];

  protected readonly room = 'inks';
  @state() private count = FEW_SQUARES;
  @state() private busy = false;
  @state() private measurements: Measurements | null = null;
  @state() private remarks: readonly string[] = [];
  @state() private misread: ReadonlyMap<number, Misread> = new Map();

  private get target(): Target {
    const { target, drawer: studio } = this.store.project;
    return targetOf(target, studio.inks);
  }

  private get inks(): Ink[] {
    return this.target.inks.flatMap((id) => this.store.project.drawer.inks.filter((ink) => ink.id === id));
  }

  private put(few: readonly FewSquare[] | undefined): void {
    const { few: _, ...target } = this.target;
    this.store.dispatch({ kind: 'set-target', target: few === undefined ? target : { ...target, few: [...few] } });
  }

  private choose(): void {
    const { paper } = this.store.project.drawer;
    this.misread = new Map();
    this.put(tellingSquares(this.inks, paper, Math.max(this.count, this.inks.length)).map((films) => ({ films })));
  }

  private swatch(films: readonly string[]): Swatch {
    const { inks, paper, surface, trapping } = this.store.project.drawer;
    const stack = films.flatMap((id) => inks.filter((ink) => ink.id === id));
    return swatchOf(stackReflectance(stack, paper.reflectance, { surface, trapping }), this.white());
  }

  private white(): readonly number[] | undefined {
    return this.store.relative ? this.store.project.drawer.paper.reflectance : undefined;
  }

  private async save(squares: readonly FewSquare[]): Promise<void> {
    this.busy = true;
    const { drawer: studio, title } = this.store.project;
    try {
      const [{ targetPdf }, { pageFonts }] = await Promise.all([import('../../output/target-pdf.ts'), import('../../ui/page-fonts.ts')]);
      const shown = squares.map(({ films }) => ({ films, hex: this.swatch(films).hex }));
      const { bytes, missing } = await targetPdf({
        squares: shown,
        inks: studio.inks,
        paper: studio.paper,
        title,
        size: 'A4',
        fonts: await pageFonts(),
      });
      download(fileNameOf(`${title} squares to pull`, 'pdf'), bytes as Uint8Array<ArrayBuffer>, 'application/pdf');
      if (missing.length > 0) this.store.tell(missingWords(missing));
    } catch (error) {
      this.store.tell(say.pdfCouldNotBe(sentenceOf(error)));
    } finally {
      this.busy = false;
    }
  }

  private type(texts: ReadonlyMap<number, string>): void {
    const { squares, misread } = withTyped(this.target.few ?? [], texts);
    this.misread = new Map([...[...this.misread].filter(([at]) => !texts.has(at)), ...misread]);
    if (squares !== this.target.few) this.put(squares);
  }

  private take(read: Measurements): void {
    const few = this.target.few ?? [];
    const { squares, read: count, remarks } = withSamples(few, read.samples);
    this.measurements = read;
    this.misread = new Map();
    this.remarks = count > 0 ? remarks : [say.hasNoSampleThat(read.fileName, few.length)];
    if (count > 0) this.put(squares);
  }

  /** Lines that are pasted go to this square and the next ones. */
  private onPaste(event: ClipboardEvent, number: number): void {
    const lines = (event.clipboardData?.getData('text/plain') ?? '').trim().split(/\r?\n/);
    if (lines.length < 2) return;
    event.preventDefault();
    this.type(new Map(lines.map((line, i) => [number + i, line])));
  }

  /** Enter goes to the next square, as a list is typed off. */
  private onKey(event: KeyboardEvent, number: number): void {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    this.type(new Map([[number, (event.target as HTMLInputElement).value]]));
    if (this.misread.has(number)) return;
    const next = this.renderRoot.querySelector<HTMLInputElement>(`input[data-square="${number + 1}"]`);
    next?.focus();
    next?.select();
  }

  override render() {
    const { few } = this.target;
    return few === undefined || few.length === 0 ? this.renderChoice() : this.renderSquares(few);
  }

  private renderChoice() {
    const inks = this.inks.length;
    const count = Math.max(this.count, inks);
    return html`<p class="small soft words">
        ${say.notEverySquareTells}
      </p>
      <div class="row">
        <ps-number label=${say.squares} min=${Math.max(2, inks)} max="60" step="1" decimals="0" whole .value=${count} @pick=${(event: NumberPick) => (this.count = event.detail)}></ps-number>
        <button class="main" ?disabled=${inks < 2} @click=${this.choose}>${say.pullThese(count)}</button>
        ${inks < 2 ? html`<span class="small soft">${say.putAtLeastTwo}</span>` : nothing}
      </div>`;
  }

  private renderSquares(few: readonly FewSquare[]) {
    const read = readOf(few).length;
    return html`<div class="row">
        <button class="main" ?disabled=${this.busy} @click=${() => void this.save(few)}>${this.busy ? say.makingPDF : say.saveAsPDF}</button>
        <button class="quiet" @click=${() => this.put(undefined)}>${say.chooseOtherSquares}</button>
        <span class="small soft" role="status">${say.ofSquaresRead(read, few.length)}</span>
      </div>
      <div class="entry">
        <div class="rows">
          <p class="small soft">${say.lAndBD50}</p>
          <div class="fields">${few.map((square, i) => this.renderField(square, i + 1))}</div>
        </div>
        <div class="file">
          <p class="small soft">${say.orReadFileWhose}</p>
          <cgats-file .measurements=${this.measurements} @read=${(event: CustomEvent<Measurements>) => this.take(event.detail)}></cgats-file>
          ${this.remarks.map((remark) => html`<p class="small" role="alert">${remark}</p>`)}
        </div>
      </div>`;
  }

  private renderField(square: FewSquare, number: number) {
    const { inks } = this.store.project.drawer;
    const name = filmsName(square.films, inks);
    return squareField(
      {
        number,
        label: name,
        name: `${number} ${name}`,
        reading: readOf([square])[0],
        misread: this.misread.get(number),
        expected: this.swatch(square.films),
        white: this.white(),
      },
      {
        change: (text) => this.type(new Map([[number, text]])),
        key: (event) => this.onKey(event, number),
        paste: (event) => this.onPaste(event, number),
      },
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'target-few': TargetFew;
  }
}
