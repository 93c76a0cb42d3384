import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import type { Ink } from '../../../engine/ink/types.ts';

const hexes = new WeakMap<Ink, { overWhite: string; overBlack: string }>();

/** What an ink that is gone from the drawer is drawn in. */
export const GONE_INK_HEX = '#888888';

/** The screen colours of one stroke of an ink over white and over black. */
export function inkHexes(ink: Ink): { overWhite: string; overBlack: string } {
  let found = hexes.get(ink);
  if (found === undefined) {
    found = { overWhite: srgbHexFromLab(ink.overWhite), overBlack: srgbHexFromLab(ink.overBlack) };
    hexes.set(ink, found);
  }
  return found;
}

/** The colour of numbers written on one stroke of an ink over white; on the bare sheet where there is none. */
export function writingOn(ink: Ink | undefined): string {
  return (ink?.overWhite[0] ?? 100) > 55 ? 'var(--on-light-ink)' : 'var(--on-dark-ink)';
}

/** One stroke of an ink on a contrast card: over white on the left, over black on the right. */
@customElement('ps-ink-chip')
export class InkChip extends LitElement {
  static override styles = css`
    :host {
      display: inline-block;
      width: 34px;
      height: 18px;
      flex: none;
    }
    svg {
      display: block;
      width: 100%;
      height: 100%;
      outline: 1px solid color-mix(in srgb, var(--ink) 28%, transparent);
    }
  `;

  @property({ attribute: false }) ink: Ink | undefined;

  override render() {
    if (this.ink === undefined) return html``;
    const { overWhite, overBlack } = inkHexes(this.ink);
    // The card shows at the top and bottom edge, so that one sees what the ink lies over.
    return html`<svg viewBox="0 0 34 18" preserveAspectRatio="none" aria-hidden="true">
      <rect width="17" height="18" fill="var(--white)" />
      <rect x="17" width="17" height="18" fill="var(--on-light-ink)" />
      <rect y="3" width="17" height="12" fill=${overWhite} />
      <rect x="17" y="3" width="17" height="12" fill=${overBlack} />
    </svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-ink-chip': InkChip;
  }
}
