import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { numberText, typedNumber } from '../../../engine/base/typed-number.ts';
import { FILM_MARGIN_MM, type PrepareBudget, type PrepareBy } from '../../../engine/explore/prepare/budget.ts';
import { budgetProblem } from '../../../engine/project/commands/drawer.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/fold.ts';
import { decimalSign } from '../../ui/length-unit.ts';
import { unlessTyped } from '../../ui/typed/unless-typed.ts';
import { say } from '../../words/en/wall/prepare.ts';
import { fieldsStyle } from './prepare-style.ts';

/** What may be spent, in fields; tells of each change by 'budget-change'. Its own are those of what is asked for. */
@customElement('wall-prepare-budget')
export class PrepareBudgetFields extends LitElement {
  static override styles = [
    controls,
    fieldsStyle,
    css`
      p {
        margin: 0;
      }
    `,
  ];

  @property({ attribute: false }) by!: PrepareBy;
  @property({ attribute: false }) budget!: PrepareBudget;
  /** What was typed last and is no amount, and why. */
  @state() private refused: { name: keyof PrepareBudget; text: string; why: string } | null = null;

  /** Where there is no room for both beside each other, the answer is not to be looked for below fields that are all empty. */
  private readonly wide = matchMedia('(min-width: 761px)').matches;

  /** As it is opened or shut from there on. */
  private unfolded = false;

  protected override willUpdate(): void {
    if (!this.hasUpdated) this.unfolded = this.wide || Object.values(this.budget).some((value) => value !== undefined);
  }

  private set(name: keyof PrepareBudget, input: HTMLInputElement): void {
    const { value, problem } = typedNumber(input.value, decimalSign());
    const why = input.value.trim() === '' ? '' : value === null ? problem : budgetProblem(value);
    input.setCustomValidity(why);
    this.refused = why === '' ? null : { name, text: input.value, why };
    if (why !== '') return;
    this.dispatchEvent(new CustomEvent('budget-change', { detail: { ...this.budget, [name]: value ?? undefined } }));
  }

  private field(name: keyof PrepareBudget, label: string, unit = '', usual = say.any) {
    const value = this.budget[name];
    const refused = this.refused?.name === name ? this.refused : null;
    const text = refused?.text ?? (value === undefined ? '' : numberText(value, decimalSign()));
    return html`<label class="amount"><span>${label}</span>
      <input type="text" inputmode="decimal" placeholder=${usual} ${unlessTyped(text)} @change=${(event: Event) => this.set(name, event.target as HTMLInputElement)} />
      <span class="soft">${unit}</span></label>
      ${refused === null ? nothing : html`<p class="small" role="alert">${refused.why}</p>`}`;
  }

  /** What does not count yet, or not for what is asked for. */
  private notes(): string[] {
    const { by, budget } = this;
    const [screens, inks] = [by !== 'inks', by !== 'screens'];
    const [money, hours] = [budget.money !== undefined, budget.hours !== undefined];
    const priced = Boolean(budget.moneyEach) || Boolean(budget.filmMoneyM2);
    return [
      ...(money && screens && !priced ? [say.moneyCountsOnce] : []),
      ...(money && inks && !budget.inkMoneyEach ? [say.inkMoneyCountsOnce] : []),
      ...(hours && screens && !budget.hoursEach ? [say.hoursCountOnce] : []),
      ...(hours && inks && !budget.inkHoursEach ? [say.inkHoursCountOnce] : []),
      ...(screens ? [say.filmPositiveIsAs(numberText(budget.filmMarginMm ?? FILM_MARGIN_MM, decimalSign()))] : []),
      ...(inks ? [say.inksTakeNoFilm] : []),
    ];
  }

  override render() {
    const { by } = this;
    return html`<ps-fold label=${say.atMost} ?open=${this.unfolded}><fieldset aria-label=${say.atMost}>
      ${this.field('screens', by === 'screens' ? say.newScreens : by === 'inks' ? say.newInksAtMost : say.newOnes)}
      ${by === 'inks' ? nothing : this.field('filmM2', say.filmPositives, 'm²')}
      ${this.field('money', say.money)} ${this.field('hours', say.work, say.hours)}
      ${by === 'inks' ? nothing : html`${this.field('filmMarginMm', say.filmBeyondImage, 'mm', String(FILM_MARGIN_MM))} ${this.field('filmMoneyM2', say.filmCosts, say.aSquareMetre, '')} ${this.field('moneyEach', say.screenCosts, '', '')} ${this.field('hoursEach', say.andTakes, say.hours, '')}`}
      ${by === 'screens' ? nothing : html`${this.field('inkMoneyEach', say.inkCosts, '', '')} ${this.field('inkHoursEach', say.andTakes, say.hours, '')}`}
      ${this.notes().map((note) => html`<p class="soft small">${note}</p>`)}
    </fieldset></ps-fold>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-prepare-budget': PrepareBudgetFields;
  }
}
