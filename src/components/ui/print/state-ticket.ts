import { html, nothing } from 'lit';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import '../kit/ink-chip.ts';
import { say } from '../../words/en/ui/print.ts';
import { offsetText } from '../words.ts';
import { screenGlyph } from './screen-outline.ts';

/** An offset in the width of a state: from 100 mm on in whole ones, as its tenths stand in the panel and the tooltip. */
const shortOffset = (mm: number): string => (Math.abs(mm) < 99.95 ? offsetText(mm) : offsetText(mm).replace(/\.\d$/u, ''));

/** What stands under a state: its screen, ink, strokes and offset, and the handle that a finger drags it by. */
export function ticketOf(pull: Pull, studio: Studio) {
  const screen = studio.screens.find((entry) => entry.id === pull.screen);
  const ink = studio.inks.find((entry) => entry.id === pull.ink);
  const still = pull.dxMm === 0 && pull.dyMm === 0;
  const turn = pull.turnDeg === 0 ? '' : `${String(pull.turnDeg).replace('-', '−')}°`;
  const offset = still ? (turn === '' ? say.noOffset : say.turned) : `${shortOffset(pull.dxMm)} ${shortOffset(pull.dyMm)} mm`;
  return html`<div class="ticket">
      <div class="line"><span class="number">${screen?.number ?? '?'}</span>${screenGlyph(screen, studio)}</div>
      <div class="line"><ps-ink-chip .ink=${ink}></ps-ink-chip>${turn}<span class="strokes">×${pull.strokes}</span></div>
      <div class="line offset" title=${still ? nothing : say.mmRightMmDown(offsetText(pull.dxMm), offsetText(pull.dyMm))}>${offset}</div>
    </div>
    <div class="handle" aria-hidden="true">
      <svg viewBox="0 0 22 10" fill="none" stroke="currentColor" stroke-width="1.5"><path d="M1 1h20M1 5h20M1 9h20" /></svg>
    </div>`;
}
