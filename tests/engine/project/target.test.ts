import { describe, expect, it } from 'vitest';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import { letDown } from '../../../src/engine/ink/mix/mix.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import type { Target } from '../../../src/engine/project/types.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { pullOf, rectangle, screenAt, smallProject } from '../../helpers/small-project.ts';

const TARGET: Target = {
  inks: ['rust', 'tar'],
  squares: [
    { first: 'rust', over: null, lab: [50, 30, 20] },
    { first: 'rust', over: 'tar', lab: [20, 4, 3], reflectance: Array<number>(36).fill(0.04) },
  ],
};

describe('set-target', () => {
  const { project } = apply(smallProject(), { kind: 'set-target', target: TARGET });

  it('should be saved and read with the project', () => {
    expect(readProject(writeProject(project), 'p.json').value).toEqual(project);
  });

  it('should refuse inks that are not there, in a command and in a file', () => {
    const strange: Target = { ...TARGET, squares: [{ first: 'ghost', over: null, lab: [1, 0, 0] }] };
    expect(() => apply(smallProject(), { kind: 'set-target', target: strange })).toThrow('no ink "ghost"');
    const read = readProject(writeProject({ ...project, target: strange }), 'p.json');
    expect(read.value).toBeNull();
    expect(read.problems[0]!.message).toMatch(/^p\.json: target names the ink "ghost"/);
  });

  it('should refuse an ink on the target twice', () => {
    expect(readProject(writeProject({ ...project, target: { inks: ['tar', 'tar'], squares: [] } }), 'p.json').value).toBeNull();
  });

  it('should lose the squares of an ink that is removed', () => {
    const free = { ...project, bench: project.bench.filter((pull) => pull.ink !== 'tar'), lesson: [] };
    expect(apply(free, { kind: 'remove-ink', ink: 'tar' }).project.target).toEqual({ inks: ['rust'], squares: [TARGET.squares[0]] });
  });
});

describe('change-inks', () => {
  it('should change all of them as one step', () => {
    const start = smallProject();
    const inks = start.drawer.inks.slice(0, 2).map((ink) => ({ ...ink, basis: 'measured' as const }));
    const history = perform(startHistory(start), { kind: 'change-inks', inks });
    expect(history.project.drawer.inks.slice(0, 2)).toEqual(inks);
    expect(history.past).toHaveLength(1);
    expect(undo(history).project).toEqual(start);
  });

  it('should change none when one is not there', () => {
    const start = smallProject();
    expect(() => apply(start, { kind: 'change-inks', inks: [start.drawer.inks[0]!, { ...start.drawer.inks[1]!, id: 'ghost' }] })).toThrow(
      'no ink "ghost"',
    );
  });
});

describe('lay-veil', () => {
  it('should bring in what the veil needs and be taken back as one step', () => {
    const start = smallProject();
    const [base] = demoStocks();
    const ink = letDown(start.drawer.inks[0]!, base!, 6);
    const mixed: typeof ink = { ...ink };
    delete mixed.mix;
    const history = perform(startHistory(start), {
      kind: 'lay-veil',
      inks: [base!, mixed],
      shape: rectangle('whole-image', 500, 700),
      screen: screenAt('veil-screen', 9, 'whole-image', 280, 380),
      pull: pullOf('veil', 'veil-screen', ink.id),
      at: 1,
    });
    expect(history.project.bench.map(({ id }) => id)).toEqual(['p1', 'veil', 'p2', 'p3']);
    expect(readProject(writeProject(history.project), 'p.json').problems).toEqual([]);
    expect(history.past).toHaveLength(1);
    expect(undo(history).project).toEqual(start);
  });
});
