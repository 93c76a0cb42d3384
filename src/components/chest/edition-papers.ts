import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../engine/base/at.ts';
import type { EditionRecord } from '../../engine/log/edition/edition-sheets.ts';
import type { Edition, EditionWords } from '../../engine/log/edition/edition.ts';
import { FATES, type ScreenFate } from '../../engine/log/edition/fates.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { missingWords } from '../output/missing-words.ts';
import type { PageName } from '../output/page-writer.ts';
import type { PdfFile } from '../output/pull-sheet-pdf.ts';
import { controls } from '../ui/controls-style.ts';
import { download, fileNameOf } from '../ui/download.ts';
import { stackHost } from '../ui/layout-style.ts';
import '../ui/kit/progress.ts';
import { imageOf } from '../ui/print/state-pictures.ts';
import { Work } from '../ui/work.ts';
import { say } from '../words/en/chest/room.ts';
import { editionPapersStyle } from './edition-papers-style.ts';
import { recipePicture } from './recipe-pictures.ts';

const WORDS: readonly [keyof EditionWords, string][] = [
  ['artist', say.artist],
  ['title', say.title],
  ['year', say.yearOfPrinting],
  ['workshop', say.workshopAndPrinter],
  ['dates', say.datesOfPrinting],
  ['approved', say.approvedBATBy],
  ['rejects', say.rejectsBesideThoseIn],
  ['other', say.otherEditionsOrStates],
];
const PICTURE_ROWS = 1000;

/**
 * What only the artist can say of an edition, and its documentation sheet.
 * @fires said CustomEvent<Edition>: with what was said
 */
@customElement('chest-edition-papers')
export class EditionPapers extends LitElement {
  static override styles = [controls, stackHost, editionPapersStyle];

  @property({ attribute: false }) recipe!: Recipe;
  @property({ attribute: false }) edition!: Edition;
  @property({ attribute: false }) visit: { title: string; record: EditionRecord } | null = null;
  @property({ attribute: false }) relative = true;
  @property({ type: Boolean }) disabled = false;
  @property({ attribute: false }) tell!: (sentence: string) => void;
  @state() private size: PageName = 'A4';
  private readonly making = new Work<PdfFile>(this, {
    found: ({ bytes, missing }) => {
      const name = fileNameOf(`${this.edition.words.title || this.recipe.title} edition`, 'pdf');
      download(name, bytes as Uint8Array<ArrayBuffer>, 'application/pdf');
      if (missing.length > 0) this.tell(missingWords(missing));
    },
    failed: (sentence) => this.tell(say.documentationSheetCouldNot(sentence)),
  });

  private say(change: Partial<Edition>): void {
    this.dispatchEvent(new CustomEvent<Edition>('said', { detail: { ...this.edition, ...change } }));
  }

  private sayFate(screen: string, change: Partial<ScreenFate>): void {
    const known = this.edition.fates.find((fate) => fate.screen === screen) ?? { screen, fate: FATES[0], by: '', when: '' };
    this.say({ fates: [...this.edition.fates.filter((fate) => fate.screen !== screen), { ...known, ...change }] });
  }

  private save(): void {
    const { recipe, edition, size, visit, relative } = this;
    void this.making.start(async (control) => {
      const [{ makeEdition }, { pageFonts }] = await Promise.all([import('../output/pdf-client.ts'), import('../ui/page-fonts.ts')]);
      const png = await imageOf(await recipePicture(recipe, PICTURE_ROWS, relative));
      const picture = new Uint8Array(await png.arrayBuffer());
      return makeEdition({ recipe, edition, size, picture, fonts: await pageFonts(), visit }, control);
    });
  }

  /** Says of every screen what was said of the first, as when all are washed out in one go. */
  private sayOfAll(): void {
    const { screens } = this.recipe;
    const first = this.edition.fates.find((fate) => fate.screen === entryAt(screens, 0).id);
    if (first !== undefined) this.say({ fates: screens.map(({ id }) => ({ ...first, screen: id })) });
  }

  private fate({ id, number, name }: Recipe['screens'][number]) {
    const fate = this.edition.fates.find((entry) => entry.screen === id);
    const field = (key: 'by' | 'when', words: string) => html`<input
      type="text"
      maxlength="300"
      aria-label=${say.screen(number, words)}
      placeholder=${words}
      .value=${fate?.[key] ?? ''}
      @change=${(event: Event) => this.sayFate(id, { [key]: (event.target as HTMLInputElement).value.trim() })}
    />`;
    return html`<div class="fate">
      <span><b>${number}</b> ${name}</span>
      <select
        aria-label=${say.fateOfScreen(number)}
        @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          if (value === '') this.say({ fates: this.edition.fates.filter((entry) => entry.screen !== id) });
          else this.sayFate(id, { fate: value as ScreenFate['fate'] });
        }}
      >
        <option value="" ?selected=${fate === undefined}>${say.notStated}</option>
        ${FATES.map((each) => html`<option value=${each} ?selected=${fate?.fate === each}>${say[each]}</option>`)}
      </select>
      ${field('by', say.byWhom)} ${field('when', say.when)}
    </div>`;
  }

  override render() {
    const { words } = this.edition;
    return html`<div class="fields">
        ${WORDS.map(
          ([name, label]) => html`<label class="stacked"
            >${label}
            <input
              type="text"
              name=${name}
              maxlength="1000"
              .value=${words[name]}
              @change=${(event: Event) => this.say({ words: { ...words, [name]: (event.target as HTMLInputElement).value.trim() } })}
          /></label>`,
        )}
      </div>
      <fieldset>
        <legend>${say.whatBecameOfScreens}</legend>
        ${this.recipe.screens.map((screen) => this.fate(screen))}
        ${
          this.recipe.screens.length > 1 && this.edition.fates.some((fate) => fate.screen === entryAt(this.recipe.screens, 0).id)
            ? html`<button type="button" class="quiet" style="margin-left: -8px" @click=${this.sayOfAll}>${say.saySameOfAll}</button>`
            : nothing
        }
      </fieldset>
      <div class="row">
        ${
          this.making.running
            ? html`<ps-progress label=${say.makingPDF} words=${say.makingPDF2} @stop=${() => this.making.stop()}></ps-progress>`
            : html`<button type="button" ?disabled=${this.disabled} @click=${() => this.save()}>${say.saveDocumentationAsPDF}</button>`
        }
        <select aria-label=${say.pageSizeOfDocumentation} @change=${(event: Event) => (this.size = (event.target as HTMLSelectElement).value as PageName)}>
          <option value="A4">A4</option>
          <option value="Letter">${say.letter}</option>
        </select>
        <span class="soft small">${say.notLegalAdviceWhat}</span>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-edition-papers': EditionPapers;
  }
}
