import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { demoInks } from '../../../engine/ink/demo/demo-inks.ts';
import '../theme.css';
import './choice.ts';
import './empty.ts';
import './fold.ts';
import './ink-chip.ts';
import './key-list.ts';
import './number-field.ts';
import './problem.ts';
import './progress.ts';
import './select.ts';
import { controls } from '../controls-style.ts';
import { dialogStyle } from './dialog-style.ts';
import { dialogBox } from './dialog.ts';
import type { KeyWords } from './key-list.ts';

/** A kit element in its states, each by name. */
type Specimen = readonly [element: string, states: Readonly<Record<string, TemplateResult>>];

const STOCKS = [
  { value: 'smooth', label: 'Smooth' },
  { value: 'rough', label: 'Rough', title: 'Takes more ink' },
];
const SIDES = [...STOCKS, { value: 'none', label: 'None', disabled: true }];
const [INK] = demoInks();
const KEYS: readonly KeyWords[] = [['K', 'keep the print']];

/** The page of the kit: every element in every state, to be looked at in both themes. */
@customElement('ps-kit-page')
export class KitPage extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      :host {
        display: grid;
        gap: var(--space-9);
        max-width: 1080px;
        margin: 0 auto;
        padding: var(--space-9) var(--space-7);
      }
      section {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(280px, 100%), 1fr));
        gap: var(--space-7) var(--space-9);
        align-items: start;
        padding-top: var(--space-6);
        border-top: 1px solid var(--line);
      }
      section > h2 {
        grid-column: 1 / -1;
      }
      figure {
        margin: 0;
        min-width: 0;
      }
      figcaption {
        margin-bottom: var(--space-4);
        font-size: var(--type-fine);
        color: var(--ink-soft);
      }
    `,
  ];

  @state() private stock = 'smooth';
  @state() private copies = 4;
  @state() private stopped = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  private specimens(): readonly Specimen[] {
    const stock = (event: CustomEvent<string>) => (this.stock = event.detail);
    const copies = (event: CustomEvent<number>) => (this.copies = event.detail);
    return [
      [
        'ps-number',
        {
          rest: html`<ps-number label="Copies" unit="sheets" min="1" max="20" .value=${this.copies} @pick=${copies}></ps-number>`,
          steps: html`<ps-number live label="Copies, stepped" min="1" max="20" .stepNames=${['Fewer', 'More'] as const} .value=${this.copies} @pick=${copies}></ps-number>`,
          whole: html`<ps-number whole label-hidden label="Copies, whole" min="1" max="20" .stepNames=${['One fewer', 'One up'] as const} .value=${this.copies} @pick=${copies}></ps-number>`,
          disabled: html`<ps-number disabled label="Copies, not now" unit="sheets" .value=${4}></ps-number>`,
          problem: html`<ps-number data-typed="30" label="Copies, too many" unit="sheets" min="1" max="20" .value=${4}></ps-number>`,
        },
      ],
      [
        'ps-select',
        {
          rest: html`<ps-select label="Paper" .options=${STOCKS} .value=${this.stock} @pick=${stock}></ps-select>`,
          grouped: html`<ps-select label="Paper, by kind" .options=${[{ label: 'Of rag', options: STOCKS }]} .value=${this.stock} @pick=${stock}></ps-select>`,
          disabled: html`<ps-select disabled label="Paper, not now" .options=${STOCKS} .value=${this.stock}></ps-select>`,
        },
      ],
      [
        'ps-choice',
        {
          rest: html`<ps-choice label="Side" .options=${STOCKS} .value=${this.stock} @pick=${stock}></ps-choice>`,
          disabled: html`<ps-choice label="Side, one not now" .options=${SIDES} .value=${this.stock} @pick=${stock}></ps-choice>`,
        },
      ],
      ['ps-fold', this.folds()],
      ['ps-ink-chip', { rest: html`<ps-ink-chip .ink=${INK}></ps-ink-chip>`, empty: html`<ps-ink-chip></ps-ink-chip> no ink` }],
      ['ps-problem', { rest: html`<ps-problem>The file ends in line 3; save it again and read it once more.</ps-problem>` }],
      [
        'ps-empty',
        {
          rest: html`<ps-empty heading="Nothing kept yet">Keep a print on the Wall. <button slot="actions" class="main">Go to the Wall</button></ps-empty>`,
          centred: html`<ps-empty centred heading="Nothing kept yet">Keep a print on the Wall.</ps-empty>`,
        },
      ],
      [
        'ps-progress',
        {
          rest: html`<ps-progress label="Looking" .value=${0.4} words=${this.stopped ? 'Stopped.' : '40 % looked at'} @stop=${() => (this.stopped = true)}></ps-progress>`,
          busy: html`<ps-progress label="Looking, nobody knows how long" words="Looking…"></ps-progress>`,
          unstoppable: html`<ps-progress label="Saving" .value=${0.9} stop=""></ps-progress>`,
        },
      ],
      ...this.dialogs(),
    ];
  }

  private dialogs(): readonly Specimen[] {
    return [
      [
        'ps-key-list',
        {
          rest: html`<ps-key-list .keys=${KEYS}></ps-key-list>`,
        },
      ],
      [
        'dialog',
        {
          rest: html`<button @click=${() => this.dialog.showModal()}>Ask for a title</button>
            ${dialogBox({ heading: 'Keep this print', closable: true }, this.asked())}`,
        },
      ],
    ];
  }

  private folds() {
    return {
      rest: html`<ps-fold label="Figures" note="as they are">Inside.</ps-fold>`,
      open: html`<ps-fold open label="Figures, open" note="as they are">Inside.</ps-fold>`,
      ruled: html`<ps-fold ruled label="Figures, ruled" note="as they are">Inside.</ps-fold>`,
      set: html`<ps-fold quiet strong label="Figures, set" note="two set">Inside.</ps-fold>`,
    };
  }

  /** A refused number shows only when one was typed. */
  protected override firstUpdated(): void {
    void this.updateComplete.then(() => {
      for (const field of this.renderRoot.querySelectorAll<HTMLElement>('[data-typed]')) {
        const input = field.shadowRoot?.querySelector('input');
        if (input == null) continue;
        input.value = field.dataset['typed'] ?? '';
        input.dispatchEvent(new Event('change'));
      }
    });
  }

  private asked() {
    return html`<form @submit=${this.onKeep}>
      <label class="stacked">Title <input type="text" /></label>
      <div class="buttons"><button class="main">Keep</button></div>
    </form>`;
  }

  private onKeep(event: Event): void {
    event.preventDefault();
    this.dialog.close();
  }

  override render() {
    return html`<h1>Kit</h1>
      ${this.specimens().map(
        ([element, states]) => html`<section data-kit=${element} aria-label=${element}>
          <h2>${element}</h2>
          ${Object.entries(states).map(([name, shown]) => html`<figure data-state=${name}><figcaption>${name}</figcaption>${shown}</figure>`)}
        </section>`,
      )}`;
  }
}

document.body.append(document.createElement('ps-kit-page'));

declare global {
  interface HTMLElementTagNameMap {
    'ps-kit-page': KitPage;
  }
}
