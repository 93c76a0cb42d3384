import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { setUpFragment } from '../../../engine/visitfile/set-up-link.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { phoneSetUp } from '../../output/papers/phone-set-up.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import { addressWith, codePicture, outOfReach } from '../../ui/print/code-picture.ts';
import { say } from '../../words/en/press/sheet.ts';

/** Characters of an address that a phone still reads off a screen as a code: more need squares that are too fine (common practice, no source). */
const MOST_SIGNS = 1800;

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
        forced-color-adjust: none;
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

  private get number(): number {
    return entryAt(this.made.plan.cards, this.index).number;
  }

  private show(): void {
    this.address = addressWith(setUpFragment(phoneSetUp(this.made, this.index, this.heading)));
    this.dialog.showModal();
  }

  private code() {
    if (this.address === '') return nothing;
    if (this.address.length > MOST_SIGNS) return html`<p>${say.thisSetUpIs}</p>`;
    return codePicture(this.address, say.codeOfSetUp(this.number));
  }

  override render() {
    return html`<button ?disabled=${this.disabled} @click=${() => this.show()}>${say.onPhone}</button>
      ${dialogBox(
        { heading: say.setUpOnPhone(this.number), closable: true },
        html`${this.code()}
          ${outOfReach() === null ? nothing : html`<p>${outOfReach()}</p>`}
          <p>${say.allOfItStands} <a href=${this.address} target="_blank" rel="noopener">${say.openItHere}</a></p>`,
      )}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-phone-code': PhoneCode;
  }
}
