import { Resvg } from '@resvg/resvg-js';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';
import { drawings, shapeSvg } from '../../../../src/engine/visitfile/carried/drawings.ts';
import { readVisit, writeVisit } from '../../../../src/engine/visitfile/visit-file.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const ring = (x: number, y: number, size: number): number[] => [x, y, x + size, y, x + size, y + size, x, y + size];
const frame = {
  id: 'f',
  name: 'Frame & "rest"',
  rings: [ring(10, -4, 40), ring(20, 6, 20)],
  fillRule: 'evenodd' as const,
  widthMm: 40,
  heightMm: 40,
};

describe('the drawings in a project file', () => {
  it('should cover the area that the shape has, in the eyes of another renderer (resvg)', () => {
    const picture = new Resvg(shapeSvg(frame), { fitTo: { mode: 'width', value: 400 } }).render();
    expect([picture.width, picture.height]).toEqual([400, 400]);
    const inked = picture.pixels.filter((value, i) => i % 4 === 3 && value > 127).length;
    // 40² less 20² mm², at 10 px a mm.
    expect(Math.abs(inked - 120_000)).toBeLessThan(120);
  });

  it('should read back as the shape they were drawn from, at its size', () => {
    const { shapes } = readShapes(shapeSvg(frame), 'frame.svg');
    expect(shapes[0]).toMatchObject({ widthMm: 40, heightMm: 40 });
  });

  it('should lie in the file under names that no two shapes share and no path leads out of', () => {
    const names = drawings([frame, frame, { ...frame, name: '../../etc' }, { ...frame, name: '' }]).map(([name]) => name);
    expect(names).toEqual(['1-Frame-rest.svg', '2-Frame-rest.svg', '3-etc.svg', '4-shape.svg']);
    const project = smallProject();
    const zip = writeVisit({ project, made: null, log: null });
    expect(Object.keys(unzipSync(zip)).filter((name) => name.startsWith('shapes/'))).toHaveLength(project.drawer.shapes.length);
    expect(readVisit(zip, 'p.zip').value!.project).toEqual(project);
  });
});
