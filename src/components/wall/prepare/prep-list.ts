import { html } from 'lit';
import { frameState, type Frames } from '../../../engine/explore/prepare/frames.ts';
import { filmOfSheet } from '../../../engine/explore/prepare/prepare.ts';
import { screenOutline, screenRings } from '../../../engine/shapes/place/placed.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { PrepRow } from '../../output/prep-list-pdf.ts';

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

/** Screens of a list, in words, by their numbers. */
export function prepRows(screens: readonly Screen[], studio: Studio, frames: Frames | undefined): PrepRow[] {
  const film = filmOfSheet(studio.paper).toFixed(2);
  return screens
    .toSorted((a, b) => a.number - b.number)
    .map((screen) => ({
      number: String(screen.number),
      name: screen.name,
      shapes: [...new Set(screen.placed.map(({ shape }) => studio.shapes.find(({ id }) => id === shape)?.name ?? shape))].join(', '),
      size: sizeOf(screen, studio),
      mesh: `${screen.mesh.threadsPerCm}/cm, ${screen.mesh.threadUm} µm`,
      film: `${film} m²`,
      state: frameState(screen.id, frames) === 'made' ? 'made' : 'to make',
    }));
}

/** The list as a table. */
export function prepTable(rows: readonly PrepRow[]) {
  return html`<div class="scroll" tabindex="0" role="region" aria-label="Screens to have">
    <table class="list">
      <thead>
        <tr>
          ${['No.', 'Screen', 'Shapes', 'Prints', 'Mesh', 'Film positive', ''].map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ number, name, shapes, size, mesh, film, state }) => html`<tr>
            <th scope="row">${number}</th>
            ${[name, shapes, size, mesh, film, state].map((text) => html`<td>${text}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
