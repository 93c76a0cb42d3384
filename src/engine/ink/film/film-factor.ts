import { DEFAULT_MESH } from '../../shapes/place/new-screen.ts';
import type { Ink } from '../types.ts';
import { meshVolumeCm3PerM2, type Mesh } from './mesh.ts';
import { filmThickness } from './thickness.ts';

/** The mesh that inks are characterised on unless the studio has another: 90 threads a cm of 48 µm. */
export const INK_MESH: Readonly<Mesh> = DEFAULT_MESH;

/**
 * How thick a pull's film is, in films of the ink's own curves: what the strokes add × what the
 * screen's mesh carries ÷ what the mesh carries that the curves were found on.
 * @param ink the ink; when it does not say which mesh its curves were found on, they are taken as
 *   they are on every screen
 * @param mesh of the screen; left out, that of the ink
 * @param strokes whole, 1 or more
 * @param strokeGain what each further stroke adds, as a share of the first
 * @returns more than 0; exactly the strokes' factor when both meshes are the same
 * @throws EngineError 'ink.bad-strokes', 'ink.bad-stroke-gain', 'ink.bad-mesh'
 * A film follows the ink volume of its mesh (see meshVolumeCm3PerM2); transfer and solids are
 * those of the characterisation and cancel out.
 */
export function filmFactor(ink: Pick<Ink, 'mesh'>, mesh?: Readonly<Mesh>, strokes = 1, strokeGain = 1): number {
  return filmThickness(strokes, strokeGain) * meshRatio(mesh, ink.mesh);
}

/**
 * How much more ink one mesh carries than another.
 * @returns 1 when one of them is unknown
 * @throws EngineError 'ink.bad-mesh'
 */
export function meshRatio(mesh: Readonly<Mesh> | undefined, to: Readonly<Mesh> | undefined): number {
  if (mesh === undefined || to === undefined || mesh === to) return 1;
  return meshVolumeCm3PerM2(mesh) / meshVolumeCm3PerM2(to);
}
