import { f64 } from '../../base/at.ts';
import type { CellMapBuilder } from '../../stack/cell-map.ts';
import type { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';

const ROWS = 256;
/** What prints less than this prints nothing, mm². */
const MIN_AREA_MM2 = 1;

/** Whether a pull leaves ink on the sheet. */
export function prints(pull: Pull, studio: Studio, spans: SpanCache, builder: CellMapBuilder): boolean {
  const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: ROWS };
  const map = builder.build(spans.place({ pulls: [pull] }, grid), grid);
  let area = 0;
  for (let cell = 1; cell < map.cells; cell++) area += f64(map.areaMm2, cell);
  return area >= MIN_AREA_MM2;
}
