import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/engine/project/apply.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { MOST_PINS } from '../../../src/engine/project/types.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import type { Pin } from '../../../src/engine/recipe/prints/pinned-prints.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const project = { ...smallProject(), lesson: [] };
const [ink] = project.drawer.inks;
const [one, two] = project.drawer.screens;
const pin = (number: number, screen = one!.id): Pin => ({
  key: `k${number}`,
  pulls: [pullOf('a', screen, ink!.id)],
  lineage: { seed: 's', index: number, way: 'nearer', parents: [{ seed: 'tide', index: 1 }] },
});

describe('pins', () => {
  it('should come back from a file as they were, and projects without them be read', () => {
    const { project: pinned } = apply(project, { kind: 'set-pins', pins: [pin(3), pin(1, two!.id)] });
    expect(pinned.pins).toEqual([pin(3), pin(1, two!.id)]);
    expect(readProject(writeProject(pinned), 'p.json')).toEqual({ value: pinned, problems: [] });
    expect(readProject(writeProject(project), 'p.json').value?.pins).toBeUndefined();
  });

  it('should go with the screen or ink that they print, and come back with an undo', () => {
    const before = startHistory({ ...project, bench: [], pins: [pin(3), pin(1, two!.id)] });
    const after = perform(before, { kind: 'remove-screen', screen: two!.id });
    expect(after.project.pins).toEqual([pin(3)]);
    expect(undo(after).project.pins).toEqual([pin(3), pin(1, two!.id)]);
    expect(perform(before, { kind: 'remove-ink', ink: ink!.id }).project.pins).toEqual([]);
  });

  it('should refuse prints of what is not there, and too many', () => {
    expect(() => apply(project, { kind: 'set-pins', pins: [pin(3, 'gone')] })).toThrow(/no screen "gone"/u);
    expect(() => apply(project, { kind: 'set-pins', pins: Array.from({ length: MOST_PINS + 1 }, (_, i) => pin(i)) })).toThrow(
      /At most 100 prints stay pinned/u,
    );
    const { problems } = readProject(writeProject({ ...project, pins: [pin(3, 'gone')] }), 'p.json');
    expect(problems[0]!.message).toMatch(/^p\.json: .*pins\[0\]/u);
  });
});
