import { describe, expect, it, vi } from 'vitest';
import { exchange, type Told, turnedBack } from '../../../src/components/drawer/divide.ts';
import { screensFor } from '../../../src/components/drawer/files-report.ts';
import { readShapeFiles } from '../../../src/components/drawer/read-files.ts';
import { placeRings, shapeBounds } from '../../../src/engine/geometry/rings.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { emptyProject } from '../../../src/engine/project/empty.ts';
import { readShapes, type Reading } from '../../../src/engine/shapes/read/read-shapes.ts';
import { smallProject } from '../../helpers/small-project.ts';

vi.mock('../../../src/workers/client/client.ts', () => ({ sentenceOf: String }));
vi.mock('../../../src/workers/client/file-reader.ts', () => ({
  readFile: async (_: string, file: File, __: AbortSignal, reading?: Reading) => readShapes(await file.text(), file.name, reading),
}));

const BOAT =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 24"><g><path d="M2 16h20v4H2z" fill="red"/></g><g><path d="M12 2v10H4z" fill="blue"/></g></svg>';

describe('dividing a drawing', () => {
  it('should put a shape a group at one scale and in register, and find its way back after an undo', async () => {
    let project = emptyProject(smallProject());
    const files = await readShapeFiles([new File([BOAT], 'boat.svg')], new AbortController().signal, () => undefined);
    expect(Object.entries(files.divided[0]!.ways).map(([way, shapes]) => [way, shapes.length])).toEqual([
      ['drawing', 1],
      ['group', 2],
      ['colour', 2],
    ]);
    const { screens, ...said } = screensFor(files, project.drawer);
    project = apply(project, { kind: 'add-shapes', shapes: files.shapes, screens }).project;
    const whole: Told = { files, report: { ...said, head: '', refused: 0, screens: screens.map(({ id }) => id) } };
    const next = exchange(whole, { at: 0, each: 'group' }, project.drawer);
    const divided = apply(project, next.command).project;
    expect(divided.drawer.shapes.map(({ name }) => name)).toEqual(['boat, group 1', 'boat, group 2']);
    expect(next.report.head).toBe('2 shapes were added, on screens 1 to 2');
    const [hull, sail] = divided.drawer.screens.map(({ placed: [one] }) => {
      const shape = divided.drawer.shapes.find(({ id }) => id === one!.shape)!;
      return { scale: one!.scale, box: shapeBounds(placeRings(shape.rings, one!)) };
    });
    expect(hull!.scale).toBe(sail!.scale);
    // As in the file: the sail begins 2 units right of the hull's left end and 14 above it; a unit is a 96th of an inch. Places lie on 0.1 mm.
    const unit = (hull!.scale * 25.4) / 96;
    expect(Math.abs(sail!.box.xMm - hull!.box.xMm - 2 * unit)).toBeLessThan(0.11);
    expect(Math.abs(hull!.box.yMm - sail!.box.yMm - 14 * unit)).toBeLessThan(0.11);
    expect(turnedBack(next, [whole], divided.drawer)).toBeNull();
    expect(turnedBack(next, [whole], project.drawer)).toMatchObject({ files, others: [{ files: next.files }] });
  });
});
