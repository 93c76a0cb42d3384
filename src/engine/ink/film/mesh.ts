import { EngineError } from '../../base/error.ts';
import { openingUm } from '../../shapes/place/mesh-size.ts';
import type { Mesh } from '../../shapes/types.ts';
import { say } from '../../words/en/ink/film.ts';

export type { Mesh };

/**
 * Whether two meshes are one: all five figures are equal, those left out as well. A mesh with its
 * maker's figures is another than one of the same threads without them, as it carries other ink.
 * @returns true for two meshes that are not known
 */
export function sameMesh(a: Readonly<Mesh> | undefined, b: Readonly<Mesh> | undefined): boolean {
  if (a === b) return true;
  return a !== undefined && b !== undefined && meshKey(a) === meshKey(b);
}

/** A text that is the same for meshes that sameMesh calls the same, to look things up by; '' for one not known. */
export function meshKey(mesh: Readonly<Mesh> | undefined): string {
  if (mesh === undefined) return '';
  return [mesh.threadsPerCm, mesh.threadUm, mesh.fabricUm, mesh.statedOpenArea, mesh.statedVolumeCm3PerM2].join();
}

/** Fabric over thread thickness: 1.475–1.575 in the three catalogue rows of `mesh-table.ts`; about their middle. */
const FABRIC_PER_THREAD = 1.55;

/**
 * Width of a mesh opening: pitch less thread, w = 10000/n − d.
 * @returns µm
 * @throws EngineError 'ink.bad-mesh' when a figure is missing or the threads leave no opening
 * Source: aperture and wire of woven cloth as ISO 9044 defines them (from memory); plain geometry.
 */
export function meshOpeningUm(mesh: Mesh): number {
  const { threadsPerCm, threadUm } = mesh;
  const opening = openingUm(mesh);
  if (!(threadsPerCm > 0 && threadUm > 0 && opening > 0)) {
    throw new EngineError('ink.bad-mesh', say.meshOfThreadsCm(threadsPerCm, threadUm, Math.floor(10_000 / threadsPerCm) || '?'));
  }
  return opening;
}

/**
 * Share of the mesh that is open, (w / p)²; the maker's own figure when there is one.
 * @returns 0–1
 * @throws EngineError 'ink.bad-mesh'
 * Source: open screening area of ISO 9044 (from memory), checked on the sieves of ISO 3310-1.
 */
export function meshOpenArea(mesh: Mesh): number {
  const opening = meshOpeningUm(mesh);
  const stated = mesh.statedOpenArea;
  if (stated !== undefined) {
    if (!(stated > 0 && stated < 1)) {
      throw new EngineError('ink.bad-mesh', say.meshsOpenAreaMust(stated));
    }
    return stated;
  }
  return (opening / (opening + mesh.threadUm)) ** 2;
}

/**
 * Theoretical ink volume: open area × fabric thickness; the maker's own figure when there is one.
 * @returns cm³ of ink per m² printed, which is also the wet film in µm
 * @throws EngineError 'ink.bad-mesh'
 * Source: a film as thick as the fabric, over its openings alone; rows to check against in tests/published/ink/mesh.
 */
export function meshVolumeCm3PerM2(mesh: Mesh): number {
  const open = meshOpenArea(mesh);
  const volume = mesh.statedVolumeCm3PerM2 ?? open * (mesh.fabricUm ?? FABRIC_PER_THREAD * mesh.threadUm);
  if (!(volume > 0 && volume < 1000)) {
    throw new EngineError('ink.bad-mesh', say.meshMustCarryMore(volume));
  }
  return volume;
}
