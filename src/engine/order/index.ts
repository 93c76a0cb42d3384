export { canonicalOrder } from './canonical.ts';
export { countClasses, countOrderClasses } from './count.ts';
export { classesOf, orderClasses } from './enumerate.ts';
export { type Graph, graphOf } from './graph.ts';
export { drawOrder, sampleOrder } from './sample.ts';
export { walkOrientation } from './walk.ts';
