import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import type { ReadResult } from '../../engine/recipe/read.ts';
import type { SetUpOnPhone } from '../../engine/visitfile/set-up-link.ts';
import { controls } from '../ui/controls-style.ts';
import { offsetDiagram } from '../ui/print/offset-diagram.ts';
import { CAUTIONS_DEFER } from '../words/cautions.ts';
import { say } from '../words/en/phone/room.ts';

/** A stencil's outline would make the code too fine to read. */
const NO_STENCIL = { path: '', fillRule: 'nonzero' } as const;

/** One set-up on the printer's phone, out of the address alone: nothing is read or kept there. */
@customElement('set-up-page')
export class SetUpPage extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
        max-width: 620px;
        margin: 0 auto;
        padding: var(--space-7) var(--space-7) var(--space-11);
      }
      h1 {
        font-size: var(--type-display);
        line-height: 1.1;
      }
      .screen,
      .ink {
        font-size: var(--type-title);
        font-weight: 650;
      }
      .ink {
        display: flex;
        align-items: center;
        gap: var(--space-5);
      }
      .ink span {
        width: 44px;
        height: 26px;
        box-shadow: var(--edge);
      }
      .offset-diagram {
        display: block;
        width: min(100%, 320px);
        margin: var(--space-6) 0;
      }
      .lines p {
        font-size: var(--type-lead);
        margin-bottom: var(--space-3);
      }
      .lines p:first-child {
        font-size: var(--type-title);
        font-weight: 650;
      }
      h2 {
        margin: var(--space-7) 0 var(--space-4);
      }
      ul {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(86px, 1fr));
        gap: var(--space-3);
        padding: 0;
        list-style: none;
      }
      li label {
        display: flex;
        align-items: center;
        min-height: var(--touch);
        gap: var(--space-4);
        font-size: var(--type-head);
      }
    `,
  ];

  @property({ attribute: false }) found!: ReadResult<SetUpOnPhone>;

  override render() {
    const { value, problems } = this.found;
    if (value === null) return html`<h1>${say.noSetUp}</h1>${problems.map(({ message }) => html`<p role="alert">${message}</p>`)}`;
    const { project, title, tags, screen, ink, hex, lines, parts, offset, paper } = value;
    return html`<p class="soft">${project}</p>
      <h1>${title}</h1>
      <p>${tags}</p>
      <p class="screen">${screen}</p>
      <p class="ink"><span style=${styleMap({ background: hex })}></span>${ink}</p>
      ${offsetDiagram(offset, paper, NO_STENCIL)}
      <div class="lines">${lines.map((line) => html`<p>${line}</p>`)}</div>
      ${parts.map(
        (part) => html`<h2>${part.title}</h2>
          <ul>
            ${part.sheets.map((sheet) => html`<li><label><input type="checkbox" />${sheet}</label></li>`)}
          </ul>`,
      )}
      <p class="soft small">${say.ticksOnThisPage}</p>
      <p>${CAUTIONS_DEFER}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'set-up-page': SetUpPage;
  }
}
