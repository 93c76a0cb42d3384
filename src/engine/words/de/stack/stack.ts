import type { say as english } from '../../en/stack/stack.ts';

export const say: typeof english = {
  cellMapNeedsSheet: (widthMm, heightMm, rows) =>
    `Eine Zellenkarte braucht einen Bogen mit einer Größe und eine ganze Zahl von Zeilen; angegeben sind ${widthMm} × ${heightMm} mm in ${rows} Zeilen.`,
  rasterOfCellsIs: (columns, rows, maxRaster) => `ein Raster von ${columns} × ${rows} Zellen ist mehr als ${maxRaster}`,
  reflectanceHasBandsAre: (bands, bandCount) => `Eine Remission hat ${bands} Bänder; nötig sind ${bandCount}.`,
  pullDoesNotLie: (index, id) => `Druckgang ${index} (‚${id}‘) liegt in der Zellenkarte nicht so wie im Stapel; die Karte neu aufbauen.`,
  pullsUpToPull: (pull, screen, mostEdges) =>
    `Die Druckgänge bis Druckgang ${pull} mit Sieb ${screen} haben auf dem Bogen mehr als ${mostEdges} Millionen Kanten nebeneinander; Druckgänge weglassen oder Formen mit weniger und größeren Teilen nehmen.`,
  pullsPartSheetInto: (mostCells) =>
    `Die Druckgänge teilen den Bogen in mehr als ${mostCells} Tausend Arten von Überdruck; Druckgänge weglassen oder Formen mit weniger und größeren Teilen nehmen.`,
  pictureOfPixelsDoes: (widthPx, rows, pixels) => `Ein Bild von ${widthPx} × ${rows} Pixeln passt nicht in ${pixels} Pixel.`,
  pictureMustBeginOn: 'Ein Bild muss an einer durch vier teilbaren Byteadresse beginnen.',
  pullHasOffsetNeeds: (index, field, pull) => `Druckgang ${index} hat ${field} = ${pull}; ein Versatz braucht eine endliche Zahl.`,
  viewNeedsPartOf: (maxPixels) =>
    `Eine Ansicht braucht einen Teil des Bogens mit einer Größe und bis zu ${maxPixels} ganze Pixel; angegeben sind `,
  mmAtAs: ({ widthMm, heightMm, xMm, yMm, widthPx }) => `${widthMm} × ${heightMm} mm bei (${xMm}; ${yMm}) als ${widthPx} × `,
  pixelsWithRowsEach: (heightPx, subRows) => `${heightPx} Pixel mit je ${subRows} Zeilen.`,
};
