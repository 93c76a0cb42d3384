import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../src/engine/geometry/booleans.ts';
import { readShapes } from '../../../src/engine/shapes/read/read-shapes.ts';
import { coverageByResvg } from './raster.ts';

interface Cases {
  source: string;
  tolerance: number;
  pageMm: { widthMm: number; heightMm: number };
  rows: { name: string; svg: string }[];
}

const cases = JSON.parse(readFileSync(new URL('./features.json', import.meta.url), 'utf8')) as Cases;
const pageMm2 = cases.pageMm.widthMm * cases.pageMm.heightMm;

describe('readShapes against an independent renderer', () => {
  it.each(cases.rows)('should fill what resvg fills: $name', ({ svg }) => {
    const { shapes } = readShapes(svg, 'case.svg');
    const { share } = coverageByResvg(svg, 1200);
    expect(share).toBeGreaterThan(0.01);
    expect(Math.abs(outlineArea(shapes[0]!) / pageMm2 - share)).toBeLessThan(cases.tolerance);
  });
});
