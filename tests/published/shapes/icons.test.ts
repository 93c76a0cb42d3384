import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readShapes } from '../../../src/engine/shapes/read/read-shapes.ts';
import { differenceByResvg } from './raster.ts';

/*
 * Source: 400 files of the npm package bootstrap-icons, every k-th by name, so that all kinds come
 * up evenly, and four that once lost a part; the independent renderer is resvg (npm @resvg/resvg-js), 512 px wide.
 * Tolerance: 1 % of the box may lie in one of the two alone (exclusive or).
 * A stencil prints a half-transparent fill in full, so the renderer is given the files without it.
 */
const WANTED = 400;
const TOLERANCE = 0.01;
const root = path.dirname(createRequire(import.meta.url).resolve('bootstrap-icons/package.json'));
const folder = path.join(root, 'icons');
const all = readdirSync(folder).filter((name) => name.endsWith('.svg')).sort();
const chosen = Array.from({ length: WANTED }, (_, i) => all[Math.floor((i * all.length) / WANTED)]!);
for (const name of ['badge-tm.svg', 'currency-yen.svg', 'file-binary.svg', 'type-bold.svg']) {
  if (!chosen.includes(name)) chosen.push(name);
}

describe('readShapes on an icon package', () => {
  it('should fill what resvg paints, but for 1 % of the box', () => {
    expect(new Set(chosen).size).toBeGreaterThanOrEqual(WANTED);
    const wrong: string[] = [];
    let worst = 0;
    for (const name of chosen) {
      const text = readFileSync(path.join(folder, name), 'utf8');
      const { shapes, problems } = readShapes(text, name);
      const viewBox = /viewBox="0 0 (\d+) (\d+)"/u.exec(text)!;
      const px = [/ width="(\d+)"/u.exec(text)![1]!, / height="(\d+)"/u.exec(text)![1]!].map(Number);
      expect(px.join(' ')).toBe(`${viewBox[1]} ${viewBox[2]}`);
      // 96 px are 25.4 mm.
      const page = { widthMm: px[0]! * (25.4 / 96), heightMm: px[1]! * (25.4 / 96) };
      const solid = text.replaceAll(/ (?:fill-)?opacity="[.\d]+"/gu, '');
      // Some icons reach a hair over their own page; that is said, and resvg cuts it off as well.
      const faults = problems.filter((problem) => problem.code !== 'shape.outside');
      if (shapes.length !== 1 || faults.length > 0) {
        wrong.push(`${name}: ${JSON.stringify(problems)}`);
        continue;
      }
      const { apart: off } = differenceByResvg(solid, shapes[0]!, page, 512);
      worst = Math.max(worst, off);
      if (off > TOLERANCE) wrong.push(`${name}: off by ${off}`);
    }
    console.log(`worst of ${chosen.length} icons: ${(worst * 100).toFixed(3)} % of the box`);
    expect(wrong).toEqual([]);
  });
});
