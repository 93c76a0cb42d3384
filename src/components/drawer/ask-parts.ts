import { html, nothing, svg } from 'lit';
import { live } from 'lit/directives/live.js';
import { shapeBounds } from '../../engine/geometry/rings.ts';
import type { ShapeOf } from '../../engine/shapes/read/parts.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import { say } from '../words/en/drawer/room.ts';
import { outlinePath } from './outline-path.ts';
import type { Divided, FilesRead } from './read-files.ts';

const EACH: Readonly<Record<ShapeOf, string>> = { drawing: say.oneShape, group: say.shapeGroup, colour: say.shapeColour };

/** Tones that tell the shapes of one picture apart; with more they come round again. */
const TONES = 5;

function picture(shapes: readonly Shape[]) {
  const { xMm, yMm, widthMm, heightMm } = shapeBounds(shapes.flatMap(({ rings }) => rings));
  return html`<svg viewBox="${xMm} ${yMm} ${widthMm} ${heightMm}" aria-hidden="true">
    ${shapes.map((shape, i) => svg`<path class="tone${i % TONES}" d=${outlinePath(shape).d} />`)}
  </svg>`;
}

/**
 * Asks for each file of several groups or colours what becomes a shape, with a picture of each way.
 * @param pick told which file, by its place, and what of it becomes a shape
 */
export function askParts({ divided }: FilesRead, pick: (at: number, each: ShapeOf) => void) {
  return divided.map((one, at) => askOne(one, (each) => pick(at, each)));
}

function askOne({ file, ways, each }: Divided, pick: (each: ShapeOf) => void) {
  return html`<fieldset class="parts">
    <legend>${say.whatOfBecomesShape(file.name)}</legend>
    <div class="ways">
      ${(['drawing', 'group', 'colour'] as const).map((way) => {
        const shapes = ways[way];
        if (shapes === undefined) return nothing;
        return html`<label class="way">
          <input type="radio" name="parts-${file.name}" .checked=${live(way === each)} @change=${() => pick(way)} />
          ${picture(shapes)}
          <span>${EACH[way]}</span>
          <span class="soft small">${shapes.length === 1 ? say.oneScreen : say.screens(shapes.length)}</span>
        </label>`;
      })}
    </div>
  </fieldset>`;
}
