import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { STROKES } from '../../../engine/base/limits.ts';
import { deltaE2000 } from '../../../engine/colour/delta-e.ts';
import { labD50 } from '../../../engine/colour/lab.ts';
import { labUnderLamp } from '../../../engine/colour/lamp-light.ts';
import { expectedError } from '../../../engine/ink/certainty/expected-error.ts';
import { CARD_BLACK } from '../../../engine/ink/characterise/card.ts';
import { freeName } from '../../../engine/ink/characterise/ink-draft.ts';
import { filmFactor, INK_MESH } from '../../../engine/ink/film/film-factor.ts';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import type { Mesh } from '../../../engine/ink/film/mesh.ts';
import { trappingOn } from '../../../engine/ink/film/printing.ts';
import { swatchOf, swatchReflectance } from '../../../engine/ink/film/swatch.ts';
import { filmThickness } from '../../../engine/ink/film/thickness.ts';
import { inkParts, mixName } from '../../../engine/ink/mix/match-mix.ts';
import type { MatchAnswer, MatchResult } from '../../../engine/ink/mix/match.ts';
import { baseOf, mixInks, printInks, stockInks } from '../../../engine/ink/mix/mix.ts';
import type { Lab } from '../../../engine/ink/types.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { StoreElement } from '../../store-element.ts';
import '../../ui/kit/number-field.ts';
import '../../ui/kit/progress.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../add/colour-field.ts';
import { newId } from '../../ui/new-id.ts';
import '../add/colour-field.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/inks/match.ts';
import { withinWords } from '../../words/error-words.ts';
import { swatchTemplate } from '../overprint/marked-swatch.ts';
import { matchStyles } from './match-style.ts';
import '../mesh/mesh-select.ts';
import { deltaWords, lampWords, potWords, weighLines } from './match-words.ts';

/** Mixes all nearer their target than this cannot be told apart by eye on it, ΔE00; common practice, no source. */
const LOOKS_ALIKE = 1;
/** The paper itself, in a choice of grounds. */
const PAPER = '';

/** Finds mixes of the stock inks that come nearest a colour. Sends `added` with the id of a mix that is kept. */
@customElement('match-ink')
export class MatchInk extends StoreElement {
  static override styles = [controls, matchStyles];

  @state() private from: 'colour' | 'print' = 'colour';
  @state() private colour: Lab = [62, -14, 26];
  /** An ink over a ground, whose print is to be matched. */
  @state() private print = { ink: '', over: PAPER };
  @state() private over = PAPER;
  @state() private mesh: Mesh | null = null;
  @state() private strokes = 1;
  @state() private grams = 100;
  @state() private maxInks = 4;
  /** What the answers on show were searched for. */
  private searched: { target: Lab; print: ArrayLike<number> | null; key: string } | null = null;
  private readonly run = new Work<MatchResult>(this);

  /** Reflectance of the paper, or of one stroke of an ink on it. */
  private ground(over: string): ArrayLike<number> {
    const { paper, inks, surface } = this.store.project.drawer;
    const ink = inks.find(({ id }) => id === over);
    return ink === undefined ? paper.reflectance : swatchReflectance(ink, paper.reflectance, { surface });
  }

  private target(): Lab | null {
    if (this.from === 'colour') return this.colour;
    const curve = this.printWanted();
    return curve === null ? null : labD50(curve);
  }

  /** The curve of the print that is to be matched; null where only a colour is wanted. */
  private printWanted(): ArrayLike<number> | null {
    if (this.from === 'colour') return null;
    const { inks, surface, trapping } = this.store.project.drawer;
    const ink = inks.find(({ id }) => id === this.print.ink) ?? printInks(inks)[0];
    if (ink === undefined) return null;
    const under = inks.some(({ id }) => id === this.print.over) ? this.print.over : null;
    return swatchReflectance(ink, this.ground(this.print.over), { surface, trapping: trappingOn(trapping, under, ink.id) });
  }

  private meshNow(): Mesh {
    return this.mesh ?? this.store.project.drawer.screens[0]?.mesh ?? { ...INK_MESH };
  }

  private search(): void {
    const target = this.target();
    if (target === null) return;
    const { inks, strokeGain, surface, trapping } = this.store.project.drawer;
    const under = inks.some(({ id }) => id === this.over) ? this.over : null;
    this.searched = { target, print: this.printWanted(), key: this.key(target) };
    const options = {
      ground: Array.from(this.ground(this.over)),
      thickness: filmThickness(this.strokes, strokeGain) * trappingOn(trapping, under, ''),
      surface,
      mesh: this.meshNow(),
      grams: this.grams,
      maxInks: this.maxInks,
    };
    void this.run.start((control) => engineFor('picture').matchInk({ target, stocks: stockInks(inks), options }, control));
  }

