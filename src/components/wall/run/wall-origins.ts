import type { VariantMeasures } from '../../../engine/explore/measure/variant-measures.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { PrintLineage } from '../../../engine/recipe/lineage.ts';
import type { Pull } from '../../../engine/stack/types.ts';

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

const origins = new WeakMap<Variant, Origin>();

/** Keeps what a print was made from, as long as the print itself is kept. */
export function rememberOrigin(variant: Variant, origin: Origin): void {
  origins.set(variant, origin);
}

/** What a print was made from and measures; undefined for a print of no wall. */
export function originOf(variant: Variant): Origin | undefined {
  return origins.get(variant);
}

/** Where a print comes from, through all the prints before it. */
export function lineageOf(variant: Variant): PrintLineage {
  const known = originOf(variant)?.lineage;
  if (known !== undefined) return known;
  const { seed, index, lineage } = variant;
  if (lineage === undefined) return { seed, index };
  const parents = (originOf(variant)?.parents ?? []).flatMap((parent) => parent.lineage ?? []);
  return { seed, index, way: lineage.kind, ...(parents.length > 0 ? { parents } : {}) };
}
