import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { FitChoice } from '../../engine/output/what-to-drop.ts';
import { desk, newJob, onMessage, sentenceOf } from '../../workers/client.ts';
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
  @state() private choices: FitChoice[] | null = null;
  @state() private share = 0;
  @state() private fault = '';
  private job: string | null = null;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
  }

  private get late(): boolean {
    return !('rest' in this.made.input) && this.made.plan.done && this.made.plan.times.some((time) => !time.fits);
  }

  private stop(): void {
    if (this.job !== null) void desk('plan').engine.cancel(this.job);
    this.job = null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('made')) return;
    this.stop();
    this.choices = null;
    this.fault = '';
    if (this.late) void this.look();
  }

  private async look(): Promise<void> {
    const job = newJob();
    this.job = job;
    this.share = 0;
    try {
      const choices = await desk('plan').engine.whatToDrop(
        job,
        this.made.input,
        this.made.plan,
        onMessage((share: number) => {
          if (this.job === job) this.share = share;
        }),
      );
      if (this.job === job) this.choices = choices;
    } catch (error) {
      if (this.job === job) this.fault = sentenceOf(error);
    }
    if (this.job === job) this.job = null;
  }

  override render() {
    if (!this.late) return nothing;
    if (this.fault !== '') return html`<p class="soft">${this.fault}</p>`;
    if (this.choices === null) {
      return html`<p class="soft" role="status"><progress aria-label="Looking for what to leave out" .value=${this.share}></progress> Looking for what to leave out…</p>`;
    }
    if (this.choices.length === 0) {
      return html`<p class="soft">No single change was found that saves time: print fewer recipes.</p>`;
    }
    return html`<h3>What would help</h3>
      <ul>
        ${this.choices.map((choice) => {
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
