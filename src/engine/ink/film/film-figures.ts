import { meshOpenArea, meshOpeningUm, meshVolumeCm3PerM2, type Mesh } from './mesh.ts';
import { filmThickness } from './thickness.ts';

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

/** One pull of an ink through a mesh. */
export interface FilmPull {
  mesh: Mesh;
  /** Whole, 1 or more. */
  strokes: number;
  /** What each further stroke adds, as a share of the first. */
  strokeGain: number;
  /** Share of the mesh's ink that reaches the paper. */
  transfer: number;
  /** Share of the ink's volume that does not dry away. */
  solids: number;
}

/**
 * Film of a pull: volume × transfer × strokes, wet; × solids, dry. 1 cm³/m² is 1 µm.
 * @throws EngineError 'ink.bad-mesh', 'ink.bad-strokes', 'ink.bad-stroke-gain'
 */
export function filmFigures({ mesh, strokes, strokeGain, transfer, solids }: FilmPull): FilmFigures {
  const volumeCm3PerM2 = meshVolumeCm3PerM2(mesh);
  const wetUm = volumeCm3PerM2 * transfer * filmThickness(strokes, strokeGain);
  return { openingUm: meshOpeningUm(mesh), openAreaPct: meshOpenArea(mesh) * 100, volumeCm3PerM2, wetUm, dryUm: wetUm * solids };
}
