import type { VariantMeasures } from '../../explore/measure/variant-measures.ts';
import type { Variant } from '../../explore/types.ts';
import type { Pull } from '../../stack/types.ts';
import type { PrintLineage } from '../lineage.ts';

/** A stack that a print was made from, and what it is called in a sentence. */
export interface Parent {
  name: string;
  pulls: readonly Pull[];
  /** Absent on the stack on the Bench. */
  lineage?: PrintLineage | undefined;
}

/** What is known of a print beside its stack. */
export interface Origin {
  measures: VariantMeasures;
  parents: readonly Parent[];
  /** Of a pinned print of another wall, whose parents' stacks are no longer at hand. */
  lineage?: PrintLineage | undefined;
}

/**
 * Where a print comes from, through all the prints before it.
 * @param origin what is known of it; without, only its own wall and number are
 */
export function lineageWith({ seed, index, lineage }: Variant, origin: Pick<Origin, 'parents' | 'lineage'> | undefined): PrintLineage {
  if (origin?.lineage !== undefined) return origin.lineage;
  if (lineage === undefined) return { seed, index };
  const parents = (origin?.parents ?? []).flatMap((parent) => parent.lineage ?? []);
  return { seed, index, way: lineage.kind, ...(parents.length > 0 ? { parents } : {}) };
}
