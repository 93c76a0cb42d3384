import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { freeName, type InkDraft, inkOfDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import { INK_MESH } from '../../../engine/ink/film/film-factor.ts';
import type { Mesh } from '../../../engine/ink/film/mesh.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { stackHost } from '../../ui/layout-style.ts';
import { newId } from '../../ui/new-id.ts';
import { say } from '../../words/en/inks/add.ts';
import type { Measurements } from './cgats-file.ts';
import '../mesh/mesh-select.ts';
import { INK_WAYS, type InkWay, type WayProps } from './ink-ways.ts';

/** Makes a new ink in one of several ways. Sends `added` with its id, `dropped` when it is not to be. */
@customElement('add-ink')
export class AddInk extends LitElement {
  static override styles = [
    controls,
    stackHost,
    css`
      .ways {
        display: grid;
        margin: 0;
        padding: 0;
        list-style: none;
      }
      .ways button {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        gap: var(--space-1) var(--space-6);
        width: 100%;
        padding: var(--space-7) 0;
        border: 0;
        border-top: 1px solid var(--line);
        border-radius: 0;
        background: none;
        text-align: left;
      }
      .ways button:hover .name {
        text-decoration: underline;
        text-underline-offset: 3px;
      }
      .ways .name {
        font-weight: 650;
        font-size: var(--type-lead);
      }
      .ways .needs {
        flex-basis: 100%;
      }
      .trust {
        display: inline-flex;
        gap: var(--space-4);
        align-items: center;
        font-size: var(--type-small);
      }
      .bars {
        display: inline-flex;
        gap: var(--space-1);
        flex: none;
      }
      .bars i {
        width: 14px;
        height: 5px;
        background: var(--ink);
        forced-color-adjust: none;
      }
      .bars i.off {
        background: var(--line);
      }
      .head {
        display: grid;
        gap: var(--space-2);
      }
      .head button {
        justify-self: start;
        margin-left: calc(-1 * var(--space-4));
      }
      .out {
        margin-left: calc(-1 * var(--space-4));
      }
      .last {
        display: grid;
        gap: var(--space-6);
        padding-top: var(--space-7);
        border-top: 1px solid var(--line);
      }
      .field {
        display: grid;
        gap: var(--space-2);
        justify-items: stretch;
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  /** A file that was read for an ink before this one. */
  @property({ attribute: false }) measurements: Measurements | null = null;
  @state() private way: InkWay | null = null;
  @state() private draft: InkDraft | null = null;
  @state() private name: string | null = null;
  @state() private mesh: Mesh | null = { ...INK_MESH };
  @state() private stock = false;

  private choose(way: InkWay | null): void {
    this.way = way;
    this.draft = null;
    this.name = null;
  }

  private called(): string {
    const taken = this.store.project.drawer.inks.map((ink) => ink.name);
    return this.name ?? freeName(this.draft?.name ?? say.newInk, taken);
  }

  private add(): void {
    const { draft } = this;
    if (draft === null) return;
    const ink = inkOfDraft(draft, { id: newId(), name: this.called(), mesh: this.mesh, stock: this.stock });
    if (this.store.dispatch({ kind: 'add-ink', ink })) this.dispatchEvent(new CustomEvent<string>('added', { detail: ink.id }));
  }

  private drop(): void {
    this.dispatchEvent(new CustomEvent('dropped'));
  }

  override render() {
    const { way } = this;
    if (way === null) return this.renderWays();
    const props: WayProps = {
      studio: this.store.project.drawer,
      measurements: this.measurements,
      onDraft: (event) => (this.draft = event.detail),
      onRead: (event) => this.dispatchEvent(new CustomEvent('read', { detail: event.detail })),
    };
    return html`
      <div class="head">
        <button class="quiet" @click=${() => this.choose(null)}>${say.otherWays}</button>
        <h2>${way.name}</h2>
        ${trustBars(way)}
      </div>
      ${way.element(props)}
      ${
        way.begun?.(props) === false
          ? html`<div class="row out"><button class="quiet" @click=${this.drop}>${say.cancel}</button></div>`
          : this.renderLast()
      }
    `;
  }

  private renderWays() {
    return html`
      <h2>${say.addInk}</h2>
      <p class="soft">${say.waysToMakeOne}</p>
      <ul class="ways">
        ${INK_WAYS.map(
          (way) => html`<li>
            <button @click=${() => this.choose(way)}>
              <span class="name">${way.name}</span> ${trustBars(way)} <span class="needs soft small">${way.needs}</span>
            </button>
          </li>`,
        )}
      </ul>
      <div class="row out"><button class="quiet" @click=${this.drop}>${say.cancel}</button></div>
    `;
  }

  private renderLast() {
    return html`
      <div class="last">
        <label class="field">
          <span class="small soft">${say.nameOfInk}</span>
          <input type="text" .value=${this.called()} @input=${(event: Event) => (this.name = (event.target as HTMLInputElement).value)} />
        </label>
        <mesh-select label=${say.pulledThroughMesh} none=${say.notKnown} .mesh=${this.mesh} .screens=${this.store.project.drawer.screens} @pick=${(event: CustomEvent<Mesh | null>) => (this.mesh = event.detail)}></mesh-select>
        <label><input type="checkbox" .checked=${this.stock} @change=${(event: Event) => (this.stock = (event.target as HTMLInputElement).checked)} /> ${say.stockInkOnlyFor}</label>
        <div class="row">
          <button class="main" ?disabled=${this.draft === null || this.called().trim() === ''} @click=${this.add}>${say.addInk2}</button>
          <button class="quiet" @click=${this.drop}>${say.cancel}</button>
        </div>
      </div>
    `;
  }
}

function trustBars({ bars, trust }: InkWay) {
  return html`<span class="trust"><span class="bars" aria-hidden="true">${[1, 2, 3].map((bar) => html`<i class=${bar <= bars ? '' : 'off'}></i>`)}</span>${trust}</span>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'add-ink': AddInk;
  }
}
