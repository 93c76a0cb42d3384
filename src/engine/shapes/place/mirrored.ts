import type { PlacedShape, Screen } from '../types.ts';
import { say } from '../../words/en/shapes/place.ts';

/**
 * A shape mirrored left to right with the screen that it is on, about the sheet's upright middle line.
 * Twice gives the shape again.
 */
function mirroredPlace({ mirrored, ...placed }: PlacedShape, sheetWidthMm: number): PlacedShape {
  const turned = { ...placed, xMm: sheetWidthMm - placed.xMm, turnDeg: placed.turnDeg === 0 ? 0 : -placed.turnDeg };
  return mirrored === true ? turned : { ...turned, mirrored: true };
}

/** What lies on a screen, mirrored left to right about the sheet's upright middle line. */
function mirroredPlaces(placed: readonly PlacedShape[], sheetWidthMm: number): PlacedShape[] {
  return placed.map((each) => mirroredPlace(each, sheetWidthMm));
}

/** Whether a screen's film is another's turned over: all of its shapes are mirrored. */
export function isMirrored({ placed }: { placed: readonly PlacedShape[] }): boolean {
  return placed.length > 0 && placed.every(({ mirrored }) => mirrored === true);
}

/**
 * The screens that are each other's mirror: same mesh, all shapes mirrored.
 * @returns by id, the id of the first screen that mirrors it
 */
export function mirrorPairs(screens: readonly Screen[], sheetWidthMm: number): Map<string, string> {
  const nameOf = (mesh: Screen['mesh'], placed: readonly PlacedShape[]): string =>
    JSON.stringify([
      mesh,
      placed.map(({ shape, xMm, yMm, turnDeg, scale, mirrored }) => [
        shape,
        ...[xMm, yMm, turnDeg].map((value) => Math.round(value * 1e6) / 1e6 || 0),
        scale,
        mirrored === true,
      ]),
    ]);
  const known = new Map<string, string>();
  for (const { id, mesh, placed } of screens) {
    const name = nameOf(mesh, placed);
    if (!known.has(name)) known.set(name, id);
  }
  const pairs = new Map<string, string>();
  for (const { id, mesh, placed } of screens) {
    const other = known.get(nameOf(mesh, mirroredPlaces(placed, sheetWidthMm)));
    if (placed.length > 0 && other !== undefined && other !== id) pairs.set(id, other);
  }
  return pairs;
}

/** Ends the ids of screens that were made as another's mirror. */
const SUFFIX = '-mirrored';

/** Whether a screen was made as another's mirror, and not by hand. */
export function madeAsMirror({ id }: Pick<Screen, 'id'>): boolean {
  return id.endsWith(SUFFIX);
}

/**
 * A mirror of each screen that has none, under the next numbers: another screen, as it is another stencil.
 * @param sheetWidthMm of the sheet about whose middle it is mirrored
 */
export function missingMirrors(screens: readonly Screen[], sheetWidthMm: number): Screen[] {
  const pairs = mirrorPairs(screens, sheetWidthMm);
  const ids = new Set(screens.map(({ id }) => id));
  let number = screens.reduce((highest, screen) => Math.max(highest, screen.number), 0);
  return screens
    .filter((screen) => screen.placed.length > 0 && !pairs.has(screen.id) && !madeAsMirror(screen))
    .map((screen) => {
      let id = `${screen.id}${SUFFIX}`;
      for (let n = 2; ids.has(id); n++) id = `${screen.id}-${n}${SUFFIX}`;
      ids.add(id);
      number++;
      return { id, number, name: say.mirrored(screen.name), placed: mirroredPlaces(screen.placed, sheetWidthMm), mesh: { ...screen.mesh } };
    });
}
