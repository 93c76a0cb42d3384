import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../src/engine/project/demo.ts';
import { readProject, writeProject } from '../../../src/engine/project/read.ts';
import type { ExploreSettings } from '../../../src/engine/explore/types.ts';

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
  it('should read a project from before any of the wishes', () => {
    expect(read({})).toEqual({ value: project, problems: [] });
  });

  it('should give every wish back as it was written', () => {
    const wishes: Partial<ExploreSettings> = {
      maxInks: 3, apart: [['tar', 'rust']], neverOver: [['tar', 'foam']], inkFirst: 'clay', inkLast: 'tar', offsetDirection: 'across', offsetSnapMm: 0.5,
      turns: 'half', echoes: 2, echoMm: 1.5, maxStrokes: 3, veil: true, mustScreens: [project.drawer.screens[0]!.id], notScreens: [project.drawer.screens[1]!.id],
      maxPulls: 9, maxScreens: 8, maxSetUps: 9, maxThirdShare: 0.2, maxEdgeShare: 0.05,
    };
    expect(read(wishes).value?.explore).toEqual({ ...project.explore, ...wishes });
  });

  it.each([{ maxInks: 0 }, { turns: 'sideways' }, { apart: [['tar']] }, { maxThirdShare: 2 }, { offsetSnapMm: 0 }])('should refuse %j and name the field', (wish) => {
    const { value, problems } = read(wish);
    expect(value).toBeNull();
    expect(problems[0]!.message).toContain(`explore.${Object.keys(wish)[0]!}`);
  });
});
