import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/engine/project/apply.ts';
import type { Command } from '../../../src/engine/project/commands/command.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const [screen] = project.drawer.screens;
const pulls = (count: number): Pull[] => Array.from({ length: count }, (_, i) => pullOf(`x${i}`, screen!.id, 'tar'));

describe('a stack of one screen, very often', () => {
  it('should be read again as long as it may be made', () => {
    const most = apply(project, { kind: 'open-stack', pulls: pulls(200) }).project;
    expect(readProject(writeProject(most), 'p.json').problems).toEqual([]);
    expect(() => apply(most, { kind: 'add-pull', pull: pullOf('more', screen!.id, 'tar'), at: 0 })).toThrow(
      'A stack has at most 200 pulls, and this one would have 201; leave some out.',
    );
  });

  it.each<Command>([
    { kind: 'open-stack', pulls: pulls(500) },
    { kind: 'keep-recipe', recipe: recipeOf(pulls(500), project.drawer, { id: 'r', title: 't' }) },
    { kind: 'set-pins', pins: [{ key: 'k', pulls: pulls(500), lineage: { seed: 's', index: 0 } }] },
  ])('should be refused by $kind where no file could hold it', (command) => {
    expect(() => apply(project, command)).toThrow('A stack has at most 200 pulls, and this one would have 500; leave some out.');
  });
});
