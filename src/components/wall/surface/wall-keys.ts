import { css, html, LitElement } from 'lit';
import { customElement, query } from 'lit/decorators.js';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';

const KEYS: readonly (readonly [string, string])[] = [
  ['Arrows', 'to the next print that way'],
  ['Home, End, Page Up, Page Down', 'first, last, and by three rows'],
  ['Enter', 'open on the Bench'],
  ['B', 'build up'],
  ['K', 'keep in the Chest'],
  ['Space bar', 'select, or take out of the selection'],
  ['D', 'differences: compare the selected prints'],
  ['H', 'pin: hang first on this wall and the next, never filtered away'],
  ['F', 'filter'],
  ['S', 'save this print as a picture'],
  ['+ and −', 'closer and further'],
  ['0', 'the whole wall'],
  ['Shift and drag', 'select the prints in a box'],
  ['Escape', 'close what is open, then select none'],
  ['?', 'this list'],
];

/** The keys of the wall, in a list. */
@customElement('wall-keys')
export class WallKeys extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--space-2) var(--space-7);
        margin: 0;
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
    return dialogBox(
      { heading: 'Keys of the wall', closable: true },
      html`<dl>${KEYS.map(([key, action]) => html`<dt>${key}</dt><dd>${action}</dd>`)}</dl>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-keys': WallKeys;
  }
}