  /** Names a search; when what is asked has changed since, the answers are of something else. */
  private key(target: Lab): string {
    return JSON.stringify([target, this.over, this.meshNow(), this.strokes, this.grams, this.maxInks]);
  }

  private keep(answer: MatchAnswer): void {
    const { inks } = this.store.project.drawer;
    const name = freeName(
      mixName(answer),
      inks.map((ink) => ink.name),
    );
    try {
      const ink = mixInks(inkParts(answer), { id: newId(), name }, this.store.project.drawer.surface);
      if (this.store.dispatch({ kind: 'add-ink', ink })) this.dispatchEvent(new CustomEvent<string>('added', { detail: ink.id }));
    } catch (error) {
      this.store.tell(sentenceOf(error));
    }
  }

  override render() {
    const { drawer: studio } = this.store.project;
    const stocks = stockInks(studio.inks);
    if (stocks.length === 0) {
      return html`<h2>${say.matchColour}</h2>
        <p>${say.mixesAreWeighedFrom}</p>
        <p class="soft small">${say.addYourOwnAnd}</p>
        <div class="row"><button class="main" @click=${() => this.dispatchEvent(new CustomEvent('stocks'))}>${say.bringInDemoStock}</button></div>`;
    }
    const target = this.target();
    const busy = this.run.running;
    return html`
      <h2>${say.matchColour}</h2>
      ${this.renderTarget(target)}
      <div class="part" role="group" aria-label=${say.howItIsPrinted}>
        <div class="fields">
          ${this.groundSelect(say.printedOver, this.over, (over) => (this.over = over))}
          <mesh-select label=${say.throughMesh} .mesh=${this.meshNow()} .screens=${studio.screens} @pick=${(event: CustomEvent<Mesh | null>) => (this.mesh = event.detail)}></mesh-select>
          <ps-number label=${say.strokes} min=${STROKES.least} max=${STROKES.most} step="1" decimals="0" .value=${this.strokes} @pick=${(event: NumberPick) => (this.strokes = Math.round(event.detail))}></ps-number>
          <ps-number label=${say.toMix} unit="g" min="1" max="100000" step="10" .value=${this.grams} @pick=${(event: NumberPick) => (this.grams = event.detail)}></ps-number>
          <label class="field">
            <span>${say.stockInksAtMost}</span>
            <select @change=${(event: Event) => (this.maxInks = Number((event.target as HTMLSelectElement).value))}>
              ${[1, 2, 3, 4].map((count) => html`<option value=${count} .selected=${count === this.maxInks}>${say.countNoBaseOf(count, baseOf(stocks) === undefined)}</option>`)}
            </select>
          </label>
        </div>
      </div>
      <div class="row">
        ${
          busy
            ? html`<ps-progress label=${say.searching} .value=${this.run.progress} @stop=${() => this.run.stop()}></ps-progress>`
            : html`<button class="main" ?disabled=${target === null} @click=${this.search}>${say.findMixes}</button>`
        }
      </div>
      ${workFailure(this.run)}
      ${this.renderResult(target)}
    `;
  }

  private groundSelect(label: string, value: string, set: (value: string) => void) {
    const { inks, paper } = this.store.project.drawer;
    return html`<label class="field">
      <span>${label}</span>
      <select aria-label=${label} @change=${(event: Event) => set((event.target as HTMLSelectElement).value)}>
        <option value=${PAPER} .selected=${value === PAPER}>${paper.name || say.thePaper}</option>
        ${printInks(inks).map((ink) => html`<option value=${ink.id} .selected=${ink.id === value}>${ink.name}</option>`)}
      </select>
    </label>`;
  }

