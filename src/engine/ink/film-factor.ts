import { meshVolumeCm3PerM2, type Mesh } from './mesh.ts';
import { filmThickness } from './thickness.ts';
import type { Ink } from './types.ts';

/** The mesh that an ink's curves hold for when it names none: 90 threads a cm of 48 µm. */
export const INK_MESH: Readonly<Mesh> = { threadsPerCm: 90, threadUm: 48 };

/**
 * How thick a pull's film is, in films of the ink's own curves: what the strokes add × what the
 * screen's mesh carries ÷ what the mesh carries that the curves were found on.
 * @param ink the ink; without a mesh of its own its curves are those of INK_MESH
 * @param mesh of the screen; left out, INK_MESH
 * @param strokes whole, 1 or more
 * @param strokeGain what each further stroke adds, as a share of the first
 * @returns more than 0; exactly the strokes' factor when both meshes are the same
 * @throws EngineError 'ink.bad-strokes', 'ink.bad-stroke-gain', 'ink.bad-mesh'
 * A film follows the ink volume of its mesh ("Theoretical ink volume"); transfer and solids are
 * those of the characterisation and cancel out.
 */
export function filmFactor(
  ink: Pick<Ink, 'mesh'>,
  mesh: Mesh = INK_MESH,
  strokes = 1,
  strokeGain = 1,
): number {
  return filmThickness(strokes, strokeGain) * (meshVolumeCm3PerM2(mesh) / meshVolumeCm3PerM2(ink.mesh ?? INK_MESH));
}
