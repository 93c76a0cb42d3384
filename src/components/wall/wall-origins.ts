import type { VariantMeasures } from '../../engine/explore/variant-measures.ts';
import type { Variant } from '../../engine/explore/types.ts';
import type { Pull } from '../../engine/stack/types.ts';

/** A stack that a print was made from, and what it is called in a sentence. */
export interface Parent {
  name: string;
  pulls: readonly Pull[];
}

/** What is known of a print beside its stack. */
export interface Origin {
  measures: VariantMeasures;
  parents: readonly Parent[];
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
