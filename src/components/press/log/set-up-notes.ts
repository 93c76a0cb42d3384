import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Ink } from '../../../engine/ink/types.ts';
import type { SettingNoted } from '../../../engine/log/settings.ts';
import type { Happening, LogEvent } from '../../../engine/log/types.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import { logSheetStyle } from '../../ui/log/log-sheet-style.ts';
import { say } from '../../words/en/press/log.ts';
import { gramsText } from '../../words/plan-words.ts';
import { PROFILES, profileWords } from '../../words/setting-words.ts';

type Weighed = Extract<LogEvent, { kind: 'weighed' }>;

/** A set-up to speak of. */
export interface SetUpTalk {
  card: SetUpCard;
  /** What was noted last of its screen. */
  noted: SettingNoted | null;
  /** The ink that was planned, unless none of its sheets has it, and those that were pulled in its place. */
  inks: readonly InkUsed[];
}

/** An ink in a set-up. */
export interface InkUsed {
  ink: Ink;
  /** Wet ink that its sheets take as planned, g. */
  plannedG: number;
  /** What was pulled in it: number of the sheet and id of the pull. */
  on: [number, string][];
  weighed: readonly Weighed[];
}

/**
 * How a screen stands on the press, and what ink its set-up took.
 * @fires happened CustomEvent<Happening[]>
 */
@customElement('press-set-up-notes')
export class SetUpNotes extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    logSheetStyle,
    css`
      fieldset {
        grid-template-columns: repeat(auto-fill, minmax(136px, 1fr));
        align-items: end;
        margin-bottom: var(--space-8);
      }
      input[type='number'] {
        text-align: left;
      }
    `,
  ];

  @property({ attribute: false }) talk: SetUpTalk | null = null;
  @state() private open = false;
  @state() private complaint = '';
  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.open = true;
    this.complaint = '';
    void this.updateComplete.then(() => {
      if (!this.dialog.open) this.dialog.showModal();
    });
  }

  private text(name: string): string {
    return this.renderRoot.querySelector<HTMLInputElement>(`[name=${name}]`)?.value.trim() ?? '';
  }

  private number(name: string): number | undefined {
    const text = this.text(name);
    return text === '' ? undefined : Number(text);
  }

  private happened(happenings: Happening[]): void {
    this.dispatchEvent(new CustomEvent<Happening[]>('happened', { detail: happenings }));
  }

  /** What was used of an ink, by the scales or as typed; null where nothing was said, a sentence where it cannot be. */
  private gramsOf(at: number): number | null | string {
    const [before, after, used] = [this.number(`before-${at}`), this.number(`after-${at}`), this.number(`used-${at}`)];
    if (used !== undefined) return used;
    if (before === undefined && after === undefined) return null;
    if (before === undefined || after === undefined) return say.giveGramsBeforeAnd;
    return after > before ? say.bucketCannotBeHeavier : before - after;
  }

  private submit(event: Event, { card, inks, noted }: SetUpTalk): void {
    event.preventDefault();
    const weights = inks.map((_, at) => this.gramsOf(at));
    const wrong = weights.find((grams) => typeof grams === 'string');
    if (typeof wrong === 'string') {
      this.complaint = wrong;
      return;
    }
    const of = { sheet: 0, screen: { number: card.screen.number, name: card.screen.name }, ink: card.ink.ink.name };
    const profile = this.text('profile');
    const given = {
      snapOffMm: this.number('snap-off'),
      shoreA: this.number('shore'),
      profile: profile === '' ? undefined : profile,
      angleDeg: this.number('angle'),
      registerMm: this.number('register'),
    };
    const how = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
    const note = this.text('note');
    const before = noted === null ? '' : JSON.stringify([noted.ink, { ...noted.how }, noted.note]);
    const said = Object.keys(how).length > 0 || note !== '';
    const happenings: Happening[] = [];
    if (said && before !== JSON.stringify([of.ink, how, note])) happenings.push({ ...of, kind: 'set-up', how, note });
    for (const [at, { ink, on }] of inks.entries()) {
      const grams = weights[at];
      if (typeof grams === 'number' && on.length > 0) happenings.push({ ...of, ink: ink.name, kind: 'weighed', grams, on });
    }
    if (happenings.length > 0) this.happened(happenings);
    this.dialog.close();
  }

  private field(name: string, label: string, value: number | undefined, [max, step]: [number, number]) {
    return html`<label class="stacked"
      >${label} <input name=${name} type="number" inputmode="decimal" min="0" max=${max} step=${step} .value=${value === undefined ? '' : String(value)}
    /></label>`;
  }

  private standing({ noted }: SetUpTalk) {
    const { snapOffMm, shoreA, profile = '', angleDeg, registerMm } = noted?.how ?? {};
    const profiles = ['', ...new Set([...PROFILES.keys(), profile].filter((each) => each !== ''))];
    return html`<fieldset>
      <legend>${say.howScreenStands}</legend>
      ${this.field('snap-off', say.snapOffMm, snapOffMm, [50, 0.1])} ${this.field('shore', say.squeegeeHardnessShore, shoreA, [100, 1])}
      <label class="stacked"
        >${say.squeegeeProfile}
        <select name="profile">
          ${profiles.map((each) => html`<option value=${each} ?selected=${each === profile}>${each === '' ? say.notNoted : profileWords(each)}</option>`)}
        </select></label
      >
      ${this.field('angle', say.squeegeeAngleDegrees, angleDeg, [90, 1])} ${this.field('register', say.registerReachedAtWorst, registerMm, [100, 0.1])}
      <label class="stacked">${say.note} <input name="note" type="text" maxlength="4000" .value=${noted?.note ?? ''} /></label>
    </fieldset>`;
  }

  private ink({ ink, plannedG, on, weighed }: InkUsed, at: number) {
    return html`<fieldset>
        <legend>${say.usedInThisSet(ink.name, gramsText(plannedG))}</legend>
        ${
          on.length === 0
            ? html`<p class="soft">${say.tickWhatWasPulled}</p>`
            : html`${this.field(`before-${at}`, say.bucketBeforeG, undefined, [100_000, 0.1])} ${this.field(`after-${at}`, say.bucketAfterG, undefined, [100_000, 0.1])}
              ${this.field(`used-${at}`, say.orUsedG, undefined, [100_000, 0.1])}`
        }
      </fieldset>
      ${
        weighed.length === 0
          ? nothing
          : html`<ul aria-label=${say.weighedInThisSet}>
            ${weighed.map(
              ({ id, grams, on: pulls }) => html`<li>
                <span>${say.gFor(gramsText(grams), pulls.length === 1 ? say.n1Pull : say.pulls(pulls.length))}</span>
                <button type="button" @click=${() => this.happened([{ kind: 'undone', sheet: 0, event: id }])}>${say.undo}</button>
              </li>`,
            )}
          </ul>`
      }`;
  }

  override render() {
    const { talk } = this;
    const heading = talk === null ? '' : say.setUp(talk.card.number);
    return dialogBox(
      { heading, closable: true, onClose: () => (this.open = false) },
      !this.open || talk === null
        ? nothing
        : html`<form @submit=${(event: Event) => this.submit(event, talk)}>
            ${this.standing(talk)} ${talk.inks.map((used, at) => this.ink(used, at))} ${this.complaint === '' ? nothing : html`<p class="warn" role="alert">${this.complaint}</p>`}
            <div class="buttons"><button class="main" type="submit">${say.keepInLog}</button></div>
          </form>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-set-up-notes': SetUpNotes;
  }
}
