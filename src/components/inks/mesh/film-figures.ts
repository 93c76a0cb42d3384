import { meshOpenArea, meshOpeningUm, meshVolumeCm3PerM2, type Mesh } from '../../../engine/ink/film/mesh.ts';
import { filmThickness } from '../../../engine/ink/film/thickness.ts';

/** What a mesh carries and what of it stays. */
export interface FilmFigures {
  openingUm: number;
  openAreaPct: number;
  /** Theoretical ink volume, cm³/m². */
  volumeCm3PerM2: number;
  /** Wet film of all strokes, µm. */
  wetUm: number;
  /** What is left of it when the water has gone, µm. */
  dryUm: number;
}

/**
 * Film of a pull: volume × transfer × strokes, wet; × solids, dry. 1 cm³/m² is 1 µm.
 * @param transfer share of the mesh's ink that reaches the paper
 * @param solids share of the ink's volume that does not dry away
 * @throws EngineError 'ink.bad-mesh', 'ink.bad-strokes', 'ink.bad-stroke-gain'
 */
export function filmFigures(mesh: Mesh, strokes: number, strokeGain: number, transfer: number, solids: number): FilmFigures {
  const volumeCm3PerM2 = meshVolumeCm3PerM2(mesh);
  const wetUm = volumeCm3PerM2 * transfer * filmThickness(strokes, strokeGain);
  return { openingUm: meshOpeningUm(mesh), openAreaPct: meshOpenArea(mesh) * 100, volumeCm3PerM2, wetUm, dryUm: wetUm * solids };
}
