import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { numberText } from '../../../engine/base/typed-number.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed, numberLocale } from '../../../engine/words/language.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import type { DifferencePicture } from '../../../workers/api/wall-tools-api.ts';
import { engineFor, wallTools } from '../../../workers/client/client.ts';
import { RAMP, RAMP_END } from '../../../workers/jobs/difference-picture.ts';
import { controls } from '../../ui/controls-style.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import { decimalSign } from '../../ui/length-unit.ts';
import '../../ui/print/picture-view.ts';
import { stepOnArrows, typedIn } from '../../ui/typed/typed-input.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/print.ts';
import { comparePrintsStyle } from './compare-prints-style.ts';
import { MOST_COMPARED } from './held-pair.ts';
import { sideBySideStyle } from './side-by-side-style.ts';

const HEIGHT_PX = 900;
const FIRST_LIMIT = 3;

/** Two to six prints at the same size, and where each differs from the first. */
@customElement('wall-compare-prints')
export class ComparePrints extends LitElement {
  static override styles = [controls, fullDialog, sideBySideStyle, comparePrintsStyle];

  @property({ attribute: false }) relative = true;
  @state() private variants: readonly Variant[] = [];
  @state() private pictures: (Picture | undefined)[] = [];
  @state() private differences: (DifferencePicture | undefined)[] = [];
  @state() private limit = FIRST_LIMIT;
  @state() private differing = true;
  @query('dialog') private dialog!: HTMLDialogElement;
  private drawer: Studio | null = null;
  private readonly work = new Work<null>(this);

  /** Shows prints; the first is what the others are held against. */
  show(variants: readonly Variant[], studio: Studio): void {
    this.variants = variants.slice(0, MOST_COMPARED);
    this.drawer = studio;
    this.pictures = [];
    this.differences = [];
    this.dialog.showModal();
    void this.work.start(({ signal }) => this.draw(studio, signal));
  }

  /** Draws what is not drawn yet, then measures. */
  private async draw(studio: Studio, signal: AbortSignal): Promise<null> {
    const [first, ...others] = this.variants;
    if (first === undefined) return null;
    for (const [i, { pulls }] of this.variants.entries()) {
      if (this.pictures[i] !== undefined) continue;
      const drawn = await engineFor('picture').thumbnail({ studio: studio, pulls, heightPx: HEIGHT_PX, relative: this.relative });
      if (signal.aborted) return null;
      this.pictures = this.pictures.toSpliced(i, 1, drawn);
    }
    const sheet = { studio: studio, a: first.pulls, heightPx: HEIGHT_PX, overDeltaE: this.limit };
    for (const [i, other] of others.entries()) {
      const found = await wallTools().difference({ ...sheet, b: other.pulls });
      if (signal.aborted) return null;
      const next = [...this.differences];
      next[i + 1] = found;
      this.differences = next;
    }
    return null;
  }

  private setLimit(limit: number): void {
    const { drawer: studio } = this;
    if (!(limit >= 0 && limit <= 100) || studio === null) return;
    this.limit = limit;
    void this.work.start(({ signal }) => this.draw(studio, signal));
  }

  private figures(i: number) {
    const first = entryAt(this.variants, 0);
    if (i === 0) return html`<b>${say.print(first.index + 1)}</b><br /><span class="soft">${say.othersAreHeldAgainst}</span>`;
    const found = this.differences[i];
    const name = html`<b>${say.print(entryAt(this.variants, i).index + 1)}</b><br />`;
    if (found === undefined) return html`${name}<span class="soft">${say.measuring}</span>`;
    const percent = (found.share * 100).toLocaleString(numberLocale(), { maximumFractionDigits: 1 });
    return html`${name}<span class="soft">${say.deltaE00OnAverageAt(fixed(found.mean, 1), fixed(found.greatest, 0), percent, this.limit)}</span>`;
  }

  override render() {
    const { variants, differing } = this;
    // Between two there is one difference: it hangs between them.
    const beside = differing && variants.length === 2;
    const below = differing && !beside;
    const paper = this.drawer?.paper;
    const shape = paper === undefined ? '' : `--aspect:${paper.widthMm / paper.heightMm}`;
    const ramp = RAMP.map((stop) => `rgb(${stop.join(' ')})`).join(',');
    return html`<dialog aria-label=${say.comparePrints} @close=${() => {
      this.work.stop();
      this.pictures = [];
      this.differences = [];
    }}>
      <header>
        <h2>${say.printsSameSize(variants.length)}</h2>
        <label><input type="checkbox" .checked=${differing} @change=${(event: Event) => {
          this.differing = (event.target as HTMLInputElement).checked;
        }} /> ${say.differences}</label>
        ${
          differing
            ? html`<label>${say.countAreasOverDeltaE} <input class="limit" type="text" role="spinbutton" inputmode="decimal" aria-valuemin="0" aria-valuemax="100" aria-valuenow=${this.limit} .value=${numberText(this.limit, decimalSign())} @keydown=${(event: KeyboardEvent) => stepOnArrows(event, 0.5)} @change=${(event: Event) => this.setLimit(typedIn(event.target as HTMLInputElement))} /></label>
              <span class="soft small scale">${say.alikeDeltaEOrMore(html`<i class="ramp" style="background:linear-gradient(to right,${ramp})"></i>`, RAMP_END)}</span>`
            : nothing
        }
        <button @click=${() => this.dialog.close()}>${say.close}</button>
      </header>
      ${workFailure(this.work)}
      <ul>
        ${variants.map(
          (variant, i) => html`<li class=${below ? 'both' : ''}>
            <div class="hung" style=${shape}><ps-picture .picture=${this.pictures[i] ?? null} .label=${say.print(variant.index + 1)}></ps-picture></div>
            ${below ? (i === 0 ? html`<span></span>` : html`<div class="hung" style=${shape}><ps-picture .picture=${this.differences[i]?.picture ?? null} .label=${say.wherePrintDiffersFrom(variant.index + 1, entryAt(variants, 0).index + 1)}></ps-picture></div>`) : nothing}
            <p class="figures">${this.figures(i)}</p>
          </li>
          ${beside && i === 0 ? html`<li class="between"><div class="hung" style=${shape}><ps-picture .picture=${this.differences[1]?.picture ?? null} .label=${say.wherePrintDiffersFrom(entryAt(variants, 1).index + 1, entryAt(variants, 0).index + 1)}></ps-picture></div><p class="figures"><b>${say.difference}</b></p></li>` : nothing}`,
        )}
      </ul>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-compare-prints': ComparePrints;
  }
}
