import { SKETCH_LENGTH, sketchOf } from '../../../engine/explore/look/sketch.ts';
import { MEASURES, type MeasureWords, type VariantMeasures } from '../../../engine/explore/measure/variant-measures.ts';
import type { SmallPicture } from '../../../engine/stack/small-picture.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';

/** How much white counts in the colour of a print, against 1 for what is darkest. */
const LEAST_WEIGHT = 0.04;

export type MeasureKey = keyof VariantMeasures;

/** What is known of the prints that hang, by their number. */
export class PrintFacts {
  /** Picture keys. */
  readonly keys: string[] = [];
  readonly measures: (VariantMeasures | undefined)[] = [];
  /** Sketches one after another, and tints: what is small alone costs more than it holds. */
  private sketches = new Float32Array(0);
  private tints = new Uint8Array(0);
  /** The number after the last that is known. */
  private end = 0;

  add(batch: WallBatch): void {
    for (const { variant, small, measures } of batch.tiles) {
      const { index } = variant;
      this.keys[index] = variant.key;
      this.measures[index] = measures;
      this.makeRoom(index, batch.asked);
      this.sketches.set(sketchOf(small), index * SKETCH_LENGTH);
      this.tints.set(tintOf(small), index * 3);
      this.end = Math.max(this.end, index + 1);
    }
  }

  private makeRoom(index: number, asked: number): void {
    if (index * 3 < this.tints.length) return;
    const most = Math.max(64, asked, index + (index >> 2));
    const [sketches, tints] = [new Float32Array(most * SKETCH_LENGTH), new Uint8Array(most * 3).fill(255)];
    sketches.set(this.sketches);
    tints.set(this.tints);
    this.sketches = sketches;
    this.tints = tints;
  }

  clear(): void {
    this.keys.length = 0;
    this.measures.length = 0;
    this.sketches = new Float32Array(0);
    this.tints = new Uint8Array(0);
    this.end = 0;
  }

  /** How many pulls a print has, without unpacking them; undefined for one that is not here. */
  pulls(index: number): number | undefined {
    return this.measures[index]?.pulls;
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
      const sketch = this.sketch(index);
      if (sketch !== undefined) points.set(sketch, row * SKETCH_LENGTH);
    });
    return { points, dimensions: SKETCH_LENGTH };
  }

  /** The sketch of a print, as sketchOf gives it; undefined for one that is not here. */
  sketch(index: number): Float32Array | undefined {
    if (this.measures[index] === undefined) return undefined;
    return this.sketches.subarray(index * SKETCH_LENGTH, (index + 1) * SKETCH_LENGTH);
  }

  /** How many prints are known. */
  get count(): number {
    return this.end;
  }

  /** About the colour of a print seen from far, sRGB 0–255, for the small map. */
  tint(index: number): readonly [number, number, number] {
    const at = index * 3;
    return [this.tints[at] ?? 255, this.tints[at + 1] ?? 255, this.tints[at + 2] ?? 255];
  }
}

/**
 * The colour of a print as one remembers it, in about linear light: what is far from white counts more, so that
 * prints that are mostly white are told apart by their inks.
 */
function tintOf({ words }: SmallPicture): [number, number, number] {
  let [red, green, blue, weights] = [0, 0, 0, 0];
  // A batch is taken in one task of the page, so nothing is allocated for each of a print's fields.
  for (const word of words) {
    const r = word & 255;
    const g = (word >> 8) & 255;
    const b = (word >> 16) & 255;
    const weight = LEAST_WEIGHT + (255 - Math.min(r, g, b)) / 255;
    weights += weight;
    red += weight * r * r;
    green += weight * g * g;
    blue += weight * b * b;
  }
  const mean = (sum: number): number => Math.round(Math.sqrt(sum / weights));
  return [mean(red), mean(green), mean(blue)];
}
