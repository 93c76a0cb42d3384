import { html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { ringArea, shapeBounds } from '../../../engine/geometry/rings.ts';
import { PLATE_MM, type PlateAsked, type PlatesFound } from '../../../engine/output/plate/plates.ts';
import { ringPath } from '../../../engine/output/svg-text.ts';
import { layPlates } from '../../../workers/client/stencils.ts';
import '../cautions.ts';
import { say } from '../../words/en/ui/films.ts';
import { controls } from '../controls-style.ts';
import '../kit/choice.ts';
import { download, fileNameOf } from '../download.ts';
import { dialogStyle } from '../kit/dialog-style.ts';
import '../kit/number-field.ts';
import { dialogBox } from '../kit/dialog.ts';
import '../kit/progress.ts';
import type { NumberPick } from '../kit/number-field.ts';
import { workFailure } from '../work-failure.ts';
import { Work } from '../work.ts';
import type { FilmOffer } from './film-offers.ts';
import { filmsStyle } from './films-style.ts';
import { pager } from './pager.ts';
import { screenTicks, usualTicks } from './screen-ticks.ts';

const KINDS = [
  { value: 'relief', label: say.plateToPrintFrom },
  { value: 'stencil', label: say.stencilToCut },
] as const;

const USUAL: PlateAsked = {
  kind: 'relief',
  kerfMm: PLATE_MM.kerf.usual,
  sheetWidthMm: PLATE_MM.side.usual,
  sheetHeightMm: 400,
  gapMm: PLATE_MM.gap.usual,
  bridgeMm: PLATE_MM.bridge.usual,
  leastMm: PLATE_MM.least.usual,
};

/** The number of a piece's screen, in the middle of it; a hole has none. */
function pieceNumber(ring: Float64Array, key: string, sizeMm: number) {
  if (ringArea(ring) < 0) return nothing;
  const { xMm, yMm, widthMm, heightMm } = shapeBounds([ring]);
  return svg`<text x=${xMm + widthMm / 2} y=${yMm + heightMm / 2} font-size=${sizeMm} text-anchor="middle" dominant-baseline="middle">${key}</text>`;
}

/** The shapes of screens as contours to cut: a button, and behind it what is asked, with a picture of each sheet. */
@customElement('ps-plates')
export class Plates extends LitElement {
  static override styles = [controls, dialogStyle, filmsStyle];

  /** The screens that there are, asked for when the dialog opens. */
  @property({ attribute: false }) offers!: () => FilmOffer[];
  /** Ids of those that are ticked at first; those to make, or else all, when left out. */
  @property({ attribute: false }) first: readonly string[] | null = null;
  @property() label = say.plates;
  /** The project's title. */
  @property() heading = '';
  @state() private asked = USUAL;
  @state() private all: readonly FilmOffer[] = [];
  @state() private ticked: ReadonlySet<string> = new Set();
  @state() private sheet = 0;
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly work = new Work<PlatesFound>(this);

  private open(): void {
    this.all = this.offers();
    this.ticked = this.first === null ? usualTicks(this.all) : new Set(this.first);
    this.dialog.showModal();
    this.lay();
  }

  private change(change: Partial<PlateAsked>): void {
    this.asked = { ...this.asked, ...change };
    this.lay();
  }

  private get chosen(): FilmOffer[] {
    return this.all.filter(({ id }) => this.ticked.has(id));
  }

  private tick(ids: ReadonlySet<string>): void {
    this.ticked = ids;
    this.lay();
  }

  private lay(): void {
    const { asked } = this;
    const films = this.chosen.map(({ key, screen, shapes, paper }) => ({ key, screen, shapes, paper }));
    this.sheet = 0;
    if (films.length === 0) return this.clear();
    void this.work.start((control) => layPlates(films, asked, control));
  }

  private clear(): void {
    this.work.clear();
    this.requestUpdate();
  }

  private async save(event: Event): Promise<void> {
    event.preventDefault();
    const { found } = this.work;
    if (found === null) return;
    const { platesZip } = await import('../../output/films/plates-zip.ts');
    const what = this.asked.kind === 'relief' ? 'plate' : 'stencil';
    const [only, ...more] = this.chosen;
    const which = only === undefined || more.length > 0 ? `${what}s` : `${what} ${only.key} ${only.screen.name}`;
    const name = fileNameOf(`${this.heading} ${which}`, 'zip');
    download(name, platesZip(found) as Uint8Array<ArrayBuffer>, 'application/zip');
    this.dialog.close();
  }

  private number(
    name: Exclude<keyof PlateAsked, 'kind' | 'together'>,
    label: string,
    { least, most }: { least: number; most: number },
    step = 0.1,
  ) {
    return html`<ps-number .label=${label} unit="mm" .step=${step} .min=${least} .max=${most} .value=${this.asked[name]} @pick=${({ detail }: NumberPick) => this.change({ [name]: detail })}></ps-number>`;
  }

  private fields() {
    const relief = this.asked.kind === 'relief';
    return html`<ps-choice label=${say.whatIsCut} .options=${KINDS} .value=${this.asked.kind} @pick=${({ detail }: CustomEvent<string>) => this.change({ kind: detail as PlateAsked['kind'] })}></ps-choice>
      <p class="soft small">
        ${relief ? say.whatPrintsIsCut : say.whatPrintsIsCutOut}
      </p>
      ${
        relief
          ? html`${this.chosen.length < 2 ? nothing : this.togetherBox()}
          <div class="fields">
            ${this.number('sheetWidthMm', say.sheetWidth, PLATE_MM.side, 1)} ${this.number('sheetHeightMm', say.height, PLATE_MM.side, 1)}
            ${this.number('gapMm', say.betweenPieces, PLATE_MM.gap)}
          </div>`
          : nothing
      }
      <div class="fields">
        ${this.number('kerfMm', say.kerf, PLATE_MM.kerf, 0.05)} ${relief ? nothing : this.number('bridgeMm', say.bridges, PLATE_MM.bridge)}
        ${this.number('leastMm', say.leastFeature, PLATE_MM.least)}
      </div>
      <p class="soft small">${say.cutTakesKerfAway}</p>
      <ps-cautions topic="cutting"></ps-cautions>`;
  }

  private togetherBox() {
    return html`<label
        ><input type="checkbox" .checked=${this.asked.together === true} @change=${(event: Event) => this.change({ together: (event.target as HTMLInputElement).checked })} />${say.piecesOfSeveralScreens}</label
      >
      <p class="soft small">${say.eachContourKeepsIts}</p>`;
  }

  private picture({ sheets }: PlatesFound) {
    const { widthMm, heightMm, rings, name, screens } = entryAt(sheets, this.sheet);
    return svg`<svg viewBox="0 0 ${widthMm} ${heightMm}" role="img" aria-label=${name}>
      <rect width=${widthMm} height=${heightMm} />
      <path class="line" d=${rings.map((ring) => ringPath(ring, 2)).join('')} stroke-width=${Math.max(widthMm, heightMm) / 500} />
      ${screens === undefined ? nothing : rings.map((ring, i) => pieceNumber(ring, screens[i] ?? '', Math.max(widthMm, heightMm) / 40))}
    </svg>`;
  }

  private said({ pieces, islands, bridges, narrow }: PlatesFound): string {
    const relief = this.asked.kind === 'relief';
    const parts = [
      relief ? say.pieces(pieces) : say.openings(pieces),
      relief ? '' : islands === 0 ? say.nothingFallsOut : say.islandsHeldByBridges(islands, bridges),
      narrow === 0 ? '' : say.placesNarrowerThanMm(narrow, this.asked.leastMm),
    ];
    return parts.filter((part) => part !== '').join('; ');
  }

  private shown() {
    const { found, running } = this.work;
    const sheets = found?.sheets ?? [];
    const sheet = sheets[this.sheet];
    const size = sheet === undefined ? '' : `${roundTo(sheet.widthMm, 1)} × ${roundTo(sheet.heightMm, 1)} mm`;
    const words = sheets.length > 1 ? say.sheetOf(this.sheet + 1, sheets.length, size) : size;
    return html`<div class="sheet">${found === null ? html`<span class="soft">${running ? say.layingItOut : say.nothingToCut}</span>` : this.picture(found)}</div>
      ${pager({ page: this.sheet, pages: sheets.length, words, what: say.sheet, turn: (at) => (this.sheet = at) })}
      ${found === null ? nothing : html`<p class="small" role="status">${this.said(found)}.</p>`}
      ${running ? html`<ps-progress label=${say.layingOutContours} .value=${null} @stop=${() => this.work.stop()}></ps-progress>` : nothing} ${workFailure(this.work)}`;
  }

  override render() {
    return html`<button type="button" @click=${() => this.open()}>${this.label}</button>
      ${dialogBox(
        { heading: say.platesAndStencilsTo, closable: true, onClose: () => this.work.stop() },
        html`<form @submit=${(event: Event) => void this.save(event)}>
          <div class="asked">
            ${screenTicks({ all: this.all, ticked: this.ticked, label: say.screensThatAreCut, tick: (ids) => this.tick(ids) })} ${this.fields()}
          </div>
          <div class="shown">${this.shown()}</div>
          <div class="foot buttons">
            <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
            <button class="main" ?disabled=${this.work.found === null}>${say.saveSVGAndDXF}</button>
          </div>
        </form>`,
      )}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-plates': Plates;
  }
}
