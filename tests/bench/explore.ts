import { Describer } from '../../src/engine/explore/look/descriptor.ts';
import { VariantMeter } from '../../src/engine/explore/measure/variant-measures.ts';
import { CellMapBuilder } from '../../src/engine/stack/cell-map.ts';
import { stackLayers, type Layer } from '../../src/engine/stack/layers.ts';
import { SpanCache } from '../../src/engine/stack/screen-spans.ts';
import type { PlacedSpans, RowGrid, Stack } from '../../src/engine/stack/types.ts';
import { type ThumbnailCase, thumbnailCase } from './thumbnail-cases.ts';
import { skia } from './thumbnail-rivals.ts';
import { beSide, type Jobs, Side, sideAsked } from './turns.ts';

// What is timed. Pullstack: a variant evaluated, that is its films, the 36-band colour of every cell and
// all thirteen measures (areas by colour, overprint colours, edges, balance …); for reorders and recolours on
// the one map of the placed screens, whose edges are known, for offsets with a map of its own. Skia, by @napi-rs/canvas: a
// thumbnail of the same variant and the same number of rows, RGB multiply, pixels read back, no measures.
// Each side is a process of its own, as `turns.ts` says, and both take turns round by round. Rates are means of all rounds but
// the first: a median would leave out those in which garbage is collected, which is seldom for one side and often for the other.

const ROWS = 256;
const VARIANTS = 24;
const ROUNDS = 9;
const WARM_UP = 2;

interface Case {
  pulls: number;
  rows: number;
}

const caseOf = ({ pulls }: Case): ThumbnailCase => thumbnailCase(`explore ${pulls}`, pulls, VARIANTS, [50, 140]);

function gridOf({ drawer }: ThumbnailCase, rows: number): RowGrid {
  return { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows };
}

function each(variants: readonly Stack[], job: (variant: Stack) => number): () => number {
  return () => variants.reduce((sum, variant) => sum + job(variant), 0);
}

function pullstackJobs(asked: Case): Jobs {
  const test = caseOf(asked);
  const { drawer, base } = test;
  const grid = gridOf(test, asked.rows);
  const meter = new VariantMeter(drawer);
  const spans = new SpanCache(drawer);
  const map = new CellMapBuilder().build(spans.place(base, grid), grid);
  const builder = new CellMapBuilder();
  const placed: PlacedSpans[] = [];
  const layers: Layer[] = [];
  const describer = new Describer(drawer);
  return {
    reorders: each(
      test.reorders,
      (variant) => meter.measure(map, stackLayers(variant, drawer, base, layers), variant.pulls, 'base').edgeContrast,
    ),
    offsets: each(test.offsets, (variant) => {
      const own = builder.build(spans.place(variant, grid, placed), grid);
      return meter.measure(own, stackLayers(variant, drawer, variant, layers), variant.pulls).edgeContrast;
    }),
    describe: each(test.offsets, (variant) => describer.describe(variant.pulls)[0]! + 1),
  };
}

function skiaJobs(asked: Case): Jobs {
  const test = caseOf(asked);
  const paint = skia(test, Math.round((asked.rows * 560) / 760), asked.rows);
  const thumbnails = (variants: readonly Stack[]) => each(variants, (variant) => paint(variant)[4000]! + 1);
  return { reorders: thumbnails(test.reorders), offsets: thumbnails(test.offsets) };
}

/** Milliseconds a variant for each job of each side, which take turns. */
async function race(jobs: readonly (readonly [Side<Case>, string])[]): Promise<number[]> {
  const sums = jobs.map(() => 0);
  for (let round = 0; round < ROUNDS + WARM_UP; round++) {
    for (const [i, [side, job]] of jobs.entries()) {
      const tookMs = await side.round(job);
      if (round >= WARM_UP) sums[i]! += tookMs;
    }
  }
  return sums.map((sum) => sum / ROUNDS / VARIANTS);
}

async function compare(asked: Case, [pullstack, other]: readonly [Side<Case>, Side<Case>]): Promise<string> {
  const test = caseOf(asked);
  const grid = gridOf(test, asked.rows);
  const { cells } = new CellMapBuilder().build(new SpanCache(test.drawer).place(test.base, grid), grid);
  await pullstack.begin(asked);
  await other.begin(asked);
  const [reorder, reorderOther, offset, offsetOther, described] = (await race([
    [pullstack, 'reorders'],
    [other, 'reorders'],
    [pullstack, 'offsets'],
    [other, 'offsets'],
    [pullstack, 'describe'],
  ])) as [number, number, number, number, number];
  const cell = (value: number, width = 9): string => value.toFixed(0).padStart(width);
  return [
    String(asked.pulls).padStart(5),
    cell(asked.rows, 5),
    cell(cells, 7),
    cell(1000 / reorder),
    cell(1000 / reorderOther),
    `${(reorderOther / reorder).toFixed(2)}×`.padStart(8),
    cell(1000 / offset),
    cell(1000 / offsetOther),
    `${(offsetOther / offset).toFixed(2)}×`.padStart(8),
    described.toFixed(3).padStart(10),
  ].join('');
}

async function main(): Promise<void> {
  const sides = [new Side<Case>('Pullstack'), new Side<Case>('Skia')] as const;
  const lines = ['pulls rows  cells reorders/s Skia/s   ratio offsets/s Skia/s   ratio describe ms'];
  for (const pulls of [8, 20, 40, 80]) lines.push(await compare({ pulls, rows: ROWS }, sides));
  for (const rows of [64, 128, 512]) lines.push(await compare({ pulls: 20, rows }, sides));
  for (const side of sides) side.end();
  console.log(`Variants evaluated a second, all measures against multiply thumbnails\n${lines.join('\n')}`);
}

const side = sideAsked();
if (side === undefined) await main();
else beSide(side === 'Skia' ? skiaJobs : pullstackJobs);
