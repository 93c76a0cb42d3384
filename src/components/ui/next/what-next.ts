import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { MOST_PULLS } from '../../../engine/base/limits.ts';
import type { OnwardBy, OnwardPrint } from '../../../engine/explore/onward/onward.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { pullsIn, type Workshop } from '../../../engine/visit/lent/workshop.ts';
import type { OnwardFind, OnwardProgress } from '../../../workers/api/wall-tools-api.ts';
import { wallTools } from '../../../workers/client/client.ts';
import { say } from '../../words/en/ui/next.ts';
import '../kit/fold.ts';
import '../kit/ink-chip.ts';
import '../kit/progress.ts';
import { controls } from '../controls-style.ts';
import { fullDialog } from '../layout-style.ts';
import '../print/picture-view.ts';
import { pickStyle } from '../pick-style.ts';
import { workFailure } from '../work-failure.ts';
import { Work } from '../work.ts';
import { moreWords, nextPullWords, onwardWords, RANKS, triedWords } from './next-words.ts';
import { whatNextStyle } from './what-next-style.ts';

const HEIGHT_PX = 256;
/** More further pulls than this leave the eye nothing to judge by. */
const MOST_MORE = 4;
/** How far beside its place a screen is tried, mm. */
const BESIDE_MM = [0, 3, 10, 30];

/** A sheet that something is to follow on. */
export interface NextSheet {
  /** 'Sheet 4', 'The stack on the Bench'. */
  name: string;
  /** What is down, as it was really pulled. */
  pulls: readonly Pull[];
  workshop: Workshop;
  /** Prints that it may be brought nearer to, with all that they name. */
  aims: readonly { name: string; pulls: readonly Pull[]; studio: Studio }[];
  /** What the button that takes a choice up says, and what then happens. */
  take: string;
  note: string;
  relative: boolean;
  /** What else can be said of a choice, each by its name; none is chosen at first. */
  options?: readonly { name: string; label: string }[];
  /** Why nothing can follow, in a sentence. */
  refused?: string | undefined;
}

/**
 * Asks once what could follow on a sheet without anybody waiting: what is asked in earnest then finds its worker
 * started, its code translated and the screens joined, at half the time.
 */
export async function rehearse({ pulls, workshop, relative, refused }: NextSheet, signal: AbortSignal): Promise<void> {
  if (refused !== undefined) return;
  const { studio, screens, inks } = workshop;
  const asked = { screens, inks, most: 1, by: 'change' } as const;
  await wallTools()
    .onward({ studio, pulls, asked, heightPx: HEIGHT_PX, relative }, { signal })
    // Whoever asks in earnest hears why.
    .catch(() => null);
}

/** What was chosen to follow. */
export interface NextChoice {
  more: Pull[];
  studio: Studio;
  /** Names of the options that were chosen. */
  options: ReadonlySet<string>;
}

/**
 * What to pull next on a sheet as it stands, as prints to choose from.
 * @fires take CustomEvent<NextChoice>
 */
@customElement('ps-what-next')
export class WhatNext extends LitElement {
  static override styles = [controls, fullDialog, pickStyle, whatNextStyle];

  @property({ attribute: false }) sheet: NextSheet | null = null;
  @state() private open = false;
  @state() private by: OnwardBy = 'change';
  @state() private most = 2;
  @state() private aim = 0;
  @state() private besideMm = 0;
  @state() private screens: ReadonlySet<string> = new Set();
  @state() private inks: ReadonlySet<string> = new Set();
  @state() private options: ReadonlySet<string> = new Set();
  @state() private chosen: OnwardPrint | null = null;
  @state() private soFar: OnwardFind | null = null;
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly work = new Work<OnwardFind>(this, { found: (find) => this.hang(find) });

  /** Opens at a sheet and starts to look. */
  show(sheet: NextSheet): void {
    this.sheet = sheet;
    this.open = true;
    this.screens = new Set(sheet.workshop.screens);
    this.inks = new Set(sheet.workshop.inks);
    this.aim = 0;
    this.options = new Set();
    if (sheet.aims.length === 0 && this.by === 'nearer') this.by = 'change';
    void this.updateComplete.then(() => this.dialog.showModal());
    this.look();
  }

  close(): void {
    this.dialog.close();
  }

  private get studio(): Studio | null {
    return this.sheet?.workshop.studio ?? null;
  }

  /** How many further pulls may be asked for: no more than the sheet still takes; 1 where it takes none, so that it is said why. */
  private get mostMore(): number {
    return Math.max(1, Math.min(MOST_MORE, MOST_PULLS - (this.sheet?.pulls.length ?? 0)));
  }

