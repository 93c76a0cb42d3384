import { entryAt } from '../../base/at.ts';
import { dryingPairs, OVERLAP_TOLERANCE_MM } from '../../order/overlaps.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import type { OnwardMeasures } from './ground.ts';
import { OnwardPainter } from './onward-painter.ts';

/** A sheet as it stands, and the pull that it could take. */
export interface Taker {
  studio: Studio;
  /** What is down, as it was really pulled. */
  pulls: readonly Pull[];
  /** Places, among what is down, of the pulls that are still wet. */
  wet: readonly number[];
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
  /** Which of the wet pulls it would lie on. */
  touches: number[];
}

/** Which of the wet pulls of a sheet another pull would lie on. */
function touchedBy({ studio, pulls, wet, pull }: Taker): number[] {
  if (wet.length === 0) return [];
  const stack = { pulls: [...wet.map((at) => entryAt(pulls, at)), pull] };
  return dryingPairs(stack, studio, { toleranceMm: OVERLAP_TOLERANCE_MM, across: wet.length }).map(({ a }) => entryAt(wet, a));
}

/**
 * What one pull would make of each of several sheets.
 * @yields the share that is done
 * @returns in the order of the sheets
 * @throws what groundOf and dryingPairs throw
 */
export function* takerSteps(sheets: readonly Taker[], look: { heightPx: number; relative: boolean }): Generator<number, Taken[]> {
  const found: Taken[] = [];
  for (const sheet of sheets) {
    const { studio, pulls, pull } = sheet;
    const painter = new OnwardPainter(pulls, studio, look);
    const [now, next] = [painter.paint([]), painter.paint([pull])];
    const size = { widthPx: painter.widthPx, heightPx: look.heightPx };
    const touches = touchedBy(sheet);
    found.push({ ...size, before: now.pixels, after: next.pixels, now: now.measures, next: next.measures, touches });
    yield found.length / sheets.length;
  }
  return found;
}
