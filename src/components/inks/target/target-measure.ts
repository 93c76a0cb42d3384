import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import type { Swatch } from '../../../engine/ink/film/swatch.ts';
import { expectedSwatch } from '../../../engine/ink/target/expected-swatch.ts';
import { sampleReadings } from '../../../engine/ink/target/sample-readings.ts';
import {
  type MeasuredSquare,
  measuredSquares,
  readingOf,
  type SquareReading,
  type Target,
  targetOf,
  type TargetSquare,
  targetSquares,
  withReadings,
} from '../../../engine/ink/target/target.ts';
import { readingText } from '../../../engine/ink/target/typed-colour.ts';
import { type Misread, pastedLines, typedReadings } from '../../../engine/ink/target/typed-readings.ts';
import type { Ink, Lab } from '../../../engine/ink/types.ts';
import { RoomElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import '../add/cgats-file.ts';
import { say } from '../../words/en/inks/target.ts';
import type { Measurements } from '../add/cgats-file.ts';
import { markStyles } from '../overprint/marked-swatch.ts';
import './target-photo.ts';
import { squareField } from './target-field.ts';
import { measureStyles } from './target-measure-style.ts';

/** Fields of the squares of every ink over every other: typed, from a file, or picked from a photo. */
@customElement('target-measure')
export class TargetMeasure extends RoomElement {
  static override styles = [controls, markStyles, measureStyles];

  protected readonly room = 'inks';
  /** What was typed and is no colour, by square. */
  @state() private misread: ReadonlyMap<number, Misread> = new Map();
  /** The row whose fields are there, by ink. */
  @state() private row: string | null = null;
  @state() private measurements: Measurements | null = null;
  @state() private remarks: readonly string[] = [];
  @state() private fromPhoto = false;
  private squares: TargetSquare[] = [];
  private squareNames: { of: unknown[]; list: { number: number; name: string }[] } = { of: [], list: [] };
  private rows = '';
  private expected = new Map<number, Swatch>();
  private expectedOf: unknown[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.row ??= this.target.inks[0] ?? null;
  }

  private get target(): Target {
    const { target, drawer: studio } = this.store.project;
    return targetOf(target, studio.inks);
  }

  protected override willUpdate(): void {
    const rows = this.target.inks.join();
    // Numbers stand for other squares now.
    if (rows !== this.rows) this.misread = new Map();
    this.rows = rows;
    this.squares = targetSquares(this.target.inks);
    const { drawer: studio } = this.store.project;
    const of = [studio.inks, studio.paper, this.store.relative, rows];
    if (of.every((value, i) => value === this.expectedOf[i])) return;
    this.expectedOf = of;
    this.expected = new Map(
      this.squares.map((square) => [square.number, expectedSwatch(square, studio.inks, studio, this.store.relative)]),
    );
  }

  private ink(id: string): Ink {
    return defined(this.store.project.drawer.inks.find((ink) => ink.id === id));
  }

  private name({ number, first, over }: TargetSquare): string {
    return `${number} ${over === null ? say.alone(this.ink(first).name) : say.over(this.ink(over).name, this.ink(first).name)}`;
  }

  private reading(square: TargetSquare): MeasuredSquare | undefined {
    return readingOf(this.target, square);
  }

  private save(readings: readonly SquareReading[]): void {
    if (readings.length > 0) this.store.dispatch({ kind: 'set-target', target: withReadings(this.target, readings) });
  }

  private type(entries: readonly (readonly [TargetSquare, string])[]): void {
    const { readings, misread } = typedReadings(this.target, entries);
    const typed = new Set(entries.map(([{ number }]) => number));
    this.misread = new Map([...[...this.misread].filter(([number]) => !typed.has(number)), ...misread]);
    this.save(readings);
  }

  private onPaste(event: ClipboardEvent, square: TargetSquare): void {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!text.trim().includes('\n')) return;
    event.preventDefault();
    this.type(pastedLines(text, this.squares, square.number));
  }

  /** Enter goes to the next square, as a list is typed off. */
  private async next(event: KeyboardEvent, square: TargetSquare): Promise<void> {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const input = event.target as HTMLInputElement;
    this.type([[square, input.value]]);
    if (this.misread.has(square.number)) return;
    const after = this.squares.find(({ number }) => number === square.number + 1);
    if (after === undefined) return;
    if (after.first !== this.row) this.row = after.first;
    await this.updateComplete;
    const field = this.renderRoot.querySelector<HTMLInputElement>(`input[data-square="${after.number}"]`);
    field?.focus();
    field?.select();
  }

  private take(read: Measurements): void {
    const { readings, remarks } = sampleReadings(read.samples, this.squares);
    this.measurements = read;
    this.misread = new Map();
    this.remarks = readings.length === 0 ? [say.hasNoSampleThatIs(read.fileName, this.squares.length)] : remarks;
    this.save(readings);
  }

  /** Names of the squares; the same list while they are the same. */
  private namesNow(): { number: number; name: string }[] {
    const of = [this.store.project.drawer.inks, this.rows];
    if (of.some((value, i) => value !== this.squareNames.of[i]))
      this.squareNames = { of, list: this.squares.map((square) => ({ number: square.number, name: this.name(square) })) };
    return this.squareNames.list;
  }

  private pickedSquares(picked: ReadonlyMap<number, Lab>): void {
    const readings = this.squares.flatMap((square): SquareReading[] => {
      const lab = picked.get(square.number);
      const old = this.reading(square);
      return lab === undefined || (old !== undefined && readingText(old.lab) === readingText(lab)) ? [] : [[square, { lab }]];
    });
    this.misread = new Map([...this.misread].filter(([number]) => !picked.has(number)));
    this.save(readings);
  }

  override render() {
    const measured = measuredSquares(this.target, this.squares);
    return html`
      <div class="entry">
        <div class="rows">
          <p class="small soft">${say.lAndBD50Or}</p>
          ${this.target.inks.map((id) => this.renderRow(id))}
        </div>
        <div class="file">
          <p class="small soft">${say.orReadFileWhose}</p>
          <cgats-file .measurements=${this.measurements} @read=${(event: CustomEvent<Measurements>) => this.take(event.detail)}></cgats-file>
          ${this.remarks.map((remark) => html`<p class="small" role="alert">${remark}</p>`)}
          <p class="small soft">${say.orFromPhotoWhen}</p>
          <button aria-expanded=${this.fromPhoto} @click=${() => (this.fromPhoto = !this.fromPhoto)}>${say.pickSquaresFromPhoto}</button>
        </div>
      </div>
      ${this.fromPhoto ? html`<target-photo .paper=${this.store.project.drawer.paper} .squares=${this.namesNow()} @squares=${(event: CustomEvent<ReadonlyMap<number, Lab>>) => this.pickedSquares(event.detail)}></target-photo>` : nothing}
      <p class="small soft words">${say.everySquareIsTaken}</p>
      <p class="small soft" role="status">${say.ofSquaresMeasured(measured.length, this.squares.length)}</p>
    `;
  }

  private renderRow(id: string) {
    const list = this.squares.filter(({ first }) => first === id);
    const done = list.filter((square) => this.reading(square) !== undefined).length;
    const open = this.row === id;
    return html`<section>
      <button class="quiet head" aria-expanded=${open} @click=${() => (this.row = open ? null : id)}>
        <strong>${say.first(this.ink(id).name)}</strong> <span class="soft small">${say.of(done, list.length)}</span>
      </button>
      ${open ? html`<div class="fields">${list.map((square) => this.renderField(square))}</div>` : nothing}
    </section>`;
  }

  private renderField(square: TargetSquare) {
    const { relative, project } = this.store;
    return squareField(
      {
        number: square.number,
        name: this.name(square),
        label: square.over === null ? say.alone2 : say.overIt(this.ink(square.over).name),
        reading: this.reading(square),
        misread: this.misread.get(square.number),
        expected: defined(this.expected.get(square.number)),
        white: relative ? project.drawer.paper.reflectance : undefined,
      },
      {
        change: (text) => this.type([[square, text]]),
        key: (event) => void this.next(event, square),
        paste: (event) => this.onPaste(event, square),
      },
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'target-measure': TargetMeasure;
  }
}
