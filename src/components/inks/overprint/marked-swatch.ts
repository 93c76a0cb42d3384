import { css, html, nothing } from 'lit';
import type { Swatch } from '../../../engine/ink/film/swatch.ts';
import { say } from '../../words/en/inks/overprint.ts';

/** What the corner of a swatch says. */
export const OUTSIDE_WORDS = say.moreColourfulInPrint;

/** A swatch, and the small corner of one that the screen cannot show. */
export const markStyles = css`
  .swatch {
    position: relative;
  }
  .outside::after {
    content: '';
    position: absolute;
    top: 0;
    right: 0;
    border: 5px solid;
    border-color: var(--stock) var(--stock) transparent transparent;
    filter: var(--shadow-corner);
    pointer-events: none;
  }
`;

/** One swatch; a small corner says that the screen shows less colour than the print has. */
export function swatchTemplate(swatch: Pick<Swatch, 'hex' | 'inGamut'>, classes = '') {
  return html`<span
    class="swatch ${classes} ${swatch.inGamut ? '' : 'outside'}"
    style="background:${swatch.hex}"
    title=${swatch.inGamut ? nothing : OUTSIDE_WORDS}
  ></span>`;
}
