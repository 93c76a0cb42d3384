import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import { MOST_PULLS } from '../../../engine/base/limits.ts';
import type { VeilOptions, VeilProposal } from '../../../engine/explore/veil/veil-types.ts';
import { demoStocks } from '../../../engine/ink/demo/demo-stocks.ts';
import { baseOf } from '../../../engine/ink/mix/mix.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import type { VeilFind, VeilProgress } from '../../../workers/api/wall-api.ts';
import '../../ui/print/picture-view.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import '../../ui/kit/progress.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import { pickStyle } from '../../ui/pick-style.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say as room } from '../../words/en/bench/room.ts';
import { say } from '../../words/en/bench/veil.ts';
import { veilStyle } from './veil-style.ts';
import { edgeContrastText, softerWords, placeWords, veilWords } from './veil-words.ts';

const HEIGHT_PX = 640;

let invented: Ink | null = null;

/** The drawer's transparent base, or an invented one that comes along with the veil. */
function baseFor(studio: Studio): Ink {
  invented ??= defined(demoStocks().find(({ role }) => role === 'base'));
  return baseOf(studio.inks) ?? invented;
}

/**
 * Proposes veils for the stack on the Bench, as pictures to choose from.
 * @fires veil CustomEvent<VeilProposal>: this one is to be put down
 */
@customElement('bench-veil-finder')
export class VeilFinder extends LitElement {
  static override styles = [controls, pickStyle, dialogStyle, veilStyle];

