import type { ExploreInput, OrderCount } from '../types.ts';
import { Finder } from './finder.ts';

/**
 * How many different pictures the orders of the base stack make, all else at rest. At most 20,000
 * order classes are gone through one by one; above that the exact number of classes is given, or proven bounds of it.
 * @param input drawer, base stack without faults, and settings, of which the holds and the ΔE count
 * @yields now and then, so that whoever runs it can stop it
 */
export function* countOrders(input: ExploreInput): Generator<void, OrderCount> {
  return yield* new Finder(input).orders();
}
