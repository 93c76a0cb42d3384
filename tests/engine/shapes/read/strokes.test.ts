import { describe, expect, it } from 'vitest';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';
import { page, read } from '../area-of.ts';

const line = (attributes: string): string => page(`<path d="M10 50H90" stroke="black" ${attributes}/>`);

/* Areas of bars and discs by hand; a round end adds half a disc. */
describe('strokes', () => {
  it.each([
    ['a butt line', line('stroke-width="4"'), 320],
    ['a square line', line('stroke-width="4" stroke-linecap="square"'), 336],
    ['a round line', line('stroke-width="4" stroke-linecap="round"'), 320 + Math.PI * 4],
    ['a width in mm', line('style="stroke-width:4"'), 320],
    ['dashes that a path length scales: 8 of 5 mm', line('stroke-width="4" pathLength="16" stroke-dasharray="1"'), 160],
    ['dashes of no length, round: 8 discs', line('stroke-width="4" stroke-dasharray="0 10" stroke-linecap="round" stroke-dashoffset="-5"'), 8 * Math.PI * 4],
    ['a pattern of nothing', line('stroke-width="4" stroke-dasharray="0 0"'), 320],
    ['a pattern that is none', line('stroke-width="4" stroke-dasharray="5 -1"'), 320],
    ['a frame with mitres', page('<rect x="20" y="20" width="40" height="40" fill="none" stroke="black" stroke-width="4"/>'), 44 * 44 - 36 * 36],
    ['a white line over a fill, a hole', page('<rect width="50" height="50"/><path d="M0 25H50" stroke="white" stroke-width="4"/>'), 2300],
    ['a white line beneath its own fill', page('<rect x="20" y="20" width="50" height="50" stroke="white" stroke-width="4" paint-order="stroke"/>'), 2500],
    ['a pen that keeps its width', page('<path transform="scale(2)" d="M10 10H40" stroke="black" stroke-width="10" vector-effect="non-scaling-stroke"/>'), (60 * 10 * 25.4) / 96],
    ['a pen pressed flat', page('<path transform="scale(1 0)" d="M10 10H40" stroke="black"/><rect width="1" height="1"/>'), 1],
  ])('should cover what the pen does: %s', (_, svg, areaMm2) => {
    // A chord lies 0.05 mm inside its circle of 2 mm at most, two thirds of that on average: 3.4 % of a disc.
    expect(read(svg).areaMm2).toBeLessThan(areaMm2 + 0.01);
    expect(read(svg).areaMm2).toBeGreaterThan(areaMm2 * 0.966);
    if (Number.isInteger(areaMm2)) expect(read(svg).areaMm2).toBeCloseTo(areaMm2, 3);
  });

  it('should leave a white line to be asked about', () => {
    expect(read(page('<rect width="50" height="50"/><path d="M0 25H50" stroke="white"/>')).codes).toEqual(['shape.white']);
  });

  it('should refuse a million dashes and a pen of kilometres in one sentence', () => {
    expect(read(line('stroke-dasharray="0.00001"')).codes).toEqual(['shape.too-many']);
    expect(read(line('stroke-width="1e9"')).codes).toEqual(['shape.size']);
  });
});

const LAYERED = page(
  '<g id="hull"><rect width="20" height="10" fill="red"/><rect y="20" width="20" height="10" fill="#00f"/></g>' +
    '<g><title>Sail</title><rect x="10" width="20" height="10" fill="#ff0000"/></g><circle cx="80" cy="80" r="5" fill="blue"/>',
);

describe('the parts of a drawing', () => {
  it('should name its groups and its colours', () => {
    expect(readShapes(LAYERED, 'boat.svg').parts).toEqual({ groups: ['hull', 'Sail', 'beside the groups'], colours: ['#ff0000', '#0000ff'] });
  });

  it('should give a shape a group and a shape a colour, each where it lies on the page', () => {
    const groups = readShapes(LAYERED, 'boat.svg', { each: 'group' }).shapes;
    expect(groups.map(({ name, widthMm, heightMm }) => [name, Math.round(widthMm), Math.round(heightMm)])).toEqual([
      ['boat, hull', 20, 30],
      ['boat, Sail', 20, 10],
      ['boat, beside the groups', 10, 10],
    ]);
    const colours = readShapes(LAYERED, 'boat.svg', { each: 'colour' }).shapes;
    expect(colours.map(({ name, widthMm }) => [name, Math.round(widthMm)])).toEqual([['boat, #ff0000', 30], ['boat, #0000ff', 85]]);
    expect(new Set([...groups, ...colours].map(({ page: on }) => JSON.stringify(on))).size).toBe(1);
  });

  it('should look into groups that hold but one, and cut white out of each part', () => {
    const inside = '<g><g><rect width="10" height="10" fill="red"/></g><g><rect x="20" width="10" height="10" fill="green"/><rect x="22" width="5" height="10" fill="white"/></g></g>';
    const { shapes } = readShapes(page(inside), 'a.svg', { each: 'group' });
    expect(shapes.map(({ rings }) => rings.length)).toEqual([1, 2]);
  });

  it('should offer nothing where there is but one part, or a hundred', () => {
    const none = { groups: [], colours: [] };
    expect(readShapes(page('<rect width="5" height="5"/>'), 'a.svg').parts).toEqual(none);
    const many = Array.from({ length: 100 }, (_, i) => `<g><rect x="${i}" width="1" height="1" fill="#${String(i).padStart(3, '0')}"/></g>`).join('');
    expect(readShapes(page(many), 'a.svg').parts).toEqual(none);
    expect(readShapes('', 'a.svg').parts).toEqual(none);
  });
});
