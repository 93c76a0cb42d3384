import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FitChoice } from '../../../engine/visit/fit-choice.ts';
import { capital } from '../../../engine/words/language.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/progress.ts';
import { controls } from '../../ui/controls-style.ts';
import { rowItems } from '../../ui/layout-style.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/press/plan.ts';
import { fitWords, fitWorth, stepWords, stepWorth } from './fit-words.ts';

/**
 * What would make a visit fit that does not; nothing for one that does.
 * @fires fit CustomEvent<FitChoice>: the one to take
 */
@customElement('press-fit-choices')
export class FitChoices extends LitElement {
  static override styles = [
    controls,
    rowItems,
    css`
      :host {
        display: block;
      }
      h3 {
        margin-top: var(--space-7);
      }
      ul {
        margin-top: var(--space-3);
      }
      li {
        justify-content: space-between;
        gap: var(--space-2) var(--space-8);
        padding: var(--space-4) 0;
        border-bottom: 1px solid var(--line);
      }
      li > div {
        flex: 1 1 260px;
      }
      ol {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      ol li {
        display: block;
        padding: 0 0 var(--space-3);
        border: 0;
      }
      .worth {
        display: block;
      }
      ps-fold {
        margin-top: var(--space-6);
      }
      p {
        margin-top: var(--space-4);
      }
    `,
  ];

  @property({ attribute: false }) made!: MadePlan;
  @state() private stopped = false;
  private readonly run = new Work<FitChoice[]>(this);

  private get late(): boolean {
    return !('rest' in this.made.input) && this.made.plan.done && this.made.plan.times.some((time) => !time.fits);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('made')) return;
    if (this.late) this.look();
    else this.run.clear();
  }

  private look(): void {
    const { input, plan } = this.made;
    this.stopped = false;
    void this.run.start((control) => engineFor('plan').whatToDrop({ input, plan }, control));
  }

  private stop(): void {
    this.run.clear();
    this.stopped = true;
  }

  private choice(choice: FitChoice) {
    const words = fitWords(choice, this.made);
    return html`<li>
      <div>
        ${
          choice.steps.length === 1
            ? html`<b>${words}</b>`
            : html`<ol>
              ${choice.steps.map((step) => {
                const worth = stepWorth(step);
                return html`<li><b>${stepWords(step, this.made)}</b>${worth === '' ? nothing : html`<br /><span class="soft small">${worth}</span>`}</li>`;
              })}
            </ol>`
        }
        <span class="soft small worth">${capital(fitWorth(choice))}</span>
      </div>
      <button aria-label=${say.doItWords(words)} @click=${() => this.dispatchEvent(new CustomEvent<FitChoice>('fit', { detail: choice }))}>${say.doIt}</button>
    </li>`;
  }

  override render() {
    if (!this.late) return nothing;
    if (this.stopped) return html`<p class="soft">${say.searchForWhatTo} <button @click=${() => this.look()}>${say.lookAgain}</button></p>`;
    const { found, failure, progress } = this.run;
    if (failure !== '') return workFailure(this.run);
    if (found === null) {
      return html`<ps-progress label=${say.lookingForWhatTo} words=${say.lookingForWhatToLeave} .value=${progress} @stop=${() => this.stop()}></ps-progress>`;
    }
    if (found.length === 0) {
      return html`<p class="soft">${say.nothingWasFoundThat}</p>`;
    }
    const fitting = found.filter(({ fits }) => fits);
    const helping = found.filter(({ fits }) => !fits);
    return html`${
      fitting.length === 0
        ? nothing
        : html`<h3>${say.whatMakesItFit}</h3>
          <ul>
            ${fitting.map((choice) => this.choice(choice))}
          </ul>`
    }
    ${
      helping.length === 0
        ? nothing
        : html`<ps-fold ?open=${fitting.length === 0} label=${fitting.length === 0 ? say.whatWouldHelp : say.whatHelpsButNot}>
          <ul>
            ${helping.map((choice) => this.choice(choice))}
          </ul>
        </ps-fold>`
    }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-fit-choices': FitChoices;
  }
}
