import type { Stack } from '../../src/engine/stack/types.ts';
import { ViewCache, paintView } from '../../src/engine/stack/view.ts';
import { thumbnailCase } from './thumbnail-cases.ts';
import { pullstackOffsets, pullstackReorder, skia } from './thumbnail-rivals.ts';
import type { Painter } from './thumbnail-rivals.ts';

// What is timed. Skia: white ground, each pull's prebuilt Path2D (in pixels) filled in 'multiply' with
// its 8-bit colour under a translation, then getImageData. Pullstack, reorders: layers of the variant,
// 36-band colours of all cells, all pixels. Pullstack, offsets: kept spans shifted, cell map, layers,
// colours, pixels; 'new phases' scans every outline anew, as lays never seen before do. Both sides give
// the finished RGBA pixels of the whole sheet. Rounds of the two take turns; medians of the rounds;
// checksums after the clock has stopped. The clock is the process's processor time, user and system, so
// that other work on the machine counts for neither.

// Radii of the shapes, mm: a loose stack, a dense one, and one of shapes as large as the sheet.
const SMALL: [number, number] = [50, 140];
const LARGE: [number, number] = [80, 220];
const HUGE: [number, number] = [200, 350];

function now(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Milliseconds a variant for each painter: median over rounds that take turns. */
function race(painters: Painter[], variantsOf: ((round: number) => Stack[])[], rounds: number): number[] {
  const times: number[][] = painters.map(() => []);
  let checksum = 0;
  for (let round = 0; round < rounds + 2; round++) {
    painters.forEach((paint, i) => {
      const variants = variantsOf[i]!(round);
      let pixels: Uint32Array | Uint8ClampedArray = new Uint32Array(1);
      const start = now();
      for (const variant of variants) pixels = paint(variant);
      const took = (now() - start) / variants.length;
      // The first two rounds warm up.
      if (round >= 2) times[i]!.push(took);
      for (let k = 0; k < pixels.length; k += 97) checksum = (checksum + pixels[k]!) | 0;
    });
  }
  if (checksum === 0) throw new Error('nothing was painted');
  return times.map((list) => list.sort((a, b) => a - b)[list.length >> 1]!);
}

function same(variants: Stack[]): () => Stack[] {
  return () => variants;
}

/** The same lays a hair lower each round, so that no kept spans serve. */
function unseen(variants: Stack[], round: number): Stack[] {
  return variants.map(({ pulls }, v) => ({
    pulls: pulls.map((pull) => ({ ...pull, dyMm: pull.dyMm + (1 + v + round * variants.length) * 1e-6 })),
  }));
}

function line(what: string, own: number, other: number, goal: string): string {
  const ratio = (other / own).toFixed(2);
  return `  ${what.padEnd(22)} Pullstack ${own.toFixed(3)} ms, Skia ${other.toFixed(3)} ms: ${ratio} times as fast (goal ${goal})`;
}

function compare(pulls: number, rows: number, radiiMm: [number, number], variants: number, rounds: number): void {
  const widthPx = Math.round((rows * 560) / 760);
  const test = thumbnailCase(`bench ${pulls}`, pulls, variants, radiiMm);
  const reorder = pullstackReorder(test, widthPx, rows);
  const [skiaOrder, ownOrder] = race([skia(test, widthPx, rows), reorder], [same(test.reorders), same(test.reorders)], rounds);
  const [skiaOffset, ownOffset, ownUnseen] = race(
    [skia(test, widthPx, rows), pullstackOffsets(test, widthPx, rows), pullstackOffsets(test, widthPx, rows)],
    [same(test.offsets), same(test.offsets), (round) => unseen(test.offsets, round)],
    rounds,
  );
  console.log(
    [
      `${pulls} pulls, radius ${radiiMm.join('–')} mm, ${widthPx} × ${rows} px, ${reorder.cells} cells`,
      line('reorders and recolours', ownOrder!, skiaOrder!, pulls <= 20 ? '4' : '0.5'),
      line('shifted offsets', ownOffset!, skiaOffset!, '0.5'),
      line('offsets, new phases', ownUnseen!, skiaOffset!, '0.5'),
    ].join('\n'),
  );
}

function largePicture(): void {
  const { drawer, base, reorders } = thumbnailCase('bench 20', 20, 20, LARGE);
  const view = { xMm: 0, yMm: 0, widthMm: 560, heightMm: 760, widthPx: 900, heightPx: 1220 };
  const kept = new ViewCache();
  const [anew, reorder] = race(
    [(stack) => paintView(drawer, stack, view), (stack) => paintView(drawer, stack, view, kept)],
    [() => [base, base], () => reorders],
    5,
  );
  console.log(
    `large picture, 20 pulls, 900 × 1220 px, 4 rows a pixel: ${anew!.toFixed(1)} ms from nothing, ` +
      `${reorder!.toFixed(1)} ms for a reorder (goal below 60)`,
  );
}

compare(20, 256, SMALL, 40, 15);
compare(20, 256, LARGE, 40, 15);
compare(20, 256, HUGE, 40, 15);
compare(80, 1024, SMALL, 6, 9);
compare(80, 1024, LARGE, 6, 9);
largePicture();
