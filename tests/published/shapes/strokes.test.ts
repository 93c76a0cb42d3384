import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readShapes } from '../../../src/engine/shapes/read/read-shapes.ts';
import { differenceByResvg } from './raster.ts';

/*
 * Source: 200 of the npm package iconoir's drawings, every k-th by name, all but a few drawn in strokes;
 * STROKES=1000 takes that many. The independent renderer is resvg (npm @resvg/resvg-js), 512 px wide.
 * Tolerance: 0.5 % of the box may lie in one of the two alone (exclusive or), and the areas may differ by as much.
 */
const WANTED = Number(process.env['STROKES'] ?? 200);
const TOLERANCE = 0.005;
const folder = fileURLToPath(new URL('../../../node_modules/iconoir/icons/regular', import.meta.url));
const all = readdirSync(folder).filter((name) => name.endsWith('.svg')).sort();
const chosen = Array.from({ length: WANTED }, (_, i) => all[Math.floor((i * all.length) / WANTED)]!);

describe('readShapes on stroke drawings', () => {
  it('should cover what resvg strokes, but for 0.5 % of the box', { timeout: 120_000 }, () => {
    expect(new Set(chosen).size).toBe(WANTED);
    const wrong: string[] = [];
    let [worst, stroked] = [0, 0];
    for (const name of chosen) {
      const text = readFileSync(path.join(folder, name), 'utf8');
      if (/stroke="currentColor"/u.test(text)) stroked++;
      const { shapes, problems } = readShapes(text, name);
      // The package draws every icon on 24 px; 96 px are 25.4 mm.
      expect(['width', 'height'].map((side) => new RegExp(`<svg[^>]* ${side}="24(?:px)?"`, 'u').test(text))).toEqual([true, true]);
      const page = { widthMm: 24 * (25.4 / 96), heightMm: 24 * (25.4 / 96) };
      const faults = problems.filter((problem) => !['shape.outside', 'shape.page'].includes(problem.code));
      if (shapes.length !== 1 || faults.length > 0) {
        wrong.push(`${name}: ${JSON.stringify(problems)}`);
        continue;
      }
      const { apart, more } = differenceByResvg(text, shapes[0]!, page, 512);
      worst = Math.max(worst, apart, Math.abs(more));
      if (apart > TOLERANCE || Math.abs(more) > TOLERANCE) wrong.push(`${name}: off by ${apart}, area by ${more}`);
    }
    console.log(`worst of ${chosen.length} drawings, ${stroked} with strokes: ${(worst * 100).toFixed(3)} % of the box`);
    expect(stroked).toBeGreaterThan(0.9 * WANTED);
    expect(wrong).toEqual([]);
  });
});
