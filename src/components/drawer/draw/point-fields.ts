import { html, nothing } from 'lit';
import type { DrawPoint, Handles } from '../../../engine/shapes/draw/curve.ts';
import { kindOf, type PointKind, withHandle } from '../../../engine/shapes/draw/handles.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { say } from '../../words/en/drawer/draw.ts';

interface PointDeeds {
  choose(at: number): void;
  set(point: DrawPoint): void;
  kind(kind: PointKind): void;
  remove(): void;
}

/** Numbers that the board takes, mm. */
const FARTHEST_MM = 5000;

const KINDS: readonly { value: PointKind; label: string }[] = [
  { value: 'corner', label: say.corner },
  { value: 'round', label: say.roundByItself },
  { value: 'smooth', label: say.handlesOnOneLine },
  { value: 'cusp', label: say.handlesEachByItself },
];

/** The chosen point: its kind, place and handles, and the way to the others; new points are of the same kind. */
export function pointFields(
  { points, chosen, round }: { points: readonly DrawPoint[]; chosen: number; round: boolean },
  deeds: PointDeeds,
) {
  const point = points[chosen];
  const to = (by: number): void => deeds.choose((Math.max(chosen, by < 0 ? 0 : -1) + by + points.length) % points.length);
  const kind = point === undefined ? (round ? 'round' : 'corner') : kindOf(point);
  return html`<ps-select
      label=${point === undefined ? say.kindOfNewPoints : say.kindOfPoint}
      .value=${kind}
      .options=${point === undefined ? KINDS.slice(0, 2) : KINDS}
      @pick=${(event: CustomEvent<PointKind>) => deeds.kind(event.detail)}
    ></ps-select>
    <div class="row">
      <span class="soft">${point === undefined ? say.noPointIsChosen : say.pointOf(chosen + 1, points.length)}</span>
      <button type="button" ?disabled=${points.length === 0} aria-label=${say.pointBefore} @click=${() => to(-1)}>←</button>
      <button type="button" ?disabled=${points.length === 0} aria-label=${say.pointAfter} @click=${() => to(1)}>→</button>
      <button type="button" ?disabled=${point === undefined} aria-label=${say.removePoint} @click=${() => deeds.remove()}>${say.remove}</button>
    </div>
    ${
      point === undefined
        ? nothing
        : html`<div class="pair">
            ${numberField(say.right, point.xMm, 0, (xMm) => deeds.set({ ...point, xMm }))}
            ${numberField(say.down, point.yMm, 0, (yMm) => deeds.set({ ...point, yMm }))}
          </div>
          ${handleFields(point, 'into', deeds)} ${handleFields(point, 'out', deeds)}`
    }`;
}

function handleFields(point: DrawPoint, side: keyof Handles, deeds: PointDeeds) {
  if (point.handles === undefined) return nothing;
  const [right, down] = point.handles[side];
  const words = side === 'into' ? say.before : say.after;
  return html`<div class="pair" role="group" aria-label=${side === 'into' ? say.handleBefore : say.handleAfter}>
    ${numberField(say.rightWords(words), right, -FARTHEST_MM, (mm) => deeds.set(withHandle(point, side, [mm, down])))}
    ${numberField(say.downWords(words), down, -FARTHEST_MM, (mm) => deeds.set(withHandle(point, side, [right, mm])))}
  </div>`;
}

function numberField(label: string, value: number, min: number, set: (mm: number) => void) {
  return html`<ps-number label=${label} unit="mm" .value=${value} .min=${min} .max=${FARTHEST_MM} .decimals=${2} @pick=${(event: NumberPick) => set(event.detail)}></ps-number>`;
}
