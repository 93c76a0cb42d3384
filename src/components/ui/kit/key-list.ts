import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { say } from '../../words/en/ui/kit.ts';
import { controls } from '../controls-style.ts';

/** A key, or several, and what it does. */
export type KeyWords = readonly [key: string, does: string];

/** What works in every room. */
const EVERYWHERE: readonly KeyWords[] = [
  [say.upAndDownIn, say.oneStepMoreOr],
  [say.ctrlOrAndZ, say.undoWithShiftOr],
  ['?', say.thisHelp],
];

/** All keys of a room, in one list. */
@customElement('ps-key-list')
export class KeyList extends LitElement {
  static override styles = [
    controls,
    css`
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--space-2) var(--space-7);
        margin: 0;
        font-size: var(--type-label);
      }
      @media (max-width: 480px) {
        dl {
          grid-template-columns: minmax(0, 1fr);
          gap: 0;
        }
        dd {
          padding-bottom: var(--space-4);
        }
      }
      dd {
        margin: 0;
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) keys: readonly KeyWords[] = [];

  override render() {
    return html`<dl>${[...this.keys, ...EVERYWHERE].map(([key, does]) => html`<dt>${key}</dt><dd>${does}</dd>`)}</dl>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-key-list': KeyList;
  }
}
