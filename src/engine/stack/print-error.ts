import { entryAt, f64 } from '../base/at.ts';
import { type ExpectedColour, expectedError, type StackedFilm } from '../ink/certainty/expected-error.ts';
import { filmFactor } from '../ink/film/film-factor.ts';
import type { Studio } from '../studio/studio.ts';
import { unknownInk, unknownScreen } from '../studio/unknown-screen.ts';
import { buildCellMap } from './cell-map.ts';
import { pullsOfCell } from './overlap-areas.ts';
import { placedSpans } from './screen-spans.ts';
import type { Pull, Stack } from './types.ts';

/** Rows of the sheet that are looked at. */
const ROWS = 300;

/** How far a print may be from its prediction. */
export interface PrintError {
  /** Expected ΔE00, mean over the printed area. */
  mean: number;
  /** The largest of all places of a square millimetre or more. */
  most: number;
}

/**
 * The colour of a place with its expected error.
 * @param pulls those that lie there, first down first
 * @throws EngineError 'stack.unknown-screen', 'stack.unknown-ink' and as filmFactor
 */
export function pullsError(pulls: readonly Pull[], studio: Studio): ExpectedColour {
  return expectedError(filmsOf(pulls, studio), studio);
}

/**
 * How far a whole print may be from its prediction.
 * @returns 0 both for bare paper
 * @throws EngineError as pullsError and placedSpans
 */
export function printError(stack: Stack, studio: Studio): PrintError {
  const { widthMm, heightMm } = studio.paper;
  const grid = { widthMm, heightMm, rows: ROWS };
  const map = buildCellMap(placedSpans(stack, studio, grid), grid);
  const films = filmsOf(stack.pulls, studio);
  let area = 0;
  let sum = 0;
  let most = 0;
  for (let cell = 1; cell < map.cells; cell++) {
    const mm2 = f64(map.areaMm2, cell);
    const here = pullsOfCell(map, cell).map((pull) => entryAt(films, pull));
    if (here.length === 0 || mm2 <= 0) continue;
    const { deltaE } = expectedError(here, studio);
    area += mm2;
    sum += mm2 * deltaE;
    if (mm2 >= 1) most = Math.max(most, deltaE);
  }
  return { mean: area > 0 ? sum / area : 0, most };
}

function filmsOf(pulls: readonly Pull[], { inks, screens, strokeGain }: Studio): StackedFilm[] {
  return pulls.map((pull, index) => {
    const ink = inks.find(({ id }) => id === pull.ink);
    if (ink === undefined) throw unknownInk(pull, index);
    const screen = screens.find(({ id }) => id === pull.screen);
    if (screen === undefined) throw unknownScreen(pull, index);
    return { ink, thickness: filmFactor(ink, screen.mesh, pull.strokes, strokeGain) };
  });
}
