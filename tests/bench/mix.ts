import { Color, mix } from 'spectral.js';
import type { Lab } from '../../src/engine/colour/lab.ts';
import { DEMO_PAPER } from '../../src/engine/ink/demo/demo-paper.ts';
import { demoStocks } from '../../src/engine/ink/demo/demo-stocks.ts';
import { matchInk } from '../../src/engine/ink/mix/match.ts';
import { mixInks } from '../../src/engine/ink/mix/mix.ts';
import { coarseMatch } from '../engine/ink/coarse-match.ts';

// Twelve stocks: a base and eleven inks. Targets within reach, at its edge and beyond.
const stocks = demoStocks();
const ground = DEMO_PAPER.reflectance;
const targets: [string, Lab][] = [
  ['grey', [60, 0, 0]],
  ['warm red', [51, 33, 37]],
  ['blue', [49, 7, -30]],
  ['tint', [88, 3, 5]],
  ['edge red', [61, 57, 43]],
  ['out of reach green', [70, -60, 30]],
  ['out of reach violet', [30, 60, -70]],
];

const median = (values: number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;
const rows = targets.map(([name, target]) => {
  const times: number[] = [];
  let found = 0;
  for (let i = 0; i < 7; i++) {
    const before = process.cpuUsage();
    found = matchInk(target, stocks, { ground, balanceG: 1e-6 }).answers[0]!.deltaE;
    const { user, system } = process.cpuUsage(before);
    times.push((user + system) / 1000);
  }
  const grid = coarseMatch(target, stocks, ground);
  return {
    target: name,
    'ms of one core': Math.round(median(times)),
    slowest: Math.round(Math.max(...times)),
    'ΔE found': found.toFixed(3),
    'ΔE grid + refining': grid.toFixed(3),
    'behind by': Math.max(0, found - grid).toFixed(4),
  };
});
console.log('matchInk over 12 stocks, wanted: under 300 ms, behind by at most 0.1');
console.table(rows);

const inks = stocks.slice(1, 5);
const colours = ['#a34522', '#20588c', '#d8c060', '#303030'].map((hex) => new Color(hex));
const parts = inks.map((ink) => ({ ink, parts: 1 }));
const shares = colours.map((colour): [Color, number] => [colour, 1]);
const REPEATS = 2000;

/** Processor time of one call, µs. */
function each(call: () => unknown): number {
  const before = process.cpuUsage();
  for (let i = 0; i < REPEATS; i++) call();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / REPEATS;
}

const own: number[] = [];
const other: number[] = [];
for (let round = 0; round < 7; round++) {
  own.push(each(() => mixInks(parts, { id: 'm', name: 'm' })));
  other.push(each(() => mix(...shares)));
}
console.log(
  'A mix of four inks, µs: mixInks with two constants, 36 bands and its colours on the card; spectral.js with one constant, 38 bands',
);
console.table([
  { mixInks: median(own).toFixed(1), 'spectral.js': median(other).toFixed(1), ratio: (median(own) / median(other)).toFixed(2) },
]);
