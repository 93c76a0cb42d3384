import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  demoProject,
  explore,
  readLog,
  readProject,
  readRecipe,
  sheetsAsPulled,
  writeProject,
  writeRecipe,
} from '../../src/engine/index.ts';

/**
 * Files that version 1 wrote in November 2026, before the rooms were rearranged. They are never
 * edited to pass: whoever saved one must find it again.
 */
const read = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');
const plain = (text: string): unknown => JSON.parse(text);

/** What a file says, all of which a later version must still say; it may say more. */
function expectKept(now: unknown, before: unknown): void {
  expect(now).toMatchObject(before as object);
}

describe('files from before', () => {
  it('should open a project and write all that it held', () => {
    const { value, problems } = readProject(read('project.json'), 'project.json');
    expect(problems).toEqual([]);
    expectKept(plain(writeProject(value!)), plain(read('project.json')));
  });

  it('should open a recipe and write all that it held', () => {
    const { value, problems } = readRecipe(read('recipe.json'), 'recipe.json');
    expect(problems).toEqual([]);
    expectKept(plain(writeRecipe(value!)), plain(read('recipe.json')));
  });

  it('should open a log and tell its sheets as they were pulled', () => {
    const { value, problems } = readLog(read('log.json'), 'log.json');
    expect(problems).toEqual([]);
    const { head, events } = value!;
    expect(events).toHaveLength(11);
    const sheets = sheetsAsPulled(head, events);
    expect(sheets.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    // Sheet 1 has two pulls less the one taken back; sheet 4 one that went otherwise.
    expect(sheets.map(({ pulls }) => pulls.length)).toEqual([1, 2, 2, 1, 0]);
    expect(sheets[3]!.pulls[0]).toMatchObject({ strokes: 2 });
    expect(sheets.map(({ spoiled }) => spoiled)).toEqual([false, false, true, false, false]);
    expect(sheets[1]).toMatchObject({ box: 'B1' });
    expect(sheets[3]!.notes).toEqual(['slipped', 'keep it']);
  });

  it('should find the same prints again under the same seeds', () => {
    const shapes = new URL('../../shapes/', import.meta.url);
    const files = readdirSync(shapes)
      .filter((name) => name.endsWith('.svg'))
      .map((name) => ({ name, text: readFileSync(new URL(name, shapes), 'utf8') }));
    const demo = demoProject(files);
    for (const [seed, keys] of Object.entries(plain(read('walls.json')) as Record<string, string[]>)) {
      expect([...explore(demo, { seed, count: keys.length })].map(({ key }) => key)).toEqual(keys);
    }
  });
});
