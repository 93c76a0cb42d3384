import { html } from 'lit';
import { entryAt } from '../../engine/base/at.ts';
import { roundTo } from '../../engine/base/units.ts';
import type { Screen, Shape } from '../../engine/shapes/types.ts';
import '../ui/kit/number-field.ts';
import { fixed } from '../../engine/words/language.ts';
import { say } from '../words/en/drawer/room.ts';
import type { FilesRead } from './read-files.ts';

/** Below this a shape is most likely smaller than it was meant, mm; no source. */
export const SMALL_MM = 15;
/** What is drawn in px and would be smaller than that comes so long instead, mm: to be seen on any sheet; no source. */
const SEEN_MM = 100;

/** Shapes whose files give no size in a unit of length. */
interface Unsized {
  /** How many they are. */
  count: number;
  /** Longest side of the largest at 96 px to the inch, mm. */
  longestMm: number;
}

/** What of the files gives no size in mm, cm, in, pt or pc; null when each does. */
export function unsizedOf({ shapes, sized }: Pick<FilesRead, 'shapes' | 'sized'>): Unsized | null {
  const sides = shapes.flatMap(({ widthMm, heightMm }, i) => (entryAt(sized, i) ? [] : [Math.max(widthMm, heightMm)]));
  return sides.length === 0 ? null : { count: sides.length, longestMm: Math.max(...sides) };
}

/** How long the largest of them is laid where nobody has said, mm. */
export function usualLongest({ longestMm }: Unsized): number {
  return longestMm < SMALL_MM ? SEEN_MM : longestMm;
}

/**
 * How much larger than in its file each shape is laid: those without a size all by one factor.
 * @param longestMm how long the largest of these comes to be, mm
 */
export function scalesFor(read: Pick<FilesRead, 'shapes' | 'sized'>, longestMm: number | null): number[] {
  const unsized = unsizedOf(read);
  const factor = unsized === null || longestMm === null ? 1 : longestMm / unsized.longestMm;
  return read.sized.map((sized) => (sized ? 1 : factor));
}

/** How long the largest of them is laid now, also after an undo, mm; null when its screen is gone. */
export function longestNow(read: FilesRead, made: readonly string[], screens: readonly Screen[]): number | null {
  const unsized = unsizedOf(read);
  const at = read.sized.indexOf(false);
  const scale = screens.find(({ id }) => id === made[at])?.placed[0]?.scale;
  return unsized === null || scale === undefined ? null : roundTo(unsized.longestMm * scale, 1);
}

/** Asks for the size of drawings whose files give none. @param longestMm as they lie now */
export function askSize({ count, longestMm: drawnMm }: Unsized, longestMm: number, pick: (mm: number) => void) {
  const which = count === 1 ? say.oneFileGives : say.filesGive(count);
  return html`<div class="row unsized">
    <ps-number
      label=${say.longestSideOfLargest(count)}
      unit="mm"
      .min=${1}
      .max=${5000}
      .value=${longestMm}
      @pick=${(event: CustomEvent<number>) => pick(event.detail)}
    ></ps-number>
    ${longestMm === drawnMm ? html`` : html`<button @click=${() => pick(drawnMm)}>${say.asDrawnOnScreen(fixed(drawnMm, 1))}</button>`}
    <span class="soft small">${say.noSizeInMm(which, count)}</span>
  </div>`;
}

/** Whether a shape prints so small that it is to be told. */
export function isSmall({ widthMm, heightMm }: Pick<Shape, 'widthMm' | 'heightMm'>, scale: number): boolean {
  return Math.max(widthMm, heightMm) * scale < SMALL_MM;
}
