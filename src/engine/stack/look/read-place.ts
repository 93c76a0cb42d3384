import { entryAt, f64, u32 } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import type { Studio } from '../../studio/studio.ts';
import { cellLab } from '../appearance.ts';
import { buildCellMap } from '../cell-map.ts';
import { stackLayers } from '../layers.ts';
import { pullsError } from '../print-error.ts';
import { SpanCache } from '../screen-spans.ts';
import type { CellMap, Stack } from '../types.ts';

/** What lies at one place of a sheet. */
export interface PlaceReading {
  /** D50/2°, relative to a perfect white. */
  lab: Lab;
  /** How far a print may be from it, expected ΔE00; 0 for bare paper. */
  expectedDeltaE: number;
  /** Places in the stack of the pulls that lie there, first down first. */
  pulls: number[];
  /** The colour of the paper there, and after each of those pulls, as `lab`; one more than pulls. */
  after: Lab[];
}

/** Side of the square that is looked at, mm: less than a screen resolves. */
const SIDE_MM = 0.01;

/**
 * The colour of a stack at a place, and the pulls that lie there, one by one.
 * @param at mm from the sheet's top left
 * @param spans of this studio, used again; made anew when left out
 * @throws what `stackLayers` and `SpanCache` throw
 */
export function readPlace(
  studio: Studio,
  stack: Stack,
  at: { xMm: number; yMm: number },
  spans: SpanCache = new SpanCache(studio),
): PlaceReading {
  const box = { xMm: at.xMm - SIDE_MM / 2, yMm: at.yMm - SIDE_MM / 2, widthMm: SIDE_MM, heightMm: SIDE_MM };
  const map = buildCellMap(spans.placeInBox(stack, box, 1), { widthMm: SIDE_MM, heightMm: SIDE_MM, rows: 1 });
  const cell = middleCell(map);
  const layers = stackLayers(stack, studio);
  const colourUnder = (count: number): Lab => {
    const colours = cellLab(map, layers.slice(0, count), studio.paper.reflectance);
    return [f64(colours, cell * 3), f64(colours, cell * 3 + 1), f64(colours, cell * 3 + 2)];
  };
  const covers = (pull: number): boolean => ((u32(map.cover, cell * map.words + (pull >> 5)) >>> (pull & 31)) & 1) === 1;
  const pulls = stack.pulls.flatMap((_, pull) => (covers(pull) ? [pull] : []));
  const { deltaE: expectedDeltaE } = pullsError(
    pulls.map((pull) => entryAt(stack.pulls, pull)),
    studio,
  );
  const after = [colourUnder(0), ...pulls.map((pull) => colourUnder(pull + 1))];
  return { lab: entryAt(after, pulls.length), expectedDeltaE, pulls, after };
}

function middleCell({ runEndMm, runCell }: CellMap): number {
  const run = runEndMm.findIndex((endMm) => endMm > SIDE_MM / 2);
  return run < 0 ? 0 : u32(runCell, run);
}
