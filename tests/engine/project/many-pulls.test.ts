import { describe, expect, it } from 'vitest';
import type { Command } from '../../../src/engine/project/commands/command.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

describe('several pulls together', () => {
  const steps: [string, Command, unknown][] = [
    [
      'recoloured',
      { kind: 'change-pulls', pulls: ['p1', 'p3'], change: { ink: 'tar', strokes: 2 } },
      [{ id: 'p1', ink: 'tar', strokes: 2 }, { id: 'p2' }, { id: 'p3', ink: 'tar', strokes: 2 }],
    ],
    [
      'shifted',
      { kind: 'offset-pulls', pulls: ['p1', 'p2'], dxMm: 0.14, dyMm: -3 },
      [{ dxMm: 0.1, dyMm: -3 }, { dxMm: 0.1, dyMm: -3 }, { id: 'p3' }],
    ],
    ['moved', { kind: 'move-pulls', pulls: ['p1', 'p2'], to: 1 }, [{ id: 'p3' }, { id: 'p1' }, { id: 'p2' }]],
    ['removed', { kind: 'remove-pulls', pulls: ['p1', 'p3'] }, [{ id: 'p2' }]],
  ];
  it.each(steps)('should be %s in one step, which one undo takes back', (_name, command, stack) => {
    const project = smallProject();
    const done = perform(startHistory(project), command);
    expect(done.past).toHaveLength(1);
    expect(done.project.bench).toMatchObject(stack as object);
    expect(writeProject(undo(done).project)).toBe(writeProject(project));
  });

  it('should put an ink in the place of another wherever it is pulled', () => {
    const start = startHistory(smallProject());
    const [first, second] = start.project.drawer.inks;
    const done = perform(start, { kind: 'replace-ink', ink: first!.id, by: second!.id });
    expect(done.project.bench.some((pull) => pull.ink === first!.id)).toBe(false);
    expect(undo(done).project.bench).toEqual(start.project.bench);
    expect(() => perform(start, { kind: 'replace-ink', ink: first!.id, by: 'ghost' })).toThrow(/no ink "ghost"/);
  });

  it('should take back each drag by itself and a run of steps as one', () => {
    const drag: Command = { kind: 'offset-pulls', pulls: ['p1'], dxMm: 5, dyMm: 0, drag: true };
    const step: Command = { kind: 'offset-pulls', pulls: ['p1'], dxMm: 0.1, dyMm: 0 };
    const history = [drag, drag, step, step].reduce(perform, startHistory(smallProject()));
    expect(history.past).toHaveLength(3);
    expect(undo(history).project.bench[0]).toMatchObject({ dxMm: 10 });
  });

  it('should leave the whole stack alone when one pull is not there', () => {
    const start = startHistory(smallProject());
    for (const command of [
      { kind: 'remove-pulls', pulls: ['p1', 'ghost'] },
      { kind: 'move-pulls', pulls: ['ghost'], to: 0 },
      { kind: 'offset-pulls', pulls: ['p1', 'p2'], dxMm: 9000, dyMm: 0 },
    ] satisfies Command[])
      expect(() => perform(start, command)).toThrow();
    expect(start.project).toEqual(smallProject());
  });
});
