import { css, html, LitElement } from 'lit';
import { customElement, query } from 'lit/decorators.js';
import { controls } from '../../ui/controls-style.ts';

const KEYS: readonly (readonly [string, string])[] = [
  ['Arrows', 'to the next print that way'],
  ['Home, End, Page Up, Page Down', 'first, last, and by three rows'],
  ['Enter', 'open on the Bench'],
  ['B', 'build up'],
  ['K', 'keep in the Chest'],
  ['M', 'mark, or take the mark off'],
  ['P', 'pin: first on this wall and the next, never filtered away'],
  ['C', 'compare the marked prints'],
  ['F', 'filter'],
  ['S', 'save this print as a picture'],
  ['+ and −', 'closer and further'],
  ['0', 'the whole wall'],
  ['Shift and drag', 'mark the prints in a box'],
  ['Escape', 'close what is open, then take marks off'],
];

/** The keys of the wall, in a list. */
@customElement('wall-keys')
export class WallKeys extends LitElement {
  static override styles = [
    controls,
    css`
      dialog {
        width: min(560px, calc(100vw - 24px));
        padding: var(--space-8) var(--space-8);
        border: 1px solid var(--line);
        background: var(--table);
        color: var(--ink);
      }
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--space-2) var(--space-7);
        margin: var(--space-6) 0 var(--space-7);
        font-size: var(--type-label);
      }
      dd {
        margin: 0;
        color: var(--ink-soft);
      }
    `,
  ];

  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.dialog.showModal();
  }

  override render() {
    return html`<dialog aria-label="Keys of the wall">
      <h2>Keys of the wall</h2>
      <dl>${KEYS.map(([key, action]) => html`<dt>${key}</dt><dd>${action}</dd>`)}</dl>
      <button @click=${() => this.dialog.close()}>Close</button>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-keys': WallKeys;
  }
}
