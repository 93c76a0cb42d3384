import { css, html } from 'lit';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import type { Ink } from '../../../engine/ink/types.ts';

/** An ink as it looks drawn down on a contrast card: over white and over black. */
export function inkChip(ink: Ink | undefined) {
  if (ink === undefined) return html`<span class="chip" aria-hidden="true"></span>`;
  return html`<span class="chip" aria-hidden="true">
    <i style="background:${srgbHexFromLab(ink.overWhite)}"></i><i style="background:${srgbHexFromLab(ink.overBlack)}"></i>
  </span>`;
}

export const inkChipStyles = css`
  .chip {
    flex: none;
    display: inline-grid;
    grid-template-rows: 1fr 1fr;
    width: 22px;
    height: 22px;
    padding-left: var(--space-2);
    background: linear-gradient(var(--white) 50%, var(--on-light-ink) 50%);
    forced-color-adjust: none;
    outline: 1px solid var(--line);
    outline-offset: -1px;
  }
  .chip i {
    display: block;
  }
`;
