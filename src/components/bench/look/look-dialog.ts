import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/choice.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import { say } from '../../words/en/bench/look.ts';
import { compareChoice, otherStack } from '../picture/compare-with.ts';
import './films-apart.ts';
import './from-afar.ts';
import './out-of-register.ts';
import './two-prints.ts';
import type { OpenedStack } from '../picture/opened-stack.ts';

type Way = 'apart' | 'two' | 'afar' | 'register';

const WAYS: { value: Way; label: string }[] = [
  { value: 'apart', label: say.filmsApart },
  { value: 'two', label: say.twoPrints },
  { value: 'afar', label: say.fromAfar },
  { value: 'register', label: say.outOfRegister },
];

/**
 * Other ways to look at the stack on the Bench: its films lifted apart, against another print, from a distance, and out of register.
 * @fires compare CustomEvent<string>: what it is to be held against
 */
@customElement('bench-look')
export class BenchLook extends LitElement {
  static override styles = [
    controls,
    fullDialog,
    css`
      dialog[open] {
        display: grid;
        grid-template-rows: auto minmax(var(--least), 1fr);
      }
      header {
        display: grid;
        grid-template-columns: auto auto minmax(0, 1fr) auto;
        align-items: center;
        gap: var(--space-4) var(--space-8);
        padding: var(--space-5) var(--space-8);
        background: var(--table);
        border-bottom: 1px solid var(--line);
      }
      header .close {
        grid-column: -2 / -1;
      }
      header label {
        display: flex;
        align-items: center;
        gap: var(--space-4);
        min-width: 0;
      }
      select {
        min-width: 0;
        max-width: 60vw;
      }
      @media (max-width: 760px) {
        header {
          grid-template-columns: minmax(0, 1fr) auto;
          padding: var(--space-4) var(--space-6);
        }
        header .close {
          grid-row: 1;
        }
        header ps-choice,
        header label {
          grid-column: 1 / -1;
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  /** Where the stack on the Bench came from. */
  @property({ attribute: false }) opened!: OpenedStack;
  /** What is compared with, as `otherStack` takes it. */
  @property() beside = '';
  @state() private way: Way = 'apart';
  @state() private open = false;
  @state() private film: string | null = null;
  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.open = true;
    this.film = null;
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  private content() {
    const { opened, way, store } = this;
    const { bench: pulls, drawer, recipes } = store.project;
    const own = { name: opened.name, pulls, drawer };
    switch (way) {
      case 'apart':
        return html`<bench-films-apart
          .pulls=${own.pulls}
          .drawer=${own.drawer}
          .relative=${store.relative}
          .chosen=${this.film}
          @pull-select=${(event: CustomEvent<string | null>) => (this.film = event.detail)}
        ></bench-films-apart>`;
      case 'two':
        return html`<bench-two-prints .own=${own} .other=${otherStack(this.beside, opened, recipes)} .relative=${store.relative}></bench-two-prints>`;
      case 'register':
        return html`<bench-out-of-register .own=${own} .relative=${store.relative} .holdsMm=${store.project.press.registrationMm}></bench-out-of-register>`;
      case 'afar':
        return html`<bench-from-afar .own=${own} .relative=${store.relative}></bench-from-afar>`;
    }
  }

  override render() {
    const { way, store, beside } = this;
    return html`<dialog aria-label=${say.lookAtPrint} @close=${() => (this.open = false)}>
      <header>
        <h2>${say.lookAtPrint}</h2>
        <ps-choice label=${say.wayToLook} .value=${way} .options=${WAYS} @pick=${(event: CustomEvent<Way>) => (this.way = event.detail)}></ps-choice>
        ${way === 'two' ? compareChoice(beside, store.project.recipes, (chosen) => this.dispatchEvent(new CustomEvent('compare', { detail: chosen }))) : nothing}
        <button class="close" @click=${() => this.dialog.close()}>${say.close}</button>
      </header>
      ${this.open ? this.content() : nothing}
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-look': BenchLook;
  }
}