  private look(): void {
    const { sheet } = this;
    if (sheet === null) return;
    this.chosen = null;
    this.soFar = null;
    if (sheet.refused !== undefined) {
      this.work.refuse(sheet.refused);
      return;
    }
    const { workshop, pulls, relative, aims } = sheet;
    const aim = this.by === 'nearer' ? aims[this.aim] : undefined;
    const aimed = aim === undefined ? undefined : pullsIn(workshop.studio, aim.pulls, aim.studio);
    const asked = {
      screens: workshop.studio.screens.filter(({ id }) => this.screens.has(id)).map(({ id }) => id),
      inks: workshop.studio.inks.filter(({ id }) => this.inks.has(id)).map(({ id }) => id),
      most: Math.min(this.most, this.mostMore),
      by: this.by,
      towards: aimed?.pulls,
      movedMm: this.besideMm,
    };
    void this.work.start(({ signal, onProgress: tell }) => {
      const onProgress = ({ share, find }: OnwardProgress): void => {
        tell(share);
        if (find !== undefined && !signal.aborted) this.hang(find);
      };
      const studio = aimed?.studio ?? workshop.studio;
      return wallTools().onward({ studio, pulls, asked, heightPx: HEIGHT_PX, relative }, { signal, onProgress });
    });
  }

  /** Shows what was found; the print that was chosen stays chosen while it hangs. */
  private hang(find: OnwardFind): void {
    const keyOf = ({ more }: OnwardPrint): string => more.map(({ id }) => id).join('+');
    const chosen = this.chosen === null ? '' : keyOf(this.chosen);
    const prints = find.result.found.flat();
    this.chosen = prints.find((print) => keyOf(print) === chosen) ?? prints[0] ?? null;
    this.soFar = find;
  }

  private ask(change: () => void): void {
    change();
    this.look();
  }

  private toggled(set: ReadonlySet<string>, id: string): Set<string> {
    const next = new Set(set);
    if (!next.delete(id)) next.add(id);
    return next;
  }

  private onTake(): void {
    const { chosen, studio } = this;
    if (chosen === null || studio === null) return;
    this.dispatchEvent(new CustomEvent<NextChoice>('take', { detail: { more: chosen.more, studio, options: this.options } }));
  }

  private asks({ workshop, pulls, aims, refused }: NextSheet) {
    const { screens, inks } = workshop.studio;
    const off = refused !== undefined || pulls.length >= MOST_PULLS;
    return html`<div class="ask">
      <label class="line">${say.morePullsAtMost}
        <select ?disabled=${off} @change=${(event: Event) => this.ask(() => (this.most = Number((event.target as HTMLSelectElement).value)))}>
          ${Array.from({ length: this.mostMore }, (_, i) => html`<option value=${i + 1} ?selected=${Math.min(this.most, this.mostMore) === i + 1}>${i + 1}</option>`)}
        </select>
      </label>
      <label class="line">${say.rankedBy}
        <select ?disabled=${off} @change=${(event: Event) => this.ask(() => (this.by = (event.target as HTMLSelectElement).value as OnwardBy))}>
          ${RANKS.map(([by, label]) => html`<option value=${by} ?selected=${this.by === by} ?disabled=${by === 'nearer' && aims.length === 0}>${label}</option>`)}
        </select>
      </label>
      ${
        this.by === 'nearer'
          ? html`<label class="line">${say.nearerTo}
              <select @change=${(event: Event) => this.ask(() => (this.aim = (event.target as HTMLSelectElement).selectedIndex))}>
                ${aims.map(({ name }, i) => html`<option ?selected=${i === this.aim}>${name}</option>`)}
              </select>
            </label>`
          : aims.length > 0 || off
            ? nothing
            : html`<p class="soft small">${say.pinOrKeepPrint}</p>`
      }
      <label class="line wide">${say.screens}
        <select ?disabled=${off} @change=${(event: Event) => this.ask(() => (this.besideMm = Number((event.target as HTMLSelectElement).value)))}>
          ${BESIDE_MM.map((mm) => html`<option value=${mm} ?selected=${mm === this.besideMm}>${mm === 0 ? say.whereTheyWereDrawn : say.alsoMmBeside(mm)}</option>`)}
        </select>
      </label>
      <ps-fold ?disabled=${off} label=${say.inksAtHand} note=${say.of(this.inks.size, inks.length)}>
        <div class="ticks">${inks.map((ink) => html`<label class="tick"><input type="checkbox" .checked=${this.inks.has(ink.id)} @change=${() => this.ask(() => (this.inks = this.toggled(this.inks, ink.id)))} /><ps-ink-chip .ink=${ink}></ps-ink-chip>${ink.name}</label>`)}</div>
      </ps-fold>
      <ps-fold label=${say.screensAtHand} note=${say.ofScreens(this.screens.size, screens.length)}>
        <div class="ticks">${screens.map(({ id, number, name }) => html`<label class="tick"><input type="checkbox" .checked=${this.screens.has(id)} @change=${() => this.ask(() => (this.screens = this.toggled(this.screens, id)))} />${number} ${name}</label>`)}</div>
      </ps-fold>
      ${this.stand()}
    </div>`;
  }

