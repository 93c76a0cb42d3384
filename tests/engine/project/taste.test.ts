import { describe, expect, it } from 'vitest';
import { LONGEST_NAME } from '../../../src/engine/base/limits.ts';
import { SKETCH_LENGTH } from '../../../src/engine/explore/look/sketch.ts';
import { MEASURES, type VariantMeasures } from '../../../src/engine/explore/measure/variant-measures.ts';
import { choicesOnWall, MOST_CHOICES, MOST_PASSED, type TasteChoice, type TastePrint } from '../../../src/engine/explore/taste/choices.ts';
import { sketchOfText, sketchText } from '../../../src/engine/explore/taste/traits.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { perform, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readSections } from '../../../src/engine/project/read-sections.ts';
import { smallProject } from '../../helpers/small-project.ts';

const MEASURED = Object.fromEntries(MEASURES.map(({ key }, i) => [key, i])) as unknown as VariantMeasures;
const print = (key: string): TastePrint => ({ key, name: `no. ${key}`, measures: MEASURED, sketch: '7f'.repeat(SKETCH_LENGTH) });
const over = (chosen: string, other: string): TasteChoice => ({ way: 'compared', chosen: print(chosen), over: [print(other)] });

describe('what was chosen, kept with a project', () => {
  const project = smallProject();

  it('should be taught, taken back, forgotten one by one and all at once, and leave older projects as they are', () => {
    expect('taste' in project).toBe(false);
    const two = perform(startHistory(project), { kind: 'teach-taste', choices: [over('1', '2'), over('3', '1')] });
    expect(two.project.taste).toHaveLength(2);
    expect(undo(two).project).toEqual(project);
    const one = apply(two.project, { kind: 'forget-taste', choices: [over('1', '2')] }).project;
    expect(one.taste).toEqual([over('3', '1')]);
    expect(apply(two.project, { kind: 'forget-taste', choices: two.project.taste ?? [] }).project.taste).toEqual([]);
  });

  it('should hold the same answer once, both answers of a contradiction, and at most so many', () => {
    const twice = apply(project, { kind: 'teach-taste', choices: [over('1', '2'), over('2', '1'), over('1', '2')] }).project;
    expect(twice.taste).toEqual([over('2', '1'), over('1', '2')]);
    const many = Array.from({ length: MOST_CHOICES + 5 }, (_, i) => over(`a${i}`, 'b'));
    const full = apply(project, { kind: 'teach-taste', choices: many }).project;
    expect(full.taste).toHaveLength(MOST_CHOICES);
    expect(full.taste?.[0]?.chosen.key).toBe('a5');
  });

  it('should come with a pin or a recipe in one step, and go with the pin', () => {
    const pinned: TasteChoice = { way: 'pinned', chosen: print('k'), over: [print('m')] };
    const pins = [{ key: 'k', pulls: [...project.bench], lineage: { seed: 's', index: 0 } }];
    const history = perform(startHistory(project), { kind: 'set-pins', pins, taught: [pinned] });
    expect(history.project.taste).toEqual([pinned]);
    expect(undo(history).project).toEqual(project);
    expect(apply(history.project, { kind: 'set-pins', pins: [] }).project.taste).toEqual([]);
  });

  it('should be read part by part: a broken choice is put aside and told of, the rest stays', () => {
    const raw = JSON.parse(JSON.stringify({ ...project, taste: [over('1', '2'), over('3', '4'), over('5', '6')] })) as {
      taste: TasteChoice[];
    };
    raw.taste[1]!.chosen.sketch = 'no sketch';
    const { project: read, aside } = readSections(raw, smallProject(), 'a.json');
    expect(read.taste).toEqual([over('1', '2'), over('5', '6')]);
    expect(aside).toHaveLength(1);
    expect(aside[0]!.message).toMatch(/^a\.json.*taste/u);
  });

  it.each([
    ['a name', (choice: TasteChoice) => void (choice.chosen.name = 'n'.repeat(LONGEST_NAME + 1))],
    ['a measure', (choice: TasteChoice) => void (choice.chosen.measures.pulls = 1e9)],
    ['prints passed over', (choice: TasteChoice) => void (choice.over = Array.from({ length: MOST_PASSED + 1 }, (_, i) => print(`p${i}`)))],
    ['no way of choosing', (choice: TasteChoice) => void (choice.way = 'liked' as 'kept')],
  ])('should refuse %s beyond its bounds', (_, spoil) => {
    const choice = structuredClone(over('1', '2'));
    spoil(choice);
    const { project: read, aside } = readSections({ ...project, taste: [choice] }, smallProject(), 'a.json');
    expect(read.taste).toEqual([]);
    expect(aside.length).toBeGreaterThan(0);
  });
});

describe('choices on a wall', () => {
  const wall = { way: 'selected' as const, sequence: [4, 2, 0, 1, 3], print: (index: number) => print(String(index)) };

  it('should be a print over those that hang nearest to it and are not chosen', () => {
    const [choice] = choicesOnWall({ ...wall, chosen: [0], all: new Set([0, 1]) });
    expect(choice?.over.map(({ key }) => key)).toEqual(['2', '4', '3']);
  });

  it('should say in a sentence that nothing, or all, is chosen', () => {
    expect(() => choicesOnWall({ ...wall, chosen: [], all: new Set() })).toThrow(
      'Nothing is chosen; select, pin or keep a print that you like.',
    );
    expect(() => choicesOnWall({ ...wall, chosen: [0], all: new Set(wall.sequence) })).toThrow(
      'Every print that hangs is chosen, so nothing is passed over; take some out, or compare two of them.',
    );
  });
});

describe('a sketch as text', () => {
  it('should come back within half a step', () => {
    const sketch = Float32Array.from({ length: SKETCH_LENGTH }, (_, i) => (i % 3 === 0 ? (i % 7) / 7 : ((i % 11) - 5) / 20));
    sketchOfText(sketchText(sketch)).forEach((value, i) => expect(Math.abs(value - sketch[i]!)).toBeLessThanOrEqual(0.5 / 255 + 1e-6));
  });
});
