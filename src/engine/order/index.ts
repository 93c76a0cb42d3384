export { canonicalOrder } from './canonical.ts';
export { countClasses, countOrderClasses } from './count.ts';
export { classesOf, orderClasses } from './enumerate.ts';
export { type Graph, graphOf } from './graph.ts';
export { groupOrders, type OrderGroups } from './group-orders.ts';
export { orderGraph } from './order-graph.ts';
export {
  dryingPairs,
  edgeWeight,
  freeSwaps,
  type Overlap,
  type OverlapOptions,
  overlapsOf,
  type SharedPair,
} from './overlaps.ts';
export { drawOrder, sampleOrder } from './sample.ts';
export { SwapDeltas } from './swap-delta.ts';
export { walkOrientation } from './walk.ts';
