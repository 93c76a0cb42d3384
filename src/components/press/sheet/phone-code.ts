import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { encode } from 'uqr';
import { setUpFragment } from '../../../engine/visitfile/set-up-link.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { phoneSetUp } from '../../output/papers/phone-set-up.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';

/** Characters of an address that a phone still reads off a screen as a code: more need squares that are too fine (common practice, no source). */
const MOST_SIGNS = 1800;
/** Addresses that mean this very device wherever they are opened. */
const HERE_ALONE = /^(localhost|127\.|\[::1\])/;

/** A set-up on the printer's phone: a code to scan, in which all of it stands. */
@customElement('press-phone-code')
export class PhoneCode extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      dialog {
        --dialog-width: 460px;
      }
      svg {
        display: block;
        width: 100%;
        background: var(--white);
      }
      p {
        margin-top: var(--space-5);
      }
    `,
  ];

  @property({ attribute: false }) made!: MadePlan;
  /** Index of the set-up. */
  @property({ type: Number }) index = 0;
  @property() heading = '';
  @property({ type: Boolean }) disabled = false;
  @state() private address = '';
  @query('dialog') private dialog!: HTMLDialogElement;

  private show(): void {
    this.address = `${location.origin}${location.pathname}${setUpFragment(phoneSetUp(this.made, this.index, this.heading))}`;
    this.dialog.showModal();
  }

  private code() {
    if (this.address === '') return nothing;
    if (this.address.length > MOST_SIGNS)
      return html`<p>This set-up is too long for a code that a phone can read: print its card, or save it as a PDF.</p>`;
    const { data, size } = encode(this.address, { ecc: 'L', border: 4 });
    let path = '';
    for (const [y, row] of data.entries()) for (const [x, dark] of row.entries()) if (dark) path += `M${x} ${y}h1v1h-1z`;
    return html`<svg viewBox="0 0 ${size} ${size}" role="img" aria-label="Code of set-up ${this.index + 1}" shape-rendering="crispEdges">
      ${svg`<path d=${path} fill="var(--black)" />`}
    </svg>`;
  }

  override render() {
    return html`<button ?disabled=${this.disabled} @click=${() => this.show()}>On a phone…</button>
      ${dialogBox(
        { heading: `Set-up ${this.index + 1} on a phone`, closable: true },
        html`${this.code()}
          ${
            HERE_ALONE.test(location.host)
              ? html`<p>A phone cannot reach ${location.host}: open the app from an address that the phone can reach too, and show the code there.</p>`
              : nothing
          }
          <p>All of it stands in the address behind the sign #, which no server is told. <a href=${this.address} target="_blank" rel="noopener">Open it here</a></p>`,
      )}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-phone-code': PhoneCode;
  }
}
