import type { Variant } from '../../../engine/explore/types.ts';
import type { PrintLineage } from '../../../engine/recipe/lineage.ts';
import { lineageWith, type Origin } from '../../../engine/recipe/prints/origin.ts';

export type { Parent } from '../../../engine/recipe/prints/origin.ts';

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
  return lineageWith(variant, originOf(variant));
}
