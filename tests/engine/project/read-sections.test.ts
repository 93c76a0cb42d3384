import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isNewer } from '../../../src/engine/project/newer.ts';
import { readSections } from '../../../src/engine/project/read-sections.ts';
import { checkProject } from '../../../src/engine/project/read.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

type Sections = Record<string, unknown>;

/** A project of today's kind with two recipes and a visit. */
function build(): Sections {
  const project = smallProject();
  const recipes = ['r1', 'r2'].map((id) => recipeOf(project.bench, project.drawer, { id, title: `Kept ${id}` }));
  return { ...project, recipes, visit: [{ recipe: 'r1', sheets: 3 }] } as unknown as Sections;
}

const FULL = build();
const full = (): Sections => structuredClone(FULL);
const read = (raw: unknown) => readSections(raw, smallProject(), 'the saved project');

describe('reading a saved project section by section', () => {
  it('should keep a project from before as it is', () => {
    const raw: unknown = JSON.parse(readFileSync(new URL('../../files-from-before/project.json', import.meta.url), 'utf8'));
    const { project, aside } = read(raw);
    expect(aside).toEqual([]);
    expect(project).toEqual(checkProject(raw, 'x').value);
  });

  it('should lose one recipe, not the project, when a field of it is junk', () => {
    const raw = full();
    (raw['recipes'] as { pulls: unknown }[])[0]!.pulls = 'junk';
    const { project, aside } = read(raw);
    expect(project.recipes.map(({ id }) => id)).toEqual(['r2']);
    expect(project.drawer).toEqual(smallProject().drawer);
    expect(project.bench).toEqual(smallProject().bench);
    expect(project.visit).toEqual([]);
    expect(aside.map(({ message }) => message)).toEqual([expect.stringMatching(/^the saved project: recipes\[0\]\.pulls is "junk"/)]);
  });

  it('should put aside with an ink what was pulled in it, and nothing else', () => {
    const raw = full();
    const drawer = raw['drawer'] as { inks: { id: string; name: unknown }[] };
    const gone = drawer.inks[0]!;
    gone.name = 7;
    const { project, aside } = read(raw);
    expect(project.drawer.inks.some(({ id }) => id === gone.id)).toBe(false);
    expect(project.bench).toEqual(smallProject().bench.filter((pull) => pull.ink !== gone.id));
    expect(project.recipes).toHaveLength(2);
    expect(aside[0]?.message).toMatch(/drawer\.inks\[0\]\.name is 7/);
  });

  it('should give a readable project and at least a sentence whatever one section is replaced by', () => {
    const junk = fc.oneof(fc.anything(), fc.constantFrom(null, Number.NaN, [], {}, 'junk', [[]], [null], { a: 1 }, -1));
    const names = Object.keys(full());
    fc.assert(
      fc.property(fc.constantFrom(...names), junk, (section, value) => {
        const raw = { ...full(), [section]: value };
        const { project, aside } = read(raw);
        const whole = checkProject(raw, 'x');
        expect(checkProject(project, 'x').problems).toEqual([]);
        if (whole.value === null) expect(aside.length).toBeGreaterThan(0);
        // What does not lean on the section is there as it was.
        if (section !== 'recipes') expect(project.recipes).toHaveLength(2);
        if (section !== 'title') expect(project.title).toBe(smallProject().title);
        if (section !== 'drawer') expect(project.drawer).toEqual(smallProject().drawer);
      }),
      { numRuns: 120 },
    );
  });

  it('should keep the rest when a list is longer than it may be', () => {
    const raw = full();
    raw['lesson'] = Array.from({ length: 9 }, (_, i) => ({ ...smallProject().bench[0], id: `l${i}` }));
    const { project, aside } = read(raw);
    expect(project.lesson).toEqual([]);
    expect(project.recipes).toHaveLength(2);
    expect(aside).toHaveLength(1);
  });

  it('should know what a later program saved', () => {
    expect(isNewer({ ...full(), version: 2 })).toBe(true);
    expect(isNewer(full())).toBe(false);
    expect(isNewer(null)).toBe(false);
  });
});
