import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Problem } from '../../../engine/base/error.ts';
import { checkPaper } from '../../../engine/ink/paper/check-paper.ts';
import type { Paper } from '../../../engine/ink/types.ts';
import { StoreElement } from '../../store-element.ts';
import '../../ui/kit/number-field.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import './paper-colour.ts';
import { say } from '../../words/en/inks/paper.ts';

/** The paper: name, colour, sheet and the part of it that can be printed. */
@customElement('paper-form')
export class PaperForm extends StoreElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        gap: var(--space-7) var(--space-10);
        grid-template-columns: repeat(auto-fit, minmax(min(300px, 100%), 1fr));
        align-items: start;
      }
      .words {
        display: grid;
        gap: var(--space-6);
      }
      .name {
        display: grid;
        gap: var(--space-2);
        justify-items: stretch;
      }
      .sizes {
        display: grid;
        grid-template-columns: 120px 1fr;
        gap: var(--space-7);
        align-items: start;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(100px, 1fr));
        gap: var(--space-5) var(--space-6);
      }
      .fields h3 {
        grid-column: 1 / -1;
        font-size: var(--type-label);
      }
      svg {
        display: block;
        width: 100%;
        max-height: 180px;
        filter: var(--shadow-cut);
      }
      @media (max-width: 760px) {
        .sizes {
          grid-template-columns: 64px 1fr;
          gap: var(--space-6);
        }
      }
      .problem {
        grid-column: 1 / -1;
        color: var(--accent);
        font-size: var(--type-small);
      }
    `,
  ];

  @property({ attribute: false }) paper!: Paper;
  /** The paper as typed, while it cannot be saved. */
  @state() private draft: Paper | null = null;
  @state() private problems: Problem[] = [];

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('paper')) return;
    this.draft = null;
    this.problems = [];
  }

  private change(change: Partial<Paper>): void {
    const paper = { ...(this.draft ?? this.paper), ...change };
    this.problems = checkPaper(paper);
    this.draft = paper;
    if (this.problems.length === 0) this.store.dispatch({ kind: 'set-paper', paper });
  }

  private setPrintable(change: Partial<Paper['printable']>): void {
    this.change({ printable: { ...(this.draft ?? this.paper).printable, ...change } });
  }

  override render() {
    const paper = this.draft ?? this.paper;
    const { printable } = paper;
    const mm = (label: string, value: number, set: (value: number) => void, min = 0.1) =>
      html`<ps-number .label=${label} unit="mm" min=${min} max="5000" step="1" .value=${value} @pick=${(event: NumberPick) => set(event.detail)}></ps-number>`;
    return html`
      <div class="words">
        <label class="name">
          <span class="small soft">${say.nameOfPaper}</span>
          <input type="text" .value=${paper.name} @change=${(event: Event) => this.change({ name: (event.target as HTMLInputElement).value.trim() || this.paper.name })} />
        </label>
        <paper-colour .store=${this.store} .paper=${this.paper}></paper-colour>
      </div>
      <div class="sizes">
        <svg viewBox="0 0 ${paper.widthMm} ${paper.heightMm}" aria-hidden="true">
          <rect width="100%" height="100%" fill="var(--stock)" />
          <rect x=${printable.xMm} y=${printable.yMm} width=${Math.max(0, printable.widthMm)} height=${Math.max(0, printable.heightMm)} fill="none" stroke="var(--on-stock-soft)" stroke-dasharray="3 3" vector-effect="non-scaling-stroke" />
        </svg>
        <div class="fields">
          <h3>${say.sheet}</h3>
          ${mm(say.width, paper.widthMm, (widthMm) => this.change({ widthMm }))} ${mm(say.height, paper.heightMm, (heightMm) => this.change({ heightMm }))}
          <h3>${say.printablePart}</h3>
          ${mm(say.fromLeft, printable.xMm, (xMm) => this.setPrintable({ xMm }), 0)} ${mm(say.fromTop, printable.yMm, (yMm) => this.setPrintable({ yMm }), 0)}
          ${mm(say.width, printable.widthMm, (widthMm) => this.setPrintable({ widthMm }))} ${mm(say.height, printable.heightMm, (heightMm) => this.setPrintable({ heightMm }))}
          ${this.problems.map((problem) => html`<p class="problem" role="alert">${say.notSavedYet(problem.message)}</p>`)}
        </div>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'paper-form': PaperForm;
  }
}
