import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/ink/film.ts';
import { meshVolumeCm3PerM2, type Mesh } from './mesh.ts';

/** Share of the theoretical ink volume that reaches the paper; from memory 0.5–1. */
const DEFAULT_TRANSFER = 0.8;

/** Volume solids of water-based acrylic ink; from memory 0.25–0.45. */
export const DEFAULT_SOLIDS = 0.35;

/**
 * The film that one stroke leaves, wet: theoretical ink volume × transfer.
 * @param transfer share that reaches the paper, more than 0, at most 1
 * @returns µm, which is also cm³/m²
 * @throws EngineError 'ink.bad-mesh', 'ink.bad-share'
 */
function wetFilmUm(mesh: Mesh, transfer = DEFAULT_TRANSFER): number {
  return meshVolumeCm3PerM2(mesh) * share('transfer', transfer);
}

/**
 * The film that is left of one stroke when it is dry: theoretical ink volume × transfer × volume solids.
 * @param solids share of the ink's volume that stays, more than 0, at most 1
 * @returns µm
 * @throws EngineError 'ink.bad-mesh', 'ink.bad-share'
 */
export function dryFilmUm(mesh: Mesh, transfer = DEFAULT_TRANSFER, solids = DEFAULT_SOLIDS): number {
  return wetFilmUm(mesh, transfer) * share(say.volumeSolids, solids);
}

function share(what: string, value: number): number {
  if (!(value > 0 && value <= 1)) {
    throw new EngineError('ink.bad-share', say.mustBeShareOf(what, value));
  }
  return value;
}
