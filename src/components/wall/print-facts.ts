import { SKETCH_LENGTH, sketchOf } from '../../engine/explore/sketch.ts';
import { MEASURES, type MeasureWords, type VariantMeasures } from '../../engine/explore/index.ts';
import type { WallBatch, WallMap } from '../../workers/wire.ts';

export type MeasureKey = keyof VariantMeasures;

/** What is known of the prints that hang, by their number. */
export class PrintFacts {
  /** Picture keys. */
  readonly keys: string[] = [];
  readonly measures: (VariantMeasures | undefined)[] = [];
  private readonly sketches: (Float32Array | undefined)[] = [];
  private readonly tints: (readonly [number, number, number] | undefined)[] = [];
  private readonly maps = new Map<number, ThinMap>();

  add(batch: WallBatch): void {
    for (const map of batch.maps) this.maps.set(map.id, thinned(map));
    for (const { variant, map, colours, measures } of batch.tiles) {
      this.keys[variant.index] = variant.key;
      this.measures[variant.index] = measures;
      const cells = this.maps.get(map);
      if (cells === undefined) continue;
      this.sketches[variant.index] = sketchOf(cells, colours);
      this.tints[variant.index] = tintOf(cells, colours);
    }
  }

  clear(): void {
    this.keys.length = 0;
    this.measures.length = 0;
    this.sketches.length = 0;
    this.tints.length = 0;
    this.maps.clear();
  }

  /** Maps are needed only while prints arrive. */
  settle(): void {
    this.maps.clear();
  }

  /** Measures by which the prints differ at all. */
  varying(): MeasureWords[] {
    return MEASURES.filter(({ key }) => {
      const first = this.measures.find((each) => each !== undefined)?.[key];
      return this.measures.some((each) => each !== undefined && each[key] !== first);
    });
  }

  /** A measure of every print; NaN for one that is not here. */
  column(key: MeasureKey, count: number): Float32Array {
    return Float32Array.from({ length: count }, (_, index) => this.measures[index]?.[key] ?? Number.NaN);
  }

  /** Sketches of some prints, one after another. */
  points(prints: readonly number[]): { points: Float32Array; dimensions: number } {
    const points = new Float32Array(prints.length * SKETCH_LENGTH);
    prints.forEach((index, row) => {
      const sketch = this.sketches[index];
      if (sketch !== undefined) points.set(sketch, row * SKETCH_LENGTH);
    });
    return { points, dimensions: SKETCH_LENGTH };
  }

  /** About the colour of a print seen from far, sRGB 0–255, for the small map. */
  tint(index: number): readonly [number, number, number] {
    return this.tints[index] ?? [255, 255, 255];
  }
}

/** What is kept of a map, for thousands of prints: enough points for what is seen from far. */
interface ThinMap {
  columns: number;
  rows: number;
  cells: Uint16Array;
}

const THIN = { columns: 30, rows: 36 };

function thinned(map: WallMap): ThinMap {
  const cells = new Uint16Array(THIN.columns * THIN.rows);
  for (let row = 0, at = 0; row < THIN.rows; row++) {
    const from = Math.floor(((row + 0.5) * map.rows) / THIN.rows) * map.columns;
    for (let column = 0; column < THIN.columns; column++, at++) {
      cells[at] = map.cells[from + Math.floor(((column + 0.5) * map.columns) / THIN.columns)]!;
    }
  }
  return { ...THIN, cells };
}

const SAMPLES = 60;

/** The mean of some points of a print, in about linear light. */
function tintOf({ cells }: ThinMap, colours: Uint32Array): [number, number, number] {
  const sums = [0, 0, 0];
  for (let k = 0; k < SAMPLES; k++) {
    const word = colours[cells[Math.floor(((k + 0.5) * cells.length) / SAMPLES)]!]!;
    for (let i = 0; i < 3; i++) sums[i]! += ((word >> (8 * i)) & 255) ** 2;
  }
  const [r, g, b] = sums.map((sum) => Math.round(Math.sqrt(sum / SAMPLES)));
  return [r!, g!, b!];
}