  @property({ attribute: false }) drawer!: Studio;
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ type: Boolean }) relative = true;
  @state() private open = false;
  @state() private chosen = 0;
  @state() private places: NonNullable<VeilOptions['places']> = 'end';
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly run = new Work<VeilFind>(this);
  private shown: VeilFind | null = null;
  /** The best so far, while more is tried or after the search was stopped. */
  @state() private soFar: VeilFind | null = null;
  /** What the proposals are for; they hold for no other stack. */
  private asked: { pulls: readonly Pull[]; drawer: Studio } | null = null;

  /** Opens the dialog and starts to look. */
  show(): void {
    this.open = true;
    void this.updateComplete.then(() => this.dialog.showModal());
    this.look();
  }

  protected override updated(): void {
    const { found } = this.run;
    if (found === this.shown) return;
    this.shown = found;
    // The button that stopped the search, and had the focus, is gone.
    if (found !== null && this.soFar !== null) this.take(found);
    if (found !== null) this.renderRoot.querySelector<HTMLElement>('.choices :checked')?.focus();
  }

  private look(): void {
    const { drawer: studio, pulls, relative, places } = this;
    this.chosen = 0;
    this.soFar = null;
    this.asked = { pulls, drawer: studio };
    if (pulls.length >= MOST_PULLS) {
      this.run.refuse(room.stackIsFull(MOST_PULLS));
      return;
    }
    const options = { base: baseFor(studio), places };
    void this.run.start(({ signal, onProgress: tell }) => {
      const onProgress = ({ share, find }: VeilProgress): void => {
        tell(share);
        if (find !== undefined && !signal.aborted) this.take(find);
      };
      return engineFor('plan').veils({ studio, pulls, options, heightPx: HEIGHT_PX, relative }, { signal, onProgress });
    });
  }

  private get find(): VeilFind | null {
    return this.run.found ?? this.soFar;
  }

  /** Shows what is best so far; the veil that was chosen stays chosen while it is among it. */
  private take(find: VeilFind): void {
    const chosen = this.soFar?.result.proposals[this.chosen];
    const same = ({ veil, at }: VeilProposal): boolean =>
      veil.screen === chosen?.veil.screen && veil.ink === chosen.veil.ink && at === chosen.at;
    this.chosen = Math.max(0, find.result.proposals.findIndex(same));
    this.soFar = find;
  }

  private close(): void {
    this.run.stop();
    this.open = false;
  }

  private submit(event: Event): void {
    event.preventDefault();
    const proposal = this.find?.result.proposals[this.chosen];
    if (proposal === undefined || this.asked?.pulls !== this.pulls || this.asked.drawer !== this.drawer) return;
    this.dialog.close();
    this.dispatchEvent(new CustomEvent<VeilProposal>('veil', { detail: proposal }));
  }

  private content() {
    const { run } = this;
    const { find } = this;
    const proposals = find?.result.proposals ?? [];
    return html`<form @submit=${this.submit}>
      <p class="small soft">${say.veilIsOneMore}</p>
      <label class="row">
        ${say.veilsMayGo}
        <select
          @change=${(event: Event) => {
            this.places = (event.target as HTMLSelectElement).value as 'end' | 'any';
            this.look();
          }}
        >
          <option value="end" ?selected=${this.places === 'end'}>${say.overAllLastDown}</option>
          <option value="any" ?selected=${this.places === 'any'}>${say.anywhereInStack}</option>
        </select>
      </label>
      ${
        run.running
          ? html`<ps-progress label=${say.lookingForVeils} words=${say.lookingForVeils2} stop=${say.stopLooking} .value=${run.progress} @stop=${() => run.stop()}></ps-progress>`
          : nothing
      }
      ${workFailure(run)}
      ${
        !run.running && run.found === null && run.failure === ''
          ? html`<div class="looking"><span role="status">${find === null ? say.stopped : say.stoppedTheseAreBest}</span><button type="button" @click=${this.look}>${say.lookAgain}</button></div>`
          : nothing
      }
      ${find === null || (run.running && proposals.length === 0) ? nothing : this.renderFound(find)}
      <div class="buttons">
        <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
        <button class="main" type="submit" ?disabled=${proposals.length === 0}>${say.addVeil}</button>
      </div>
    </form>`;
  }

  private renderFound({ result, before, after }: VeilFind) {
    const { proposals, tried } = result;
    const proposal = proposals[this.chosen];
    if (proposal === undefined) {
      return html`<p role="status">${say.ofVeilsNoneSoftens(tried)}</p>`;
    }
    const words = veilWords(proposal, this.drawer);
    const added = proposal.newInks.map(({ name }) => name);
    return html`
      <div class="both" style="--sheet-ratio:${before.widthPx} / ${before.heightPx}">
        <figure>
          <ps-picture .picture=${before} label=${say.stackBefore}></ps-picture>
          <figcaption><b>${say.before}</b><br />${say.contrastOfEdgesDeltaE(edgeContrastText(result.before.edgeContrast))}</figcaption>
        </figure>
        <figure>
          <ps-picture .picture=${after[this.chosen] ?? null} label=${say.stackWithOver(words.ink, words.area)}></ps-picture>
          <figcaption role="status">
            <b>${say.after} ${softerWords(proposal.softens)}</b><br />${say.contrastOfEdgesDeltaEMm(edgeContrastText(result.before.edgeContrast), edgeContrastText(proposal.after.edgeContrast))}
          </figcaption>
        </figure>
      </div>
      <fieldset role="radiogroup">
        <legend>${say.veilsOfTriedSoftest(proposals.length, tried.toLocaleString(numberLocale()))}</legend>
        <div class="choices">${proposals.map((each, i) => this.choice(each, entryAt(after, i), i))}</div>
      </fieldset>
      <p class="small soft">
        ${say.over(words.ink, words.area, placeWords(proposal.at, proposal.pulls.length))}
        ${added.length === 0 ? '' : say.addsToInks(added.join(say.and))}
        ${proposal.newScreen === null ? '' : say.addsScreenWholeArea(proposal.newScreen.number)}
      </p>
    `;
  }

  private choice(proposal: VeilProposal, picture: VeilFind['after'][number], i: number) {
    const { ink, area } = veilWords(proposal, this.drawer);
    const softer = softerWords(proposal.softens);
    return html`<label class="choice pick">
      <input type="radio" name="veil" aria-label=${say.overInk(ink, area, softer)} .checked=${i === this.chosen} @change=${() => (this.chosen = i)} />
      <ps-picture .picture=${picture}></ps-picture>
      <span><b>${ink}</b><span>${say.overArea(area)}</span><span class="soft">${softer}</span></span>
    </label>`;
  }

  override render() {
    return dialogBox({ heading: say.findVeil, onClose: () => this.close() }, this.open ? this.content() : nothing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-veil-finder': VeilFinder;
  }
}
