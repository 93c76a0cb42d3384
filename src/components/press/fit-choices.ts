import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { FitChoice } from '../../engine/output/what-to-drop.ts';
import { JobRun } from '../ui/job-run.ts';
import { controls } from '../ui/styles.ts';
import { fitWords, fitWorth } from './fit-words.ts';
import type { MadePlan } from './plan-run.ts';

/**
 * What would make a visit fit that does not; nothing for one that does.
 * @fires fit CustomEvent<FitChoice>: the one to take
 */
@customElement('ps-fit-choices')
export class FitChoices extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      h3 {
        margin-top: 18px;
      }
      ul {
        margin: 6px 0 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        justify-content: space-between;
        gap: 4px 20px;
        padding: 8px 0;
        border-bottom: 1px solid var(--line);
      }
      li > div {
        flex: 1 1 260px;
      }
      p {
        margin-top: 8px;
      }
    `,
  ];

  @property({ attribute: false }) made!: MadePlan;
  private readonly run = new JobRun<FitChoice[]>(this, 'plan');

  private get late(): boolean {
    return !('rest' in this.made.input) && this.made.plan.done && this.made.plan.times.some((time) => !time.fits);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('made')) return;
    const { input, plan } = this.made;
    if (this.late) void this.run.start(({ engine }, job, tell) => engine.whatToDrop(job, input, plan, tell));
    else this.run.clear();
  }

  override render() {
    if (!this.late) return nothing;
    const { found, refusal, progress } = this.run;
    if (refusal !== '') return html`<p class="soft">${refusal}</p>`;
    if (found === null) {
      return html`<p class="soft" role="status"><progress aria-label="Looking for what to leave out" .value=${progress}></progress> Looking for what to leave out…</p>`;
    }
    if (found.length === 0) {
      return html`<p class="soft">No single change was found that saves time: print fewer recipes.</p>`;
    }
    return html`<h3>What would help</h3>
      <ul>
        ${found.map((choice) => {
          const words = fitWords(choice, this.made);
          return html`<li>
            <div><b>${words}</b><br /><span class="soft small">${fitWorth(choice)}</span></div>
            <button aria-label="${words}: do it" @click=${() => this.dispatchEvent(new CustomEvent<FitChoice>('fit', { detail: choice }))}>Do it</button>
          </li>`;
        })}
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-fit-choices': FitChoices;
  }
}
