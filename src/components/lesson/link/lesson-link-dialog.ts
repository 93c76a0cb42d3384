import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { GoalKind } from '../../../engine/lesson/goal-kinds.ts';
import { type LessonSheet, lessonStudio } from '../../../engine/lesson/lesson-sheet.ts';
import { suitingGoals } from '../../../engine/lesson/suiting-goals.ts';
import { lessonLink, type LessonLink, readLessonFragment } from '../../../engine/visitfile/lesson-link.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { JobControl } from '../../../workers/client/job-control.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import { addressWith, codePicture, outOfReach } from '../../ui/print/code-picture.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/lesson/link.ts';
import '../../ui/kit/select.ts';
import type { LessonAnswer } from '../board/lesson-run.ts';
import { levelWords } from '../levels/level-words.ts';

/** Characters that browsers and messages pass on whole (common practice, no source). */
const MOST_IN_LINK = 30_000;
/** Characters of a code that a phone still reads off a screen when it is shown large (common practice, no source). */
const MOST_IN_CODE = 2000;

/** A lesson to be given to others: a link to copy, a code to scan, and what is to be done with it. */
@customElement('ps-lesson-link')
export class LessonLinkDialog extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      dialog {
        --dialog-width: 760px;
      }
      .parts {
        display: grid;
        grid-template-columns: minmax(0, 1fr) minmax(0, 1.3fr);
        gap: var(--space-8);
        align-items: start;
      }
      .words {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-6);
      }
      .code {
        display: block;
        width: 100%;
        background: var(--white);
        forced-color-adjust: none;
      }
      a {
        color: inherit;
      }
      input[readonly] {
        width: 100%;
      }
      @media (max-width: 700px) {
        .parts {
          grid-template-columns: minmax(0, 1fr);
        }
      }
    `,
  ];

  @property({ attribute: false }) sheet!: LessonSheet;
  /** All its orders sorted; null until they are. */
  @property({ attribute: false }) answer: LessonAnswer | null = null;
  @state() private open = false;
  @state() private goal: GoalKind | null = null;
  @state() private copied = '';
  private readonly goals = new Work<GoalKind[]>(this);
  private readonly counts = new Work<number>(this);
  @query('dialog') private dialog!: HTMLDialogElement;

  private show(): void {
    this.open = true;
    this.copied = '';
    this.goal = null;
    void this.goals.start(() => this.openGoals());
    void this.counts.start((control) => this.countInCode(control));
    this.dialog.showModal();
  }

  /** Pictures that the lesson of the code prints, whose outlines are coarser. */
  private async countInCode(control: JobControl<number>): Promise<number | null> {
    const link = lessonLink({ sheet: this.sheet, goal: null }, this.room);
    const sheet = link === null ? null : (readLessonFragment(link.fragment).value?.sheet ?? null);
    if (sheet === null) return null;
    const studio = lessonStudio(sheet.studio, sheet.inks);
    const found = await engineFor('lesson').lesson({ studio, pulls: sheet.pulls, ...sheet.limits, heightPx: 8, relative: true }, control);
    return found?.count ?? null;
  }

  /** Characters that a code leaves for the fragment. */
  private get room(): number {
    return MOST_IN_CODE - addressWith('').length;
  }

  /** Goals that suit this sheet and are not reached on it already. */
  private async openGoals(): Promise<GoalKind[]> {
    const { answer, sheet } = this;
    if (answer === null) return [];
    const { studio, limits, pulls, inks } = sheet;
    const state = { pulls, inks };
    const open = await Promise.all(
      suitingGoals(answer.result).map(async (kind) => {
        if (kind === 'on-top' || kind === 'alike' || kind === 'found-back') return [kind];
        const { done, why } = await engineFor('lesson').goal({ studio, kind, limits, start: state, now: state });
        return done || why === 'apart' || why === 'off-sheet' ? [] : [kind];
      }),
    );
    return open.flat();
  }

  private async copy(address: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(address);
      this.copied = say.copied;
    } catch {
      this.renderRoot.querySelector<HTMLInputElement>('input[readonly]')?.select();
      this.copied = say.thisBrowserDoesNot;
    }
  }

  private renderCode(link: LessonLink | null) {
    if (link === null) return html`<p>${say.thisLessonHasToo}</p>`;
    const there = this.counts.found;
    const here = this.answer?.result.count;
    const count =
      there === null || here === undefined ? '' : there === here ? say.andItsOrdersPrint(here) : say.itsOrdersPrintPictures(there, here);
    const stray = link.toleranceMm > 0.2 ? html`<p class="small soft">${say.inCodeOutlinesAre(link.toleranceMm, count)}</p>` : nothing;
    return html`<div>${codePicture(addressWith(link.fragment), say.codeOfThisLesson)}${stray}</div>`;
  }

  private renderParts() {
    const { sheet, goal } = this;
    const link = lessonLink({ sheet, goal }, MOST_IN_LINK);
    if (link === null) return html`<p>${say.thisLessonHasTooMany}</p>`;
    const address = addressWith(link.fragment);
    const goals = [
      { value: '', label: say.nothingBoardIsTheirs },
      ...(this.goals.found ?? []).map((kind) => ({ value: kind, label: levelWords(kind, sheet.pulls.length).title })),
    ];
    return html`<div class="parts">
      <div class="words">
        <ps-select
          label=${say.whatIsToBe}
          .options=${goals}
          .value=${goal ?? ''}
          @pick=${(event: CustomEvent<string>) => (this.goal = event.detail === '' ? null : (event.detail as GoalKind))}
        ></ps-select>
        <label class="stacked">${say.link} <input readonly .value=${address} @focus=${(event: Event) => (event.target as HTMLInputElement).select()} /></label>
        <div class="row">
          <button class="main" @click=${() => this.copy(address)}>${say.copyLink}</button>
          <a href=${address} target="_blank" rel="noopener">${say.openItHere}</a>
        </div>
        <p role="status" class="small">${this.copied}</p>
        <p class="small soft">${say.allOfLessonStands}</p>
        ${outOfReach() === null ? nothing : html`<p class="small">${outOfReach()}</p>`}
      </div>
      ${this.renderCode(lessonLink({ sheet, goal }, this.room))}
    </div>`;
  }

  override render() {
    return html`<button @click=${() => this.show()}>${say.link2}</button>
      ${dialogBox({ heading: say.thisLessonForOthers, closable: true, onClose: () => (this.open = false) }, this.open ? this.renderParts() : nothing)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-lesson-link': LessonLinkDialog;
  }
}
