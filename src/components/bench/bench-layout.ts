import type { Paper } from '../../engine/ink/types.ts';
import { screenOutline } from '../../engine/shapes/place/placed.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import { pathOf, restOutline } from '../ui/print/screen-outline.ts';

/** Longest side of a state in the strip, px: on a wide page and on a narrow one. */
const STATE_PX = 116;
const NARROW_STATE_PX = 100;
const LEAST_STATE_PX = 76;

/** How large a state is shown in the strip, px. */
export function stateSize({ widthMm, heightMm }: Paper, narrow: boolean): { widthPx: number; heightPx: number } {
  const longest = narrow ? NARROW_STATE_PX : STATE_PX;
  const widthPx = Math.max(LEAST_STATE_PX, Math.round(heightMm >= widthMm ? (longest * widthMm) / heightMm : longest));
  return { widthPx, heightPx: (widthPx * heightMm) / widthMm };
}

/** SVG path data of what a pull's screen prints, sheet mm; '' when there is no pull or its screen is gone. */
export function pullOutline(pull: Pull | undefined, studio: Studio): string {
  const screen = studio.screens.find((entry) => entry.id === pull?.screen);
  if (pull === undefined || screen === undefined) return '';
  try {
    return pathOf(screenOutline(restOutline(screen, studio.shapes), pull, studio.paper).rings);
  } catch {
    // The picture tells what is missing.
    return '';
  }
}
