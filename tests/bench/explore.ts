import { Describer } from '../../src/engine/explore/look/descriptor.ts';
import { VariantMeter } from '../../src/engine/explore/measure/variant-measures.ts';
import { CellMapBuilder } from '../../src/engine/stack/cell-map.ts';
import { stackLayers, type Layer } from '../../src/engine/stack/layers.ts';
import { SpanCache } from '../../src/engine/stack/screen-spans.ts';
import type { PlacedSpans, Stack } from '../../src/engine/stack/types.ts';
import { thumbnailCase } from './thumbnail-cases.ts';
import { skia } from './thumbnail-rivals.ts';

// What is timed. Pullstack: a variant evaluated, that is its films, the 36-band colour of every cell and
// all thirteen measures (areas by colour, overprint colours, edges, balance …); for reorders and recolours on
// the one map of the placed screens, whose edges are known, for offsets with a map of its own. Skia, by @napi-rs/canvas: a
// thumbnail of the same variant and the same number of rows, RGB multiply, pixels read back, no measures.
// Rounds take turns; medians; processor time, so that other work on the machine counts for neither.

const ROWS = 256;
const VARIANTS = 24;
const ROUNDS = 7;

function now(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

type Job = (variant: Stack) => number;

/** Variants a second: median over rounds that take turns. */
function race(jobs: { job: Job; variants: Stack[] }[]): number[] {
  const times: number[][] = jobs.map(() => []);
  let checksum = 0;
  for (let round = 0; round < ROUNDS + 2; round++) {
    jobs.forEach(({ job, variants }, i) => {
      const start = now();
      for (const variant of variants) checksum += job(variant);
      if (round >= 2) times[i]!.push((now() - start) / variants.length);
    });
  }
  if (!Number.isFinite(checksum) || checksum === 0) throw new Error('nothing was measured');
  return times.map((list) => 1000 / list.sort((a, b) => a - b)[list.length >> 1]!);
}

function compare(pulls: number, rows: number): string {
  const test = thumbnailCase(`explore ${pulls}`, pulls, VARIANTS, [50, 140]);
  const { drawer, base } = test;
  const grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows };
  const meter = new VariantMeter(drawer);
  const spans = new SpanCache(drawer);
  const map = new CellMapBuilder().build(spans.place(base, grid), grid);
  const builder = new CellMapBuilder();
  const placed: PlacedSpans[] = [];
  const layers: Layer[] = [];
  const reorder: Job = (variant) => meter.measure(map, stackLayers(variant, drawer, base, layers), variant.pulls, 'base').edgeContrast;
  const offset: Job = (variant) => {
    const own = builder.build(spans.place(variant, grid, placed), grid);
    return meter.measure(own, stackLayers(variant, drawer, variant, layers), variant.pulls).edgeContrast;
  };
  const describer = new Describer(drawer);
  const describe: Job = (variant) => describer.describe(variant.pulls)[0]! + 1;
  const paint = skia(test, Math.round((rows * 560) / 760), rows);
  const thumbnail: Job = (variant) => paint(variant)[4000]! + 1;
  const [own, other, ownOffset, otherOffset, described] = race([
    { job: reorder, variants: test.reorders },
    { job: thumbnail, variants: test.reorders },
    { job: offset, variants: test.offsets },
    { job: thumbnail, variants: test.offsets },
    { job: describe, variants: test.offsets },
  ]) as [number, number, number, number, number];
  const cell = (value: number, width = 9): string => value.toFixed(0).padStart(width);
  return [
    String(pulls).padStart(5),
    cell(rows, 5),
    cell(map.cells, 7),
    cell(own),
    cell(other),
    `${(own / other).toFixed(2)}×`.padStart(8),
    cell(ownOffset),
    cell(otherOffset),
    `${(ownOffset / otherOffset).toFixed(2)}×`.padStart(8),
    (1000 / described).toFixed(3).padStart(10),
  ].join('');
}

const lines = ['pulls rows  cells reorders/s Skia/s   ratio offsets/s Skia/s   ratio describe ms'];
for (const pulls of [8, 20, 40, 80]) lines.push(compare(pulls, ROWS));
for (const rows of [64, 128, 512]) lines.push(compare(20, rows));
console.log(`Variants evaluated a second, all measures against multiply thumbnails\n${lines.join('\n')}`);
