import { html, nothing } from 'lit';
import type { DrawPoint } from '../../../engine/shapes/draw/curve.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';

interface PointDeeds {
  choose(at: number): void;
  set(part: Partial<DrawPoint>): void;
  remove(): void;
}

/** Numbers that the board takes, mm. */
const FARTHEST_MM = 5000;

const KINDS = [
  { value: 'corner', label: 'Corner' },
  { value: 'round', label: 'Round' },
];

/** The chosen point: its kind and place, and the way to the others; new points are of the same kind. */
export function pointFields(
  { points, chosen, round }: { points: readonly DrawPoint[]; chosen: number; round: boolean },
  deeds: PointDeeds,
) {
  const point = points[chosen];
  const to = (by: number): void => deeds.choose((Math.max(chosen, by < 0 ? 0 : -1) + by + points.length) % points.length);
  return html`<ps-choice
      label="Kind of point"
      .value=${round ? 'round' : 'corner'}
      .options=${KINDS}
      @pick=${(event: CustomEvent<string>) => deeds.set({ round: event.detail === 'round' })}
    ></ps-choice>
    <div class="row">
      <span class="soft">${point === undefined ? 'No point is chosen' : `Point ${chosen + 1} of ${points.length}`}</span>
      <button type="button" ?disabled=${points.length === 0} aria-label="Point before" @click=${() => to(-1)}>←</button>
      <button type="button" ?disabled=${points.length === 0} aria-label="Point after" @click=${() => to(1)}>→</button>
      <button type="button" ?disabled=${point === undefined} @click=${() => deeds.remove()}>Remove point</button>
    </div>
    ${
      point === undefined
        ? nothing
        : html`<div class="pair">
          <ps-number label="Right" unit="mm" .value=${point.xMm} .min=${0} .max=${FARTHEST_MM} .decimals=${2} @pick=${(event: NumberPick) => deeds.set({ xMm: event.detail })}></ps-number>
          <ps-number label="Down" unit="mm" .value=${point.yMm} .min=${0} .max=${FARTHEST_MM} .decimals=${2} @pick=${(event: NumberPick) => deeds.set({ yMm: event.detail })}></ps-number>
        </div>`
    }`;
}
