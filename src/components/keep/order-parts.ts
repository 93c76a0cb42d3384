import { hash128 } from '../../engine/explore/look/picture-key.ts';
import type { VisitHead } from '../../engine/log/types.ts';
import type { VisitPlan } from '../../engine/visitfile/plan-file.ts';

/** Rises whenever a kept plan of an older build can no longer be shown. */
export const RECORD_VERSION = 3;

/** The parts of the press's database that an order takes; what stands beside them is of the press and not of a project. */
const ORDER_PARTS = ['version', 'made', 'head', 'digest'];

/** What the whole of an order comes to: one number that is another now and it cannot be relied on. */
export function digestOf(made: VisitPlan | null, head: VisitHead | null): string {
  return hash128(JSON.stringify([made, head]));
}

/** An order and its visit as the press keeps them; all parts are written, so that none of an order before is left beside them. */
export function orderParts(made: VisitPlan | null, head: VisitHead | null): Record<string, unknown> {
  return { version: RECORD_VERSION, made, head, digest: digestOf(made, head) };
}

/** The order alone, out of all that the press keeps; a digest that it lacks is emptied. */
export function orderOnly(parts: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(ORDER_PARTS.map((part) => [part, parts[part]]));
}
