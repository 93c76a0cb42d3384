import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import type { OnwardMeasures } from './ground.ts';
import { OnwardPainter } from './onward-painter.ts';

/** A sheet as it stands, and the pull that it could take. */
export interface Taker {
  studio: Studio;
  /** What is down, as it was really pulled. */
  pulls: readonly Pull[];
  pull: Pull;
}

/** What a pull makes of a sheet. */
export interface Taken {
  /** RGBA bytes, row by row. */
  before: Uint8ClampedArray<ArrayBuffer>;
  after: Uint8ClampedArray<ArrayBuffer>;
  widthPx: number;
  heightPx: number;
  now: OnwardMeasures;
  next: OnwardMeasures;
}

/**
 * What one pull would make of each of several sheets.
 * @yields the share that is done
 * @returns in the order of the sheets
 * @throws what groundOf throws
 */
export function* takerSteps(sheets: readonly Taker[], look: { heightPx: number; relative: boolean }): Generator<number, Taken[]> {
  const found: Taken[] = [];
  for (const { studio, pulls, pull } of sheets) {
    const painter = new OnwardPainter(pulls, studio, look);
    const [now, next] = [painter.paint([]), painter.paint([pull])];
    const size = { widthPx: painter.widthPx, heightPx: look.heightPx };
    found.push({ ...size, before: now.pixels, after: next.pixels, now: now.measures, next: next.measures });
    yield found.length / sheets.length;
  }
  return found;
}
