import { deltaE2000 } from '../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../src/engine/colour/lab.ts';
import { CARD_BLACK, CARD_WHITE } from '../../src/engine/ink/characterise/card.ts';
import { measuredInk } from '../../src/engine/ink/characterise/measured-ink.ts';
import { demoInks } from '../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../src/engine/ink/film/film.ts';
import { overprintGrid } from '../../src/engine/ink/film/overprint.ts';
import { fitOverprints, fittedInk, type PulledSquare } from '../../src/engine/ink/fit/fit-overprints.ts';
import type { Ink } from '../../src/engine/ink/types.ts';
import { choices } from '../helpers/noise.ts';

// Inks are invented: smooth random curves from transparent to opaque. Noise is that of an instrument,
// 0.5 % of a perfect white in every band of all four readings, ink and bare card. The clock is the
// process's processor time, so that other work on the machine counts for neither.

const paper = DEMO_PAPER.reflectance;

function now(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function someInks(count: number, seed: number): Ink[] {
  const { uniform } = choices(seed);
  return Array.from({ length: count }, (_, n) => {
    const [middle, width, strength] = [uniform() * 36, 2 + 5 * uniform(), 0.3 + 2.5 * uniform()];
    const scatter = 10 ** (-2 + 2.5 * uniform());
    const kx = paper.map((_, band) => 0.01 + strength * Math.exp(-(((band - middle) / width) ** 2)) + 0.05 * uniform() ** 4);
    const sx = paper.map((_, band) => scatter * (1.3 - band / 60));
    return { ...demoInks()[n % 8]!, id: `ink ${n}`, kx, sx };
  });
}

/** ΔE00 of every ink over every other between the true inks and those found from readings, ascending. */
function missesOf(inks: readonly Ink[], noise: number): number[] {
  const { gauss } = choices(1948);
  const read = (curve: ArrayLike<number>): Float64Array =>
    Float64Array.from(curve, (value) => Math.min(1, Math.max(0, value + noise * gauss())));
  const found = inks.map((ink) => {
    const readings = {
      overWhite: read(stackReflectance([ink], CARD_WHITE)),
      overBlack: read(stackReflectance([ink], CARD_BLACK)),
      white: read(CARD_WHITE),
      black: read(CARD_BLACK),
    };
    return measuredInk(ink, readings).ink;
  });
  const misses = inks.flatMap((first, i) =>
    inks.map((over, j) =>
      deltaE2000(labD50(stackReflectance([first, over], paper)), labD50(stackReflectance([found[i]!, found[j]!], paper))),
    ),
  );
  return misses.sort((a, b) => a - b);
}

function inversion(): void {
  for (const [name, inks] of [
    ['the 8 demo inks', demoInks()],
    ['24 invented inks', someInks(24, 5)],
  ] as const) {
    const exact = missesOf(inks, 0);
    const noisy = missesOf(inks, 0.005);
    const at = (list: number[], share: number): string => list[Math.min(list.length - 1, Math.floor(share * list.length))]!.toFixed(2);
    console.log(`  inversion, ${name}: noiseless max ΔE00 ${exact.at(-1)!.toExponential(1)} (goal < 0.01)`);
    console.log(
      `  inversion, ${name}: 0.5 % noise, overprints median ΔE00 ${at(noisy, 0.5)} (goal < 1), 95 % ${at(noisy, 0.95)}, max ${at(noisy, 1)}`,
    );
  }
}

function chart(): void {
  const inks = someInks(24, 11);
  const times: number[] = [];
  let checksum = 0;
  for (let round = 0; round < 9; round++) {
    const start = now();
    const grid = overprintGrid(inks, { paper: DEMO_PAPER }, true);
    times.push(now() - start);
    checksum += grid.rows[3]![7]!.orderDeltaE;
  }
  if (!(checksum > 0)) throw new Error('nothing was charted');
  const [first, ...warm] = times;
  console.log(
    `  overprint chart of 24 inks: first ${first!.toFixed(0)} ms, then median ${warm.sort((a, b) => a - b)[4]!.toFixed(0)} ms (goal < 200)`,
  );
}

function fit(): void {
  const inks = someInks(8, 3);
  const { gauss } = choices(77);
  const believed = inks.map((ink) => ({
    ...ink,
    kx: ink.kx.map((k, band) => k * (0.8 + 0.15 * Math.sin(band / 5))),
    sx: ink.sx.map((s) => 1.4 * s),
  }));
  for (const as of ['curves', 'colours'] as const) {
    const squares: PulledSquare[] = inks.flatMap((first) =>
      [null, ...inks].map((over) => {
        const reflectance = stackReflectance(over ? [first, over] : [first], paper).map((value) => Math.max(0, value + 0.005 * gauss()));
        const ids = { first: first.id, over: over?.id ?? null };
        return as === 'curves' ? { ...ids, reflectance } : { ...ids, lab: labD50(reflectance) };
      }),
    );
    const start = now();
    const result = fitOverprints(squares, believed, DEMO_PAPER);
    const took = now() - start;
    const fitted = believed.map((ink) => fittedInk(ink, result));
    const trueMiss = inks.flatMap((first, i) =>
      inks.map((over, j) =>
        deltaE2000(labD50(stackReflectance([first, over], paper)), labD50(stackReflectance([fitted[i]!, fitted[j]!], paper))),
      ),
    );
    const mean = trueMiss.reduce((sum, value) => sum + value, 0) / trueMiss.length;
    console.log(
      `  fit of 8 inks to 72 squares, ${as} with 0.5 % noise: mean ΔE00 ${result.before.meanDeltaE.toFixed(2)} before, ` +
        `${result.after.meanDeltaE.toFixed(2)} after, ${mean.toFixed(2)} to the true prints; ${took.toFixed(0)} ms`,
    );
  }
}

inversion();
chart();
fit();
