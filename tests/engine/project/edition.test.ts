import { describe, expect, it } from 'vitest';
import { type Edition, newEdition } from '../../../src/engine/log/edition/edition.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const start = smallProject();
const recipe = recipeOf(start.bench, start.drawer, { id: 'a', title: 'Ebb' });
const project = apply(start, { kind: 'keep-recipe', recipe }).project;
const edition: Edition = {
  ...newEdition(recipe),
  words: { ...newEdition(recipe).words, artist: 'Łucja Žižková', year: '2026' },
  fates: [{ screen: 's1', fate: 'cancelled', by: 'the printer', when: '5 May' }],
  visit: 'v',
  marks: [{ sheet: 3, mark: 'BAT' }],
};

describe('set-edition', () => {
  it('should keep one edition a recipe, through a file and back, and be undone', () => {
    const once = perform(startHistory(project), { kind: 'set-edition', edition });
    const twice = perform(once, { kind: 'set-edition', edition: { ...edition, marks: [] } });
    expect(twice.project.editions).toEqual([{ ...edition, marks: [] }]);
    expect(readProject(writeProject(once.project), 'p.json').value!.editions).toEqual([edition]);
    expect(undo(twice).project.editions).toEqual([edition]);
    const back = undo(undo(twice)).project;
    expect('editions' in back).toBe(false);
    expect(back).toEqual(project);
  });
  it('should undo counts that were typed digit by digit as one', () => {
    const typed = (impressions: number) =>
      ({ kind: 'set-edition', part: 'counts', edition: { ...edition, counts: { ...edition.counts, impressions } } }) as const;
    const history = [3, 30].reduce(
      (before, impressions) => perform(before, typed(impressions)),
      perform(startHistory(project), { kind: 'set-edition', edition }),
    );
    expect(history.project.editions![0]!.counts.impressions).toBe(30);
    expect(undo(history).project.editions).toEqual([edition]);
  });
  it('should go with its recipe, and need one', () => {
    const kept = apply(project, { kind: 'set-edition', edition }).project;
    expect(apply(kept, { kind: 'remove-recipe', recipe: 'a' }).project.editions).toEqual([]);
    expect(() => apply(project, { kind: 'set-edition', edition: { ...edition, recipe: 'gone' } })).toThrow(/no recipe "gone"/);
  });
  it('should refuse what could not be read again, in a sentence', () => {
    const wrong = { ...edition, counts: { ...edition.counts, ap: Number.NaN } };
    expect(() => apply(project, { kind: 'set-edition', edition: wrong })).toThrow(/^The edition's .* cannot be so: .*\.$/);
  });
});

describe('readProject', () => {
  it('should open projects from before there were editions', () => {
    expect(readProject(writeProject(project), 'p.json').value!.editions).toBeUndefined();
  });
  it('should name an edition without its recipe, and one that stands twice', () => {
    const broken = { ...project, editions: [edition, edition, { ...edition, recipe: 'gone' }] };
    const { problems } = readProject(writeProject(broken), 'p.json');
    expect(problems.map((problem) => problem.where)).toEqual(['editions[1].recipe', 'editions[2].recipe']);
    expect(problems[1]!.message).toContain('"gone"');
  });
});
