import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { unionOutlines } from '../../geometry/booleans.ts';
import { compose, mapRings, placeRings, turnAbout } from '../../geometry/rings.ts';
import type { Affine } from '../../geometry/rings.ts';
import type { FillRule } from '../../geometry/types.ts';
import type { Screen, Shape } from '../types.ts';
import { say } from '../../words/en/shapes/place.ts';

/** Outlines on the sheet, mm from its top left. */
export interface SheetOutline {
  rings: Float64Array[];
  fillRule: FillRule;
}

/** The drawer's shapes, as a list or by id. */
export type ShapeSource = readonly Shape[] | ReadonlyMap<string, Shape>;

/** How a pull lays a screen on the sheet. */
export interface ScreenOffset {
  /** To the right, mm. */
  dxMm: number;
  /** Downwards, mm. */
  dyMm: number;
  /** Clockwise about the sheet's centre, degrees. */
  turnDeg: number;
}

/**
 * What a screen prints at offset 0, 0 without turn: all of its placed shapes, in sheet mm.
 * Several shapes are joined so that their overlaps count once.
 * @throws EngineError 'screen.unknown-shape' when a placed shape is not in the drawer,
 *   'screen.too-much-work' where joining them would take many seconds
 */
export function screenRings(
  screen: Pick<Screen, 'number' | 'placed'>,
  shapes: ShapeSource,
): SheetOutline {
  const outlines = placedOutlines(screen, shapes);
  if (outlines.length === 0) return { rings: [], fillRule: 'nonzero' };
  if (outlines.length === 1) return entryAt(outlines, 0);
  return { rings: joined(outlines, screen), fillRule: 'nonzero' };
}

/**
 * Each placed shape by itself, in sheet mm.
 * @throws EngineError 'screen.unknown-shape' when one is not in the drawer
 */
export function placedOutlines(screen: Pick<Screen, 'number' | 'placed'>, shapes: ShapeSource): SheetOutline[] {
  return screen.placed.map((placed) => {
    const shape = findShape(shapes, placed.shape);
    if (shape === undefined) {
      throw new EngineError(
        'screen.unknown-shape',
        say.screenUsesShapeWhich(screen.number, placed.shape),
        { details: { screen: screen.number, shape: placed.shape } },
      );
    }
    return { rings: placeRings(shape.rings, placed), fillRule: shape.fillRule };
  });
}

function joined(outlines: readonly SheetOutline[], { number }: Pick<Screen, 'number'>): Float64Array[] {
  try {
    return unionOutlines(outlines);
  } catch (error) {
    if (!(error instanceof EngineError && error.code === 'geometry.too-much-work')) throw error;
    throw new EngineError(
      'screen.too-much-work',
      say.shapesOnScreenHave(number),
      { details: { screen: number } },
    );
  }
}

function findShape(shapes: ShapeSource, id: string): Shape | undefined {
  return Array.isArray(shapes)
    ? (shapes as readonly Shape[]).find((shape) => shape.id === id)
    : (shapes as ReadonlyMap<string, Shape>).get(id);
}

/**
 * The map from a screen's outlines at rest to where the pull prints them: turn first, then shift.
 * @throws EngineError 'screen.bad-offset' when an offset or the turn is not a finite number
 */
function offsetAffine(offset: ScreenOffset, paper: { widthMm: number; heightMm: number }): Affine {
  const { dxMm, dyMm, turnDeg } = offset;
  if (![dxMm, dyMm, turnDeg].every(Number.isFinite)) {
    throw new EngineError(
      'screen.bad-offset',
      say.pullIsLaidMm(dxMm, dyMm, turnDeg),
      { details: { dxMm, dyMm, turnDeg } },
    );
  }
  const turn = turnAbout(offset.turnDeg, paper.widthMm / 2, paper.heightMm / 2);
  return compose([1, 0, 0, 1, offset.dxMm, offset.dyMm], turn);
}

/**
 * Outlines at rest, laid as a pull lays them.
 * @param outline as `screenRings` gives it, so that a caller can keep it
 * @param paper the sheet; the turn is about its centre
 */
export function screenOutline(
  outline: SheetOutline,
  offset: ScreenOffset,
  paper: { widthMm: number; heightMm: number },
): SheetOutline {
  return { rings: mapRings(outline.rings, offsetAffine(offset, paper)), fillRule: outline.fillRule };
}

/**
 * What one pull prints, in sheet mm: the screen turned about the sheet's centre, then shifted.
 * @throws EngineError 'screen.unknown-shape' when a placed shape is not in the drawer
 */
export function pullRings(
  screen: Pick<Screen, 'number' | 'placed'>,
  shapes: ShapeSource,
  pull: ScreenOffset,
  paper: { widthMm: number; heightMm: number },
): SheetOutline {
  return screenOutline(screenRings(screen, shapes), pull, paper);
}
