import { describe, expect, it } from 'vitest';
import { screensFor, spreadAsLaid } from '../../../src/components/drawer/files-report.ts';
import { trayScale } from '../../../src/components/drawer/shape-tray.ts';
import { rectangle, smallProject } from '../../helpers/small-project.ts';

const { drawer: studio } = smallProject();

function remarks(...sides: number[]): string[] {
  const shapes = sides.map((side, i) => rectangle(`leaf-${i}`, side, side / 2));
  return screensFor(
    { shapes, pages: shapes.map(() => null), sized: shapes.map(() => true), whites: [], divided: [], remarks: [] },
    studio,
  ).remarks.map(({ text }) => text);
}

describe('shapes whose files give no size in mm', () => {
  /** Sides of the shapes, which of them have a size, and the scales at which they are laid. */
  const scales = (sides: number[], sized: boolean[], asked?: number) => {
    const shapes = sides.map((side, i) => rectangle(`icon-${i}`, side, side / 2));
    const { screens, longestMm } = screensFor(
      { shapes, pages: shapes.map(() => ({ widthMm: 6.35, heightMm: 6.35 })), sized, whites: [], divided: [], remarks: [] },
      studio,
      asked,
    );
    return { scales: screens.map(({ placed }) => placed[0]!.scale), longestMm };
  };

  it('should be laid so large that they are seen, all by one scale', () => {
    // Icons of 24 px are 6.35 mm at 96 px to the inch.
    expect(scales([6.35, 3.175], [false, false])).toEqual({ scales: [15.748, 15.748], longestMm: 100 });
    expect(scales([6.35, 3.175], [false, true])).toEqual({ scales: [15.748, 1], longestMm: 100 });
  });

  it('should keep their size where that is seen, or as is asked', () => {
    expect(scales([130, 6], [false, false])).toEqual({ scales: [1, 1], longestMm: 130 });
    expect(scales([6, 4], [true, true])).toEqual({ scales: [1, 1], longestMm: null });
    expect(scales([6, 4], [false, false], 60)).toEqual({ scales: [10, 10], longestMm: 60 });
  });

  it('should keep the size at which they are laid when they are spread over the sheet', () => {
    const shape = rectangle('icon', 6.35, 3);
    const laid = [
      { id: 'a', scale: 15.748, shape },
      { id: 'b', scale: 1, shape: rectangle('sheet', 300, 200) },
    ];
    const { printable } = studio.paper;
    expect(spreadAsLaid(laid, printable)!.map(({ screen, placed }) => [screen, placed[0]!.scale])).toEqual([
      ['a', 15.748],
      ['b', 1],
    ]);
    expect(spreadAsLaid([{ id: 'a', scale: 1, shape: undefined }], printable)).toBeNull();
  });

  it('should still fit the sheet, whatever is asked', () => {
    const { printable } = studio.paper;
    const [scale] = scales([10], [false], 5000).scales;
    expect(10 * scale!).toBeLessThanOrEqual(printable.widthMm);
    expect(10 * scale!).toBeGreaterThan(printable.widthMm - 0.1);
  });
});

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
