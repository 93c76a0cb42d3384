import { EngineError } from '../../base/error.ts';
import { INK_MESH } from '../../ink/film/film-factor.ts';
import type { Screen, Shape } from '../../shapes/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/veil.ts';
import type { VeilOptions } from './veil-types.ts';

/** An area that a veil may cover: a screen, with its shape when the drawer lacks it. */
export interface VeilArea {
  screen: Screen;
  newShape: Shape | null;
}

/**
 * The areas that veils may cover: every screen of the drawer, those that the stack pulls already
 * among them (a stencil in hand can be pulled again), then the whole printable image.
 * @throws EngineError 'veil.unknown-screen'
 */
export function veilAreas(studio: Studio, options: VeilOptions): VeilArea[] {
  const { screens, whole = true } = options;
  const missing = screens?.find((id) => !studio.screens.some((screen) => screen.id === id));
  if (missing !== undefined) {
    throw new EngineError('veil.unknown-screen', say.screenIsNotIn(missing));
  }
  const areas = studio.screens
    .filter((screen) => screens === undefined || screens.includes(screen.id))
    .map((screen): VeilArea => ({ screen, newShape: null }));
  return whole ? [...areas, wholeImage(studio)] : areas;
}

/** A new screen that prints the whole printable part. */
function wholeImage(studio: Studio): VeilArea {
  const { xMm, yMm, widthMm, heightMm } = studio.paper.printable;
  const shape: Shape = {
    id: freeId('whole-image', studio.shapes),
    name: say.wholeArea,
    rings: [[0, 0, widthMm, 0, widthMm, heightMm, 0, heightMm]],
    fillRule: 'nonzero',
    widthMm,
    heightMm,
  };
  const screen: Screen = {
    id: freeId('veil-screen', studio.screens),
    number: Math.max(0, ...studio.screens.map((each) => each.number)) + 1,
    name: say.wholeArea,
    placed: [{ shape: shape.id, xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2, turnDeg: 0, scale: 1 }],
    mesh: { ...(studio.screens[0]?.mesh ?? INK_MESH) },
  };
  return { screen, newShape: shape };
}

/** An id like the one wanted that nothing in the list has. */
export function freeId(wanted: string, taken: readonly { id: string }[]): string {
  let id = wanted;
  for (let n = 2; taken.some((each) => each.id === id); n++) id = `${wanted}-${n}`;
  return id;
}
