export type { CellMap, Drawer, Pull, RowGrid, Stack } from './types.ts';
export { CellMapBuilder, buildCellMap, copyCellMap, type PlacedSpans } from './cell-map.ts';
export { SpanCache, placedSpans } from './screen-spans.ts';
export { placementKey, samePlacement } from './placement.ts';
export { stackLayers, type Layer } from './layers.ts';
export { cellLab, colourCells, createCellColours, stateColours, type CellColours } from './appearance.ts';
export { paintThumbnail } from './paint.ts';
export { ViewCache, paintView, type View } from './view.ts';
export { pairOverlapAreas } from './overlap-areas.ts';
