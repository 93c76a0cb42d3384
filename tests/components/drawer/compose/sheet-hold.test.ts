import { describe, expect, it } from 'vitest';
import { heldAt, type SheetHold } from '../../../../src/components/drawer/compose/sheet-hold.ts';
import type { Command } from '../../../../src/engine/project/commands/command.ts';
import { perform, startHistory, undo } from '../../../../src/engine/project/history.ts';
import type { PlacedShape } from '../../../../src/engine/shapes/types.ts';
import { screenAt, smallProject } from '../../../helpers/small-project.ts';

const at = (xMm: number, yMm: number, more: Partial<PlacedShape> = {}): PlacedShape => ({
  shape: 'wide',
  xMm,
  yMm,
  turnDeg: 0,
  scale: 1,
  ...more,
});
const hold: SheetHold = {
  pointer: 1,
  kind: 'move',
  from: { xMm: 30, yMm: 20 },
  about: { xMm: 20, yMm: 20 },
  before: [at(100, 100), at(20, 20)],
  pieces: [1],
};

describe('pieces held on the sheet', () => {
  it('should move, scale and turn what is held alone', () => {
    expect(heldAt(hold, { xMm: 33.33, yMm: 26 }, false)).toEqual([at(100, 100), at(23.3, 26)]);
    expect(heldAt({ ...hold, kind: 'scale' }, { xMm: 45, yMm: 20 }, false)).toEqual([at(100, 100), at(20, 20, { scale: 2.5 })]);
    // From right of the middle to below it, y down: a quarter clockwise.
    expect(heldAt({ ...hold, kind: 'turn' }, { xMm: 20, yMm: 35 }, false)).toEqual([at(100, 100), at(20, 20, { turnDeg: 90 })]);
  });

  it('should keep to one axis and to whole 15° with Shift', () => {
    expect(heldAt(hold, { xMm: 33, yMm: 40 }, true)[1]).toEqual(at(20, 40));
    expect(heldAt({ ...hold, kind: 'turn' }, { xMm: 30, yMm: 23 }, true)[1]).toMatchObject({ turnDeg: 15 });
  });
});

describe('commands of the whole sheet', () => {
  const drag: Command = { kind: 'place-shapes', screen: 's1', placed: [at(210, 200)] };
  const nudge = (xMm: number): Command => ({ kind: 'place-shapes', screen: 's1', placed: [at(xMm, 200)], run: 'nudge 0' });

  it('should take back each drag by itself and a run of nudges as one', () => {
    const history = [drag, nudge(211), nudge(212)].reduce(perform, startHistory(smallProject()));
    expect(history.past).toHaveLength(2);
    expect(undo(history).project.drawer.screens[0]?.placed).toEqual([at(210, 200)]);
    expect(undo(undo(history)).project).toEqual(smallProject());
  });

  it('should align screens in one step, all or none of them', () => {
    const aligned: Command = {
      kind: 'place-screens',
      screens: [
        { screen: 's1', placed: [at(210, 200)] },
        { screen: 's2', placed: [at(210, 90)] },
      ],
    };
    const done = perform(startHistory(smallProject()), aligned);
    expect(done.project.drawer.screens.slice(0, 2).map(({ placed }) => placed)).toEqual([[at(210, 200)], [at(210, 90)]]);
    expect(undo(done).project).toEqual(smallProject());
    const gone: Command = { ...aligned, screens: [...aligned.screens, { screen: 'gone', placed: [] }] };
    expect(() => perform(startHistory(smallProject()), gone)).toThrow(/gone/);
  });

  it('should make many screens in one step, and refuse shapes that are not there', () => {
    const screens = [screenAt('n1', 4, 'wide', 100, 100), screenAt('n2', 5, 'tall', 100, 100)];
    const made = perform(startHistory(smallProject()), { kind: 'add-screens', screens });
    expect(made.project.drawer.screens.map(({ id }) => id)).toEqual(['s1', 's2', 's3', 'n1', 'n2']);
    expect(undo(made).project).toEqual(smallProject());
    const ghost = [screenAt('n1', 4, 'ghost', 0, 0)];
    expect(() => perform(startHistory(smallProject()), { kind: 'add-screens', screens: ghost })).toThrow(/no shape "ghost"/);
    const off: Command = { kind: 'place-shapes', screen: 's1', placed: [at(1e9, 0)] };
    expect(() => perform(startHistory(smallProject()), off)).toThrow(/ten metres/);
  });
});
