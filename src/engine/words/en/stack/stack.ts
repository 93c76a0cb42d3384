import { speak } from '../../language.ts';

export const say = speak('engine/stack/stack', {
  cellMapNeedsSheet: (widthMm: number, heightMm: number, rows: number) =>
    `A cell map needs a sheet of some size and a whole number of rows; got ${widthMm} × ${heightMm} mm in ${rows} rows.`,
  rasterOfCellsIs: (columns: number, rows: number, maxRaster: number) => `a raster of ${columns} × ${rows} cells is over ${maxRaster}`,
  reflectanceHasBandsAre: (bands: number, bandCount: number) => `A reflectance has ${bands} bands; ${bandCount} are needed.`,
  pullDoesNotLie: (index: number, id: string) =>
    `Pull ${index} ('${id}') does not lie in the cell map as it lies in the stack; build the map again.`,
  pullsUpToPull: (pull: number, screen: string | number, mostEdges: number) =>
    `The pulls up to pull ${pull}, with screen ${screen}, have more than ${mostEdges} million edges side by side on the sheet; leave pulls out, or use shapes with fewer and larger parts.`,
  pullsPartSheetInto: (mostCells: number) =>
    `The pulls part the sheet into more than ${mostCells} thousand kinds of overprint; leave pulls out, or use shapes with fewer and larger parts.`,
  pictureOfPixelsDoes: (widthPx: number, rows: number, pixels: number) =>
    `A picture of ${widthPx} × ${rows} pixels does not fit into ${pixels} pixels.`,
  pictureMustBeginOn: 'A picture must begin on a four-byte boundary.',
  pullHasOffsetNeeds: (index: number, field: string, pull: number) =>
    `Pull ${index} has ${field} = ${pull}; an offset needs a finite number.`,
  viewNeedsPartOf: (maxPixels: number) => `A view needs a part of the sheet with some size and up to ${maxPixels} whole pixels; got `,
  mmAtAs: ({ widthMm, heightMm, xMm, yMm, widthPx }: { widthMm: number; heightMm: number; xMm: number; yMm: number; widthPx: number }) =>
    `${widthMm} × ${heightMm} mm at (${xMm}, ${yMm}) as ${widthPx} × `,
  pixelsWithRowsEach: (heightPx: number, subRows: number) => `${heightPx} pixels with ${subRows} rows each.`,
});
