import { roundTo } from '../../base/units.ts';
import { openingUm } from '../../shapes/place/mesh-size.ts';
import type { Mesh } from '../../shapes/types.ts';

/** The narrowest lines that a mesh carries, mm. */
export interface LeastLine {
  /** An opening and two threads: less does not hold on to the mesh. From memory. */
  holdsMm: number;
  /** Three pitches of the threads: as much prints surely. From memory. */
  safeMm: number;
}

/** What artwork for screenprint on paper keeps to, mm: printed lines, and gaps left open in what is printed. Source: 'File prep for posters'. */
export const PAPER_LEAST_MM = { line: 0.35, gap: 0.7 } as const;

/** The narrowest lines that a mesh carries, by rules from memory: try your own. */
export function leastLine(mesh: Mesh): LeastLine {
  return {
    holdsMm: roundTo((openingUm(mesh) + 2 * mesh.threadUm) / 1000, 3),
    safeMm: roundTo(30 / mesh.threadsPerCm, 3),
  };
}
