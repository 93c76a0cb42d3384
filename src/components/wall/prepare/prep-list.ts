import { html, nothing } from 'lit';
import { defined } from '../../../engine/base/at.ts';
import { filmOfScreen, type PrepareBudget } from '../../../engine/explore/prepare/budget.ts';
import { frameState, type Frames, type FrameState, isAtHand } from '../../../engine/explore/prepare/frames.ts';
import { isMirrored } from '../../../engine/shapes/place/mirrored.ts';
import { screenOutline, screenRings } from '../../../engine/shapes/place/placed.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed } from '../../../engine/words/language.ts';
import type { PrepRow } from '../../output/prep-list-pdf.ts';
import { say } from '../../words/en/wall/prepare.ts';
import { TURNED_OVER } from '../../words/film-words.ts';
import { frameWord } from '../../words/frame-words.ts';

const AT_REST = { dxMm: 0, dyMm: 0, turnDeg: 0 };

/** Width and height of what a screen prints on the sheet, mm. */
function sizeOf(screen: Screen, { shapes, paper }: Studio): string {
  const { rings } = screenOutline(screenRings(screen, shapes), AT_REST, paper);
  const points = rings.flatMap((ring) => Array.from(ring));
  const along = (axis: number): number => {
    const values = points.filter((_, i) => i % 2 === axis);
    return values.length === 0 ? 0 : Math.round(Math.max(...values) - Math.min(...values));
  };
  return `${along(0)} × ${along(1)} mm`;
}

/** How a screen of the list stands: one that was not spoken of is to make. */
function toBe(screen: string, frames: Frames | undefined): FrameState {
  return isAtHand(screen, frames) ? frameState(screen, frames) : 'to make';
}

/** '260 × 180 mm, 0.05 m²'. */
function filmOf(screen: Screen, studio: Studio, marginMm: number | undefined): string {
  const { widthMm, heightMm } = filmOfScreen(screen, studio, marginMm);
  return say.filmIs(Math.ceil(widthMm), Math.ceil(heightMm), fixed((widthMm * heightMm) / 1e6, 2));
}

/** Screens of a list, in words, by their numbers. */
export function prepRows(
  screens: readonly Screen[],
  studio: Studio,
  frames: Frames | undefined,
  { filmMarginMm }: PrepareBudget,
): PrepRow[] {
  return screens
    .toSorted((a, b) => a.number - b.number)
    .map((screen) => ({
      number: String(screen.number),
      name: screen.name,
      shapes: [...new Set(screen.placed.map(({ shape }) => studio.shapes.find(({ id }) => id === shape)?.name ?? shape))].join(', '),
      size: sizeOf(screen, studio),
      mesh: `${screen.mesh.threadsPerCm}/cm, ${screen.mesh.threadUm} µm`,
      film: filmOf(screen, studio, filmMarginMm) + (isMirrored(screen) ? `, ${TURNED_OVER}` : ''),
      state: toBe(screen.id, frames),
    }));
}

const HEADS = [say.no2, say.screen, say.shapes, say.prints, say.mesh, say.filmPositive, say.state] as const;

/** The list as a table; where there is no room for columns, a line of each row says what it is. */
export function prepTable(rows: readonly PrepRow[]) {
  const cells = ({ name, shapes, size, mesh, film, state }: PrepRow): string[] => [name, shapes, size, mesh, film, frameWord(state)];
  const part = (i: number): string => (i === 0 ? 'name' : i === HEADS.length - 2 ? 'state' : 'fact');
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${say.screensToHave}>
    <table class="list" role="table">
      <thead role="rowgroup">
        <tr role="row">
          ${HEADS.map((head) => html`<th scope="col" role="columnheader">${head}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${rows.map(
          (row) => html`<tr role="row">
            <th scope="row" role="rowheader">${row.number}</th>
            ${cells(row).map((text, i) => html`<td role="cell" data-head=${defined(HEADS[i + 1])} data-part=${part(i)} data-frame=${part(i) === 'state' ? row.state : nothing}>${text}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
