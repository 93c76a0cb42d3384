import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { MOST_SPREAD_MM } from '../../../engine/output/film/film-limits.ts';
import { OVERLAP_MM } from '../../../engine/output/film/film-limits.ts';
import type { OutPage } from '../../../engine/output/film/page.ts';
import { sectionsOf } from '../../../engine/output/film/sections.ts';
import { type FilmPaper, type FilmSettings, keptCuts, USUAL_FILMS, withCuts } from '../../../engine/output/film/settings.ts';
import type { FilmLie } from '../../../engine/output/film/ways.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { FilmsAs, FilmsFile } from '../../output/films/films-file.ts';
import { missingWords } from '../../output/missing-words.ts';
import '../cautions.ts';
import { say } from '../../words/en/ui/films.ts';
import { controls } from '../controls-style.ts';
import { download, fileNameOf } from '../download.ts';
import { dialogStyle } from '../kit/dialog-style.ts';
import '../kit/fold.ts';
import '../kit/number-field.ts';
import { dialogBox } from '../kit/dialog.ts';
import '../kit/problem.ts';
import '../kit/progress.ts';
import '../kit/select.ts';
import type { NumberPick } from '../kit/number-field.ts';
import { workFailure } from '../work-failure.ts';
import { Work } from '../work.ts';
import { cutFields, cutFieldsStyle, cutsOf, NO_CUTS, typedCuts } from './cut-fields.ts';
import { FILM_PAPERS, FILM_SIDES, type FilmChoices, FILMS_AS, lieSentence, PRINTED_SIDES, waysOf } from './film-choices.ts';
import type { FilmOffer } from './film-offers.ts';
import { filmSheet } from './film-sheet.ts';
import { filmsStyle } from './films-style.ts';
import { screenTicks, usualTicks } from './screen-ticks.ts';

const CUT_WORDS = say.eachSectionOfSheet;
const TYPES = { pdf: 'application/pdf', svg: 'image/svg+xml', zip: 'application/zip' } as const;

/** Film positives at their size: a button, and behind it what is asked of them, with a picture of each page. */
@customElement('ps-films')
export class Films extends LitElement {
  static override styles = [controls, dialogStyle, cutFieldsStyle, filmsStyle];

  /** The screens that there are, asked for when the dialog opens. */
  @property({ attribute: false }) offers!: () => FilmOffer[];
  /** Ids of those that are ticked at first; those to make, or else all, when left out. */
  @property({ attribute: false }) first: readonly string[] | null = null;
  /** The project's title. */
  @property() heading = '';
  @property() label = say.films;
  @property({ attribute: false }) tell!: (sentence: string) => void;
  @state() private all: readonly FilmOffer[] = [];
  @state() private ticked: ReadonlySet<string> = new Set();
  /** How films were made last; absent = as usual. */
  @property({ attribute: false }) settings: FilmSettings | undefined;
  /** Keeps how films are made. */
  @property({ attribute: false }) keep!: (settings: FilmSettings) => void;
  /** Notes that the films of these screens are made; absent = nothing is noted. */
  @property({ attribute: false }) note: ((ids: readonly string[]) => void) | undefined;
  /** Whether that is wanted. */
  @state() private noting = false;
  @state() private choices: FilmChoices = { ...USUAL_FILMS, ...NO_CUTS };
  /** Id of the screen whose film is shown, and which of its pages. */
  @state() private shown = '';
  @state() private page = 0;
  @state() private wrong = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly picture = new Work<OutPage[]>(this);
  private readonly making = new Work<FilmsFile>(this, { found: (file) => this.save(file) });

  private open(): void {
    this.all = this.offers();
    this.ticked = this.first === null ? usualTicks(this.all) : new Set(this.first);
    this.shown = this.chosen[0]?.id ?? '';
    const settings = this.settings ?? USUAL_FILMS;
    const { sheet } = this;
    const kept = sheet === undefined ? undefined : keptCuts(settings, sheet);
    this.choices = { ...settings, ...(kept === undefined ? NO_CUTS : typedCuts(kept)) };
    // Who keeps a list of what is to be made keeps it true.
    this.noting = this.all.some(({ state }) => state !== 'drawn');
    this.making.clear();
    this.dialog.showModal();
    this.look();
  }

  private get chosen(): FilmOffer[] {
    return this.all.filter(({ id }) => this.ticked.has(id));
  }

  private change(change: Partial<FilmChoices>): void {
    this.choices = { ...this.choices, ...change };
    const { across: _, down: __, sharedMm: ___, ...settings } = this.choices;
    const { cuts } = this;
    if (!('across' in change || 'down' in change || 'sharedMm' in change)) this.keep(settings);
    else if (cuts !== null) {
      const { sheet, ...at } = cuts;
      const kept = withCuts(settings, sheet, at);
      this.choices = { ...this.choices, cuts: kept.cuts };
      this.keep(kept);
    }
    this.look();
  }

  /** What the film that is shown prints on. */
  private get sheet(): FilmOffer['paper'] | undefined {
    return this.all.find(({ id }) => id === this.shown)?.paper;
  }

  /** Where that is cut; null where it cannot be cut so. */
  private get cuts() {
    const { sheet } = this;
    if (sheet === undefined) return null;
    try {
      const cuts = cutsOf(this.choices);
      sectionsOf(sheet, cuts);
      return { sheet, ...cuts };
    } catch {
      // Drawing the film says why.
      return null;
    }
  }

  private tick(ids: ReadonlySet<string>, shown = this.shown): void {
    this.ticked = ids;
    this.shown = ids.has(shown) ? shown : (this.chosen[0]?.id ?? '');
    this.look();
  }

