import type { Mesh } from '../film/mesh.ts';
import type { Ink, InkBasis, Lab } from '../types.ts';
import { DEFAULT_DENSITY_G_PER_CM3, DEFAULT_DRY_MINUTES } from './make-ink.ts';

/** What a way of adding an ink comes to: all but its name, mesh and figures for the press. */
export interface InkDraft {
  basis: InkBasis;
  overWhite: Lab;
  overBlack: Lab;
  kx: number[];
  sx: number[];
  /** A name to begin with, when the way knows one. */
  name?: string;
}

/** What a draft lacks of an ink. */
export interface DraftNaming {
  id: string;
  name: string;
  /** The mesh that its colours were found on; null when it is not known. */
  mesh: Mesh | null;
  /** Whether it is only weighed into mixes. */
  stock: boolean;
}

/** A whole ink from a draft, with the usual drying time and density. */
export function inkOfDraft(draft: InkDraft, { id, name, mesh, stock }: DraftNaming): Ink {
  const { name: _, ...curves } = draft;
  return {
    id,
    name,
    ...curves,
    dryMinutes: DEFAULT_DRY_MINUTES,
    densityGPerCm3: DEFAULT_DENSITY_G_PER_CM3,
    ...(mesh === null ? {} : { mesh }),
    ...(stock ? { stock: true as const } : {}),
  };
}

/** The name itself, or with the first number that makes it the only one. */
export function freeName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  let number = 2;
  while (taken.includes(`${name} ${number}`)) number++;
  return `${name} ${number}`;
}
