import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ExploreSettings } from '../../../src/engine/explore/types.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { demoProject } from '../../../src/engine/project/demo.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { writeProject } from '../../../src/engine/project/write.ts';

const SHAPES = new URL('../../../shapes/', import.meta.url);
const project = demoProject(
  readdirSync(SHAPES)
    .filter((name) => name.endsWith('.svg'))
    .map((name) => ({ name, text: readFileSync(new URL(name, SHAPES), 'utf8') })),
);

function read(explore: Partial<Record<keyof ExploreSettings, unknown>>): ReturnType<typeof readProject> {
  return readProject(writeProject({ ...project, explore: { ...project.explore, ...explore } as ExploreSettings }), 'tide.json');
}

describe('readProject on what may change', () => {
  it('should read a project from before any of the conditions', () => {
    expect(read({})).toEqual({ value: project, problems: [] });
  });

  it('should give every condition back as it was written', () => {
    const conditions: Partial<ExploreSettings> = {
      maxInks: 3,
      apart: [['tar', 'rust']],
      neverOver: [['tar', 'foam']],
      inkFirst: 'clay',
      inkLast: 'tar',
      offsetDirection: 'across',
      offsetSnapMm: 0.5,
      turns: 'half',
      echoes: 2,
      echoMm: 1.5,
      maxStrokes: 3,
      veil: true,
      mustScreens: [project.drawer.screens[0]!.id],
      notScreens: [project.drawer.screens[1]!.id],
      maxPulls: 9,
      maxScreens: 8,
      maxSetUps: 9,
      maxThirdShare: 0.2,
      maxEdgeShare: 0.05,
    };
    expect(read(conditions).value?.explore).toEqual({ ...project.explore, ...conditions });
  });

  it.each([{ maxInks: 0 }, { turns: 'sideways' }, { apart: [['tar']] }, { maxThirdShare: 2 }, { offsetSnapMm: 0 }])(
    'should refuse %j and name the field',
    (condition) => {
      const { value, problems } = read(condition);
      expect(value).toBeNull();
      expect(problems[0]!.message).toContain(`explore.${Object.keys(condition)[0]!}`);
    },
  );
});

describe('apply on conditions about what goes', () => {
  const bare = { ...project, bench: [], lesson: [] };
  const [first, second] = project.drawer.screens.map(({ id }) => id);

  it('should take an ink out of every condition with the ink, and undo bring all back', () => {
    const explore: ExploreSettings = {
      ...project.explore,
      apart: [
        ['tar', 'rust'],
        ['foam', 'rust'],
      ],
      neverOver: [['foam', 'tar']],
      inkFirst: 'tar',
      inkLast: 'foam',
      maxInks: 3,
    };
    const before = startHistory({ ...bare, explore });
    const after = perform(before, { kind: 'remove-ink', ink: 'tar' });
    expect(after.project.explore).toEqual({
      ...explore,
      palette: explore.palette.filter((id) => id !== 'tar'),
      apart: [['foam', 'rust']],
      neverOver: undefined,
      inkFirst: undefined,
    });
    expect(JSON.stringify(after.project.explore)).not.toContain('"tar"');
    expect(after.past).toHaveLength(1);
    expect(undo(after).project).toEqual(before.project);
  });

  it('should take a screen out of what must and must not be there, and undo bring it back', () => {
    const explore: ExploreSettings = { ...project.explore, mustScreens: [first!], notScreens: [second!] };
    const before = startHistory({ ...bare, explore });
    const one = perform(before, { kind: 'remove-screen', screen: first! });
    expect(one.project.explore).toEqual({ ...explore, mustScreens: undefined });
    const both = perform(one, { kind: 'remove-screen', screen: second! });
    expect(both.project.explore).toEqual({ ...explore, mustScreens: undefined, notScreens: undefined });
    expect(undo(undo(both)).project).toEqual(before.project);
  });

  it('should leave conditions about others untouched', () => {
    const explore: ExploreSettings = { ...project.explore, apart: [['tar', 'rust']], mustScreens: [first!] };
    const { project: next } = apply({ ...bare, explore }, { kind: 'remove-ink', ink: 'clay' });
    expect(next.explore.apart).toBe(explore.apart);
    expect(apply({ ...bare, explore }, { kind: 'remove-screen', screen: second! }).project.explore).toBe(explore);
  });
});
