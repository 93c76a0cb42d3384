import { css, html } from 'lit';
import { CARD_BLACK, CARD_WHITE } from '../../../engine/ink/characterise/card.ts';
import { drawdown } from '../../../engine/ink/film/drawdown.ts';
import { swatchOf } from '../../../engine/ink/film/swatch.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { stackHost } from '../../ui/layout-style.ts';
import { markStyles, swatchTemplate } from '../overprint/marked-swatch.ts';

/** The two halves of the contrast card as a screen shows them. */
const CARD_HEX = { white: swatchOf(CARD_WHITE).hex, black: swatchOf(CARD_BLACK).hex };

export const drawdownStyles = css`
  ${markStyles}
  .card {
    display: grid;
    position: relative;
    aspect-ratio: 5 / 4;
    background: linear-gradient(var(--card-white) 0 58%, var(--card-black) 58%);
    forced-color-adjust: none;
    box-shadow: var(--shadow), var(--edge);
  }
  .card .draw {
    position: absolute;
    inset: 11% 14% 9%;
    display: grid;
    grid-template-rows: 58.75% 1fr;
  }
`;

/** A way to an ink that shows its drawdown. */
export const drawdownWay = css`
  ${stackHost}
  ${drawdownStyles}
  .card {
    width: min(190px, 60%);
  }
`;

/** The card's own tones, for the styles. */
export const CARD_STYLE = `--card-white:${CARD_HEX.white};--card-black:${CARD_HEX.black}`;

/** A drawdown: one stroke pulled over the white and the black of a contrast card. */
export function drawdownCard(ink: Pick<Ink, 'kx' | 'sx'>, { strokeGain, surface }: Pick<Studio, 'strokeGain' | 'surface'>) {
  const { white, black } = drawdown(ink, 1, strokeGain, surface);
  return html`<span class="card" style=${CARD_STYLE}><span class="draw">${swatchTemplate(white)}${swatchTemplate(black)}</span></span>`;
}
