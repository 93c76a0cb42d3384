import { describe, expect, it } from 'vitest';
import { screensFor } from '../../../src/components/drawer/files-report.ts';
import { trayScale } from '../../../src/components/drawer/shape-tray.ts';
import { rectangle, smallProject } from '../../helpers/small-project.ts';

const { drawer: studio } = smallProject();

function remarks(...sides: number[]): string[] {
  const shapes = sides.map((side, i) => rectangle(`leaf-${i}`, side, side / 2));
  return screensFor({ shapes, pages: shapes.map(() => null), remarks: [] }, studio).remarks.map(({ text }) => text);
}

describe('small shapes', () => {
  it('should be told of in one sentence, however many there are', () => {
    expect(remarks(6, 40)).toEqual(['leaf-0 prints under 15 mm across; if that is too small, give it a size on screen 4.']);
    expect(remarks(40, 6, 14.9)).toEqual([
      '2 shapes print under 15 mm across, leaf-1 first; where that is too small, give them a size on their screens.',
    ]);
    expect(remarks(15, 400)).toEqual([]);
  });

  it('should be seen in the tray beside a shape a hundred times as large', () => {
    expect(6 * trayScale(rectangle('icon', 6, 3), 600)).toBe(16);
    expect(600 * trayScale(rectangle('sheet', 600, 300), 600)).toBe(112);
    expect(6 * trayScale(rectangle('icon', 6, 3), null)).toBe(112);
  });
});