  private renderTarget(target: Lab | null) {
    const inks = printInks(this.store.project.drawer.inks);
    return html`<div class="part" role="group" aria-label=${say.colourWanted}>
      <div class="row choices">
        <button aria-pressed=${this.from === 'colour'} @click=${() => (this.from = 'colour')}>${say.aColour}</button>
        <button aria-pressed=${this.from === 'print'} ?disabled=${inks.length === 0} @click=${() => (this.from = 'print')}>${say.printOfInk}</button>
      </div>
      ${
        this.from === 'colour'
          ? html`<colour-field label=${say.colourWanted2} .white=${this.white()} .lab=${this.colour} @pick=${(event: CustomEvent<Lab>) => (this.colour = event.detail)}></colour-field>`
          : html`<div class="fields">
              <label class="field">
                <span>${say.asThisInk}</span>
                <select aria-label=${say.asThisInk} @change=${(event: Event) => (this.print = { ...this.print, ink: (event.target as HTMLSelectElement).value })}>
                  ${inks.map((ink, i) => html`<option value=${ink.id} .selected=${ink.id === this.print.ink || (this.print.ink === '' && i === 0)}>${ink.name}</option>`)}
                </select>
              </label>
              ${this.groundSelect(say.looksOver, this.print.over, (over) => (this.print = { ...this.print, over }))}
            </div>
            ${target === null ? nothing : swatchTemplate(labSwatch(target, this.white()), 'target')}`
      }
    </div>`;
  }

  private white(): readonly number[] | undefined {
    return this.store.relative ? this.store.project.drawer.paper.reflectance : undefined;
  }

  /** What a mix shows over the black of the standard card, where covering mixes and clear ones part. */
  private onBlack(answer: MatchAnswer) {
    const mix = mixInks(inkParts(answer), { id: '', name: mixName(answer) });
    const { strokeGain, surface } = this.store.project.drawer;
    return swatchOf(swatchReflectance(mix, CARD_BLACK, { strokes: this.strokes, strokeGain, surface }), this.white());
  }

  /** How far a print of a mix may be from what is shown, expected ΔE00. */
  private expected(answer: MatchAnswer): number {
    const { inks, paper, strokeGain, surface, trapping } = this.store.project.drawer;
    const mix = mixInks(inkParts(answer), { id: '', name: '' }, surface);
    const film = { ink: mix, thickness: filmFactor(mix, this.meshNow(), this.strokes, strokeGain) };
    const under = inks.find(({ id }) => id === this.over);
    return expectedError(under === undefined ? [film] : [{ ink: under }, film], { paper, surface, trapping }).deltaE;
  }

  private renderResult(target: Lab | null) {
    const { found: result } = this.run;
    if (result === null || this.searched === null) return nothing;
    const stale = target === null || this.key(target) !== this.searched.key;
    const wanted = labSwatch(this.searched.target, this.white());
    const { print } = this.searched;
    // A colour alone has no curve, so that mixes are held against the first of them.
    const beside = print ?? result.answers[0]?.reflectance;
    return html`<section aria-label=${say.mixes}>
      <p role="status">
        ${result.matched ? say.mixesNearestFirst(result.answers.length) : result.reason}
        ${stale ? html`<span class="soft">${say.theseAreForWhat}</span>` : nothing}
      </p>
      ${result.answers.length > 1 && result.answers.every(({ deltaE }) => deltaE < LOOKS_ALIKE) ? html`<p class="soft small">${say.theyLookAlikeOn}</p>` : nothing}
      <ol class="answers">
        ${result.answers.map((answer, at) => {
          const got = labSwatch(answer.lab, this.white());
          const name = mixName(answer);
          const lampDeltaE = beside === undefined ? 0 : deltaE2000(labUnderLamp(beside), labUnderLamp(answer.reflectance));
          return html`<li aria-label=${say.mixOf(name, deltaWords(answer))}>
            <div>
              <span class="pair">${swatchTemplate(wanted)}${swatchTemplate(got)}${swatchTemplate(this.onBlack(answer))}${swatchTemplate(labSwatch(labUnderLamp(answer.reflectance), this.white()))}</span>
              <span class="under" aria-hidden="true"><span>${say.wanted}</span><span>${say.mix}</span><span>${say.onBlack}</span><span>${say.byLamp}</span></span>
            </div>
            <div>
              <p>${say.thePrint(html`<strong>${deltaWords(answer)}</strong>`, withinWords(this.expected(answer)))} <span class="soft small">${potWords(answer)}${at === 0 && print === null ? nothing : `, ${lampWords(lampDeltaE, print === null)}`}</span></p>
              <table>
                <thead class="visually-hidden"><tr><th scope="col">${say.ink}</th><th scope="col">${say.partsIn100}</th><th scope="col">${say.grams}</th></tr></thead>
                <tbody>
                  ${weighLines(answer).map((line) => html`<tr><th scope="row">${line.name}</th><td class="soft">${line.hundredths} %</td><td>${line.grams} g</td></tr>`)}
                </tbody>
              </table>
              <button class="keep" aria-label=${say.keepMixOfAs(name)} @click=${() => this.keep(answer)}>${say.keepAsInk}</button>
            </div>
          </li>`;
        })}
      </ol>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'match-ink': MatchInk;
  }
}
