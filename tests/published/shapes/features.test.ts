import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readShapes } from '../../../src/engine/shapes/read/read-shapes.ts';
import { differenceByResvg } from './raster.ts';

interface Cases {
  source: string;
  tolerance: number;
  pageMm: { widthMm: number; heightMm: number };
  rows: { name: string; svg: string }[];
}

const cases = JSON.parse(readFileSync(new URL('./features.json', import.meta.url), 'utf8')) as Cases;

describe('readShapes against an independent renderer', () => {
  it.each(cases.rows)('should fill what resvg fills: $name', ({ svg }) => {
    const { shapes } = readShapes(svg, 'case.svg');
    // By what lies in one of the two alone: as much area at another place would not do.
    const { apart, share } = differenceByResvg(svg, shapes[0]!, cases.pageMm, 1200);
    expect(share).toBeGreaterThan(0.01);
    expect(apart).toBeLessThan(cases.tolerance);
  });
});
