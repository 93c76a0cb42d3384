import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { intersectionArea } from '../../../src/engine/geometry/booleans.ts';
import { shapeBounds } from '../../../src/engine/geometry/rings.ts';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import { demoProject } from '../../../src/engine/project/demo.ts';
import { checkProject } from '../../../src/engine/project/read.ts';
import { pullRings, screenRings } from '../../../src/engine/shapes/place/placed.ts';
import { readShapes } from '../../../src/engine/shapes/read/read-shapes.ts';
import { differenceByResvg } from '../../published/shapes/raster.ts';

const folder = new URL('../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const project = demoProject(files);
const { drawer, bench, lesson } = project;

describe('the demo drawer', () => {
  it('should be twelve shapes that read whole, as resvg draws them', () => {
    expect(files).toHaveLength(12);
    for (const { name, text } of files) {
      const { shapes, problems } = readShapes(text, name);
      expect(problems).toEqual([]);
      const [, width, height] = /width="(\d+)mm" height="(\d+)mm"/u.exec(text)!.map(Number);
      const { apart, share } = differenceByResvg(text, shapes[0]!, { widthMm: width!, heightMm: height! }, 800);
      expect(share).toBeGreaterThan(0.01);
      expect(apart).toBeLessThan(0.002);
    }
  });
});

describe('demoProject', () => {
  it('should be a valid project, the same for the same files in any order', () => {
    const read = checkProject(JSON.parse(JSON.stringify(project)), 'the demo');
    expect(read.problems).toEqual([]);
    expect(demoProject([...files].reverse())).toEqual(project);
  });

  it('should pull twelve of its screens in all eight inks', () => {
    expect(drawer.shapes).toHaveLength(12);
    expect(drawer.screens.length).toBeGreaterThanOrEqual(14);
    expect(bench).toHaveLength(12);
    expect(new Set(bench.map((pull) => pull.ink)).size).toBe(8);
    const used = new Set(drawer.screens.flatMap((screen) => screen.placed.map((placed) => placed.shape)));
    expect([...used].sort()).toEqual(drawer.shapes.map((shape) => shape.id));
  });

  it('should keep every screen 3 mm, the reach of its offsets, inside the printable part', () => {
    const { printable } = drawer.paper;
    for (const screen of drawer.screens) {
      const box = shapeBounds(screenRings(screen, drawer.shapes).rings);
      const where = `${screen.name}: ${JSON.stringify(box)}`;
      expect(box.xMm, where).toBeGreaterThanOrEqual(printable.xMm + 3);
      expect(box.yMm, where).toBeGreaterThanOrEqual(printable.yMm + 3);
      expect(box.xMm + box.widthMm, where).toBeLessThanOrEqual(printable.xMm + printable.widthMm - 3);
      expect(box.yMm + box.heightMm, where).toBeLessThanOrEqual(printable.yMm + printable.heightMm - 3);
    }
  });

  it('should teach with four pulls of which some orders, but not all, print the same', () => {
    expect(lesson).toHaveLength(4);
    const outlines = lesson.map((pull) =>
      pullRings(
        drawer.screens.find((screen) => screen.id === pull.screen)!,
        drawer.shapes,
        pull,
        drawer.paper,
      ),
    );
    const areas = outlines.flatMap((a, i) => outlines.slice(0, i).map((b) => intersectionArea(a, b)));
    const over = areas.filter((area) => area > 0);
    // Three over one another, the fourth over one of them: 3! acyclic orientations times 2.
    expect(over).toHaveLength(4);
    for (const area of over) expect(area).toBeGreaterThan(1000);
    const { orders, groups } = groupOrders({ pulls: lesson }, drawer, { toleranceMm: 0.05, minDeltaE: 1 });
    expect(orders).toHaveLength(24);
    expect(groups).toHaveLength(12);
  });

  it('should name a file that is missing or broken', () => {
    expect(() => demoProject(files.slice(1))).toThrow(/shapes\/bollard\.svg/u);
    expect(() => demoProject([...files.slice(1), { name: 'bollard.svg', text: '<svg' }])).toThrow(/^bollard\.svg: /u);
  });
});