  /** How far one has looked: among what is asked, so that no print moves as it comes and goes. */
  private stand() {
    const { work, soFar } = this;
    const tried = soFar === null ? '' : say.coloursAreEstimatesPull(triedWords(soFar.result));
    return html`<div class="stand">${
      work.running
        ? html`<ps-progress label=${say.looking} words=${say.lookingAtWhatCould} stop=${say.stopLooking} .value=${work.progress} @stop=${() => work.stop()}></ps-progress>`
        : html`<p class="soft small">${tried}</p>`
    }</div>`;
  }

  private card(print: OnwardPrint, find: OnwardFind, [depth, at]: [number, number]) {
    const { studio } = this;
    if (studio === null) return nothing;
    const words = print.more.map((pull) => nextPullWords(pull, studio));
    return html`<label class="pick card">
      <input type="radio" name="next" aria-label=${words.join(say.then2)} .checked=${print === this.chosen} @change=${() => (this.chosen = print)} />
      <ps-picture .picture=${find.pictures[depth]?.[at] ?? null}></ps-picture>
      <span>${words.map((text) => html`<b>${text}</b>`)}<span class="soft">${onwardWords(find.result.now, print)}</span></span>
    </label>`;
  }

  private prints(find: OnwardFind) {
    const { found } = find.result;
    return html`${found.map((prints, depth) =>
      prints.length === 0
        ? nothing
        : html`<section aria-label=${moreWords(depth + 1)}>
          <h3>${moreWords(depth + 1)}</h3>
          <div class="cards" role="radiogroup" aria-label=${moreWords(depth + 1)}>${prints.map((print, at) => this.card(print, find, [depth, at]))}</div>
        </section>`,
    )}
    ${found.every((prints) => prints.length === 0) ? html`<p role="status">${say.noneOfTheseScreens}</p>` : nothing}`;
  }

  private foot(sheet: NextSheet, find: OnwardFind) {
    const { chosen, studio } = this;
    const depth = (chosen?.more.length ?? 1) - 1;
    const at = chosen === null ? -1 : (find.result.found[depth] ?? []).indexOf(chosen);
    const then = find.pictures[depth]?.[at] ?? null;
    return html`<footer>
      <figure><ps-picture .picture=${find.now} label=${say.now(sheet.name)}></ps-picture><figcaption>${say.now2}</figcaption></figure>
      <figure><ps-picture .picture=${then} label=${say.thenName(sheet.name)}></ps-picture><figcaption>${say.then3}</figcaption></figure>
      ${find.aim === null ? nothing : html`<figure><ps-picture .picture=${find.aim} label=${say.chosenPrint}></ps-picture><figcaption>${say.chosen}</figcaption></figure>`}
      <div class="told">
        <p role="status">${chosen === null || studio === null ? say.choosePrint : html`<b>${chosen.more.map((pull) => nextPullWords(pull, studio)).join(say.then2)}</b><br /><span class="soft">${onwardWords(find.result.now, chosen)}.</span>`}</p>
        ${(sheet.options ?? []).map(({ name, label }) => html`<label class="tick"><input type="checkbox" .checked=${this.options.has(name)} @change=${() => (this.options = this.toggled(this.options, name))} />${label}</label>`)}
        <p class="soft small">${sheet.note}</p>
      </div>
      <button class="main" ?disabled=${chosen === null} @click=${this.onTake}>${sheet.take}</button>
    </footer>`;
  }

  private face(sheet: NextSheet) {
    const { work, soFar } = this;
    return html`<header><h2>${say.whatNext} <span class="soft">${sheet.name}</span></h2><button @click=${() => this.close()}>${say.close}</button>${workFailure(work)}</header>
      <div class="middle">
      ${this.asks(sheet)}
      <div class="found">
        ${!work.running && work.found === null && work.failure === '' ? html`<p role="status">${soFar === null ? say.stopped : say.stoppedTheseAreBest} <button @click=${() => this.look()}>${say.lookAgain}</button></p>` : nothing}
        ${soFar === null ? nothing : this.prints(soFar)}
      </div>
      </div>
      ${soFar === null ? nothing : this.foot(sheet, soFar)}`;
  }

  override render() {
    const { sheet } = this;
    return html`<dialog
      aria-label=${say.whatNext}
      @close=${() => {
        this.work.stop();
        this.open = false;
      }}
    >
      ${this.open && sheet !== null ? this.face(sheet) : nothing}
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-what-next': WhatNext;
  }
}