  /** Draws the films of the screen that is shown; what was drawn before stays until then. */
  private look(): void {
    const film = this.all.find(({ id }) => id === this.shown);
    this.wrong = '';
    this.page = 0;
    if (film === undefined) return this.picture.clear();
    try {
      const ways = waysOf(this.choices, this.heading);
      this.picture.follow(async (control) =>
        (await import('../../output/pdf-client.ts')).filmPicture({ film, among: this.all, ways }, control),
      );
    } catch (error) {
      this.wrong = sentenceOf(error);
    }
  }

  private make(event: Event): void {
    event.preventDefault();
    const { all: among, chosen: films, choices, heading } = this;
    this.picture.stop();
    void this.making.start(async (control) => {
      const ways = waysOf(choices, heading);
      const [{ makeFilms }, { pageFonts }] = await Promise.all([import('../../output/pdf-client.ts'), import('../page-fonts.ts')]);
      return makeFilms({ films, among, ways, as: choices.as, fonts: await pageFonts() }, control);
    });
  }

  private save({ bytes, ending, missing }: FilmsFile): void {
    const { chosen } = this;
    const [only] = chosen;
    const what = chosen.length === 1 && only !== undefined ? say.film(only.key, only.screen.name) : say.films2;
    download(fileNameOf(`${this.heading} ${what}`, ending), bytes as Uint8Array<ArrayBuffer>, TYPES[ending]);
    if (this.noting) this.note?.(chosen.map(({ id }) => id));
    if (missing.length > 0) this.tell(missingWords(missing));
    this.dialog.close();
  }

  private edges() {
    const { choices } = this;
    const tickbox = (name: 'registerMarks' | 'lays', label: string) => html`<label
      ><input type="checkbox" .checked=${choices[name]} @change=${(event: Event) => this.change({ [name]: (event.target as HTMLInputElement).checked })} />${label}</label
    >`;
    return html`<div class="fields">
        <ps-number label=${say.spreadBelow0Choke} unit="mm" .min=${-MOST_SPREAD_MM} .max=${MOST_SPREAD_MM} step="0.05" .value=${choices.spreadMm} @pick=${({ detail }: NumberPick) => this.change({ spreadMm: detail })}></ps-number>
        ${tickbox('registerMarks', say.registerMarks)} ${tickbox('lays', say.threeLays)}
      </div>
      <p class="soft small">${say.inTransparentInksSpread}</p>
      <div class="fields">
        <ps-select label=${say.filmsLieOnScreens} .options=${FILM_SIDES} .value=${choices.side} @pick=${({ detail }: CustomEvent<string>) => this.change({ side: detail as FilmLie['side'] })}></ps-select>
        <ps-select label=${say.theirPrintedSide} .options=${PRINTED_SIDES} .value=${choices.printed} @pick=${({ detail }: CustomEvent<string>) => this.change({ printed: detail as FilmLie['printed'] })}></ps-select>
      </div>
      <p class="soft small" role="status">${lieSentence(choices)}</p>`;
  }

  private pages() {
    const { choices } = this;
    return html`<div class="fields">
        <ps-select label=${say.saveAs} .options=${FILMS_AS} .value=${choices.as} @pick=${({ detail }: CustomEvent<string>) => this.change({ as: detail as FilmsAs })}></ps-select>
        <ps-select label=${say.printedAs} .options=${FILM_PAPERS} .value=${choices.paper} @pick=${({ detail }: CustomEvent<string>) => this.change({ paper: detail as FilmPaper })}></ps-select>
        ${
          choices.paper === 'whole'
            ? nothing
            : html`<ps-number label=${say.overlap} unit="mm" .min=${OVERLAP_MM.least} .max=${OVERLAP_MM.most} .value=${choices.overlapMm} @pick=${({ detail }: NumberPick) => this.change({ overlapMm: detail })}></ps-number>`
        }
      </div>
      ${choices.paper === 'whole' ? nothing : html`<p class="soft small">${say.cutOneOfTwo}</p>`}
      <ps-fold label=${say.largerThanPress} note=${choices.across + choices.down === '' ? '' : say.cutIntoSections}>
        ${cutFields(choices, (change) => this.change(change), CUT_WORDS)}
      </ps-fold>`;
  }

  override render() {
    const { making, chosen } = this;
    return html`<button type="button" @click=${() => this.open()}>${this.label}</button>
      ${dialogBox(
        { heading: say.filmPositives11, closable: true, onClose: () => this.making.stop() },
        html`<form @submit=${(event: Event) => this.make(event)}>
          <div class="asked">${screenTicks({ all: this.all, ticked: this.ticked, label: say.screensThatFilmsAre, tick: (ids, shown) => this.tick(ids, shown) })} ${this.edges()} ${this.pages()}</div>
          <div class="shown">
            ${filmSheet(this.picture, { page: this.page, wrong: this.wrong, turn: (page) => (this.page = page) })}
            <p class="soft small">${say.printAt100Never}</p>
            <ps-cautions topic="screens"></ps-cautions>
          </div>
          <div class="foot">
            ${making.running ? html`<ps-progress label=${say.filmsMadeSoFar} words=${say.makingFilms} .value=${making.progress} @stop=${() => making.stop()}></ps-progress>` : nothing}
            ${workFailure(making)}
            <div class="buttons">
              ${
                this.note === undefined
                  ? nothing
                  : html`<label class="noting"
                    ><input type="checkbox" .checked=${this.noting} @change=${(event: Event) => (this.noting = (event.target as HTMLInputElement).checked)} />${say.noteFilmsAsMade}</label
                  >`
              }
              <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
              <button class="main" ?disabled=${making.running || chosen.length === 0 || this.wrong !== ''}>${say.saveFilms(chosen.length)}</button>
            </div>
          </div>
        </form>`,
      )}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-films': Films;
  }
}
