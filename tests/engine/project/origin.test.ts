import { describe, expect, it } from 'vitest';
import { defined, entryAt } from '../../../src/engine/base/at.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { MOST_GENERATIONS, type PrintLineage } from '../../../src/engine/recipe/lineage.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const PRINT: PrintLineage = { seed: 'slack tide', index: 11 };

function deep(generations: number): PrintLineage {
  return generations === 0 ? PRINT : { seed: 'near', index: generations, way: 'nearer', parents: [deep(generations - 1)] };
}

describe('origin of the stack on the Bench', () => {
  it('should be said by the command that opens a stack, and be the one before after undo', () => {
    let history = startHistory(smallProject());
    const { bench } = history.project;
    history = perform(history, { kind: 'open-stack', pulls: bench, print: PRINT });
    expect(history.project.origin).toEqual({ source: { kind: 'wall', print: PRINT }, pulls: bench });
    history = perform(history, { kind: 'change-pull', pull: entryAt(bench, 0).id, change: { strokes: 3 } });
    const changed = history.project;
    history = perform(history, { kind: 'open-stack', pulls: [...bench].reverse() });
    expect(history.project.origin).toEqual({ source: { kind: 'hand' }, pulls: [...bench].reverse() });
    history = undo(history);
    expect(history.project).toEqual(changed);
    expect(history.project.origin?.pulls).toEqual(bench);
    history = undo(undo(history));
    expect(history.project.origin).toBeUndefined();
  });

  it('should be a recipe by the title it was opened under', () => {
    const project = smallProject();
    const recipe = recipeOf(project.bench, project.drawer, { id: 'r', title: 'Ebb' });
    let history = perform(startHistory(project), { kind: 'keep-recipe', recipe });
    history = perform(history, { kind: 'open-recipe', recipe: 'r' });
    history = perform(history, { kind: 'change-recipe', recipe: 'r', title: 'Flood' });
    history = perform(history, { kind: 'remove-recipe', recipe: 'r' });
    expect(history.project.origin?.source).toEqual({ kind: 'recipe', title: 'Ebb', recipe: 'r' });
  });

  it('should be saved with the project, and a project without one open as before', () => {
    const project = smallProject();
    expect(readProject(writeProject(project), 'old.json').value).toEqual(project);
    const opened = perform(startHistory(project), { kind: 'open-stack', pulls: project.bench, print: deep(MOST_GENERATIONS + 3) }).project;
    const read = readProject(writeProject(opened), 'new.json');
    expect(read.problems).toEqual([]);
    expect(defined(read.value ?? undefined)).toEqual(opened);
  });
});
