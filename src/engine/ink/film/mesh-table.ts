import { defined } from '../../base/at.ts';
import { say } from '../../words/en/ink/film.ts';
import type { Mesh } from './mesh.ts';

/** Where a mesh's figures come from. */
type MeshBasis = 'published' | 'arithmetic';

/** A mesh to choose from. */
export interface MeshRow {
  /** Threads per cm and thread in µm; where the source gives it, threads per inch between them. */
  label: string;
  mesh: Mesh;
  /** 'published': figures of a sheet, rounded there. 'arithmetic': only count and thread are given, the rest follows. */
  basis: MeshBasis;
  source: string;
}

const SHEET = say.meshMakersCatalogueRounded;
const ARTICLE = say.tradeArticleOf2009;
const FORMULA = say.countAndThreadOnly;
const PER_INCH = 2.54;

/**
 * Meshes with their figures and sources. The published rows keep their sheet's own open area,
 * thickness and volume, which go before the formulas; their counts are per inch, rounded per cm.
 */
export const MESH_TABLE: readonly MeshRow[] = [
  published(SHEET, { label: '90/225-40', perInch: 225, threadUm: 40, fabricUm: 59, statedOpenArea: 0.42, statedVolumeCm3PerM2: 25 }),
  published(SHEET, { label: '90/225-48', perInch: 225, threadUm: 48, fabricUm: 72, statedOpenArea: 0.33, statedVolumeCm3PerM2: 24 }),
  published(SHEET, { label: '90/225-54', perInch: 225, threadUm: 54, fabricUm: 84, statedOpenArea: 0.27, statedVolumeCm3PerM2: 23 }),
  published(ARTICLE, { label: '120/305-40', perInch: 305, threadUm: 40, fabricUm: 63, statedOpenArea: 0.25 }),
  ...[
    [43, 80],
    [54, 64],
    [61, 64],
    [77, 55],
    [90, 48],
    [100, 40],
    [120, 34],
    [140, 31],
    [150, 34],
    [165, 31],
  ].map(([threadsPerCm, threadUm]): MeshRow => ({
    label: `${threadsPerCm}-${threadUm}`,
    mesh: { threadsPerCm: defined(threadsPerCm), threadUm: defined(threadUm) },
    basis: 'arithmetic',
    source: FORMULA,
  })),
];

function published(
  source: string,
  { label, perInch, ...figures }: Omit<Mesh, 'threadsPerCm'> & { label: string; perInch: number },
): MeshRow {
  return { label, mesh: { threadsPerCm: perInch / PER_INCH, ...figures }, basis: 'published', source };
}
