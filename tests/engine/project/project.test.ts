import { describe, expect, it } from 'vitest';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import { letDown } from '../../../src/engine/ink/mix/mix.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import type { Command } from '../../../src/engine/project/commands/command.ts';
import { perform, redo, startHistory, undo } from '../../../src/engine/project/history.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { paintView } from '../../../src/engine/stack/view.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const VIEW = { xMm: 80, yMm: 100, widthMm: 300, heightMm: 260, widthPx: 150, heightPx: 130 };

describe('apply', () => {
  it('should leave the project it was given as it was', () => {
    const project = smallProject();
    const text = writeProject(project);
    const { project: next } = apply(project, { kind: 'move-pull', pull: 'p1', to: 2 });
    expect(next.bench.map((pull) => pull.id)).toEqual(['p2', 'p3', 'p1']);
    expect(writeProject(project)).toBe(text);
  });

  it('should put offsets on the 0.1 mm grid', () => {
    const { project } = apply(smallProject(), { kind: 'change-pull', pull: 'p2', change: { dxMm: 0.26, dyMm: -0.1 - 0.2 } });
    expect(project.bench[1]).toMatchObject({ dxMm: 0.3, dyMm: -0.3 });
  });

  const refused: [string, Command, RegExp][] = [
    ['an unknown pull', { kind: 'remove-pull', pull: 'ghost' }, /no pull "ghost"/],
    ['an unknown ink', { kind: 'change-pull', pull: 'p1', change: { ink: 'ghost' } }, /no ink "ghost"/],
    ['negative strokes', { kind: 'change-pull', pull: 'p1', change: { strokes: -2 } }, /strokes/],
    ['NaN', { kind: 'change-pull', pull: 'p1', change: { dxMm: Number.NaN } }, /dxMm/],
    ['a screen in use', { kind: 'remove-screen', screen: 's1' }, /used by a pull/],
    ['a shape on a screen', { kind: 'remove-shape', shape: 'wide' }, /on screen 1/],
    [
      'a drawing on a screen that stays',
      { kind: 'exchange-shapes', gone: { shapes: ['wide'], screens: [] }, shapes: [], screens: [] },
      /on screen 1/,
    ],
    ['a visit of what is not kept', { kind: 'set-visit', runs: [{ recipe: 'r', sheets: 1 }] }, /no recipe "r"/],
    ['a pull twice', { kind: 'add-pull', pull: pullOf('p1', 's1', 'rust'), at: 0 }, /already is a pull "p1"/],
  ];
  it.each(refused)('should refuse %s with a sentence', (_name, command, sentence) => {
    expect(() => apply(smallProject(), command)).toThrow(sentence);
  });

  it('should drop the holds of a pull that is taken away', () => {
    const held = apply(smallProject(), {
      kind: 'set-holds',
      holds: [
        { kind: 'first', pull: 'p1' },
        { kind: 'before', pull: 'p2', other: 'p3' },
      ],
    }).project;
    expect(apply(held, { kind: 'remove-pull', pull: 'p3' }).project.explore.holds).toEqual([{ kind: 'first', pull: 'p1' }]);
  });
});

describe('stock inks and mixes', () => {
  const [base, lime, soot] = demoStocks();
  const mist = letDown(soot!, base!, 3);
  const withStocks = [base!, lime!, soot!, mist].reduce((project, ink) => apply(project, { kind: 'add-ink', ink }).project, smallProject());

  it('should stay off the palette as stock, go on it as a mix', () => {
    expect(withStocks.explore.palette).toEqual([...smallProject().explore.palette, mist.id]);
    expect(readProject(writeProject(withStocks), 'p.json').value).toEqual(withStocks);
  });

  it('should come in together or not at all', () => {
    const { project } = apply(smallProject(), { kind: 'add-inks', inks: [base!, lime!, soot!, mist] });
    expect(project).toEqual(withStocks);
    expect(() => apply(withStocks, { kind: 'add-inks', inks: [{ ...base!, id: 'another' }, lime!] })).toThrow('There already is');
  });

  it('should keep a stock ink that a mix needs', () => {
    expect(() => apply(withStocks, { kind: 'remove-ink', ink: soot!.id })).toThrow(`weighed into the mix “${mist.name}”`);
    const { project } = apply(withStocks, { kind: 'remove-ink', ink: mist.id });
    expect(apply(project, { kind: 'remove-ink', ink: soot!.id }).project.drawer.inks).toHaveLength(smallProject().drawer.inks.length + 2);
  });

  it('should refuse mixes of what is not there and of mixes', () => {
    const change =
      (mix: { ink: string; parts: number }[], ink = lime!): (() => unknown) =>
      () =>
        apply(withStocks, { kind: 'change-ink', ink: { ...ink, mix } });
    expect(change([{ ink: 'ghost', parts: 1 }])).toThrow('no ink "ghost"');
    expect(change([{ ink: mist.id, parts: 1 }])).toThrow('which is a mix');
    expect(change([{ ink: base!.id, parts: 1 }], soot!)).toThrow('so it cannot become a mix');
  });

  it('should lose what a changed ink leaves out', () => {
    const { stock: _, mesh: __, ...plain } = lime!;
    const { project } = apply(withStocks, { kind: 'change-ink', ink: plain });
    expect(project.drawer.inks.find(({ id }) => id === lime!.id)).toEqual(plain);
  });

  it('should come in with a recipe, their mix naming the ids that they get', () => {
    const drawer = withStocks.drawer;
    const recipe = recipeOf([pullOf('x', 's1', mist.id)], drawer, { id: 'r', title: 't' });
    // The drawer has another ink under the stock's id.
    let project = apply(smallProject(), { kind: 'add-ink', ink: { ...lime!, id: soot!.id } }).project;
    project = apply(project, { kind: 'keep-recipe', recipe }).project;
    project = apply(project, { kind: 'open-recipe', recipe: 'r' }).project;
    const pulled = project.drawer.inks.find(({ id }) => id === project.bench[0]!.ink)!;
    expect(pulled.mix!.map(({ ink }) => project.drawer.inks.find(({ id }) => id === ink)!.name)).toEqual(
      [base!.name, soot!.name].reverse(),
    );
    expect(project.explore.palette).not.toContain(base!.id);
    expect(readProject(writeProject(project), 'p.json').problems).toEqual([]);
  });
});

describe('open-recipe', () => {
  it('should print the kept picture after every ink and screen was changed', () => {
    const start = smallProject();
    const recipe = recipeOf(start.bench, start.drawer, { id: 'r1', title: 'kept' });
    const before = paintView(start.drawer, { pulls: start.bench }, VIEW);
    const commands: Command[] = [
      { kind: 'keep-recipe', recipe },
      { kind: 'change-ink', ink: { ...start.drawer.inks.find((ink) => ink.id === 'rust')!, kx: Array(36).fill(0.4) } },
      { kind: 'change-screen', screen: 's2', placed: [{ shape: 'wide', xMm: 100, yMm: 100, turnDeg: 30, scale: 2 }] },
      { kind: 'set-stroke-gain', strokeGain: 1 },
      { kind: 'open-recipe', recipe: 'r1' },
    ];
    let project = start;
    for (const command of commands) project = apply(project, command).project;
    expect(paintView(project.drawer, { pulls: project.bench }, VIEW)).toEqual(before);
    const numbers = project.drawer.screens.map((screen) => screen.number);
    expect(new Set(numbers).size).toBe(numbers.length);
    const again = apply(project, { kind: 'open-recipe', recipe: 'r1' }).project;
    expect(again.drawer.screens).toHaveLength(project.drawer.screens.length);
    expect(again.drawer.inks).toHaveLength(project.drawer.inks.length);
  });
});

describe('open-recipe and strokes', () => {
  it('should take the stroke gain that the recipe was kept with', () => {
    const start = smallProject();
    const heavy = start.bench.map((pull) => ({ ...pull, strokes: 3 }));
    const recipe = recipeOf(heavy, start.drawer, { id: 'r1', title: 'kept' });
    const before = paintView(start.drawer, { pulls: heavy }, VIEW);
    let project = apply(start, { kind: 'keep-recipe', recipe }).project;
    project = apply(project, { kind: 'set-stroke-gain', strokeGain: 1 }).project;
    expect(paintView(project.drawer, { pulls: heavy }, VIEW)).not.toEqual(before);
    project = apply(project, { kind: 'open-recipe', recipe: 'r1' }).project;
    expect(project.drawer.strokeGain).toBe(start.drawer.strokeGain);
    expect(paintView(project.drawer, { pulls: project.bench }, VIEW)).toEqual(before);
  });
});

describe('history', () => {
  it('should undo a drag in the lesson without the choice before it, and each drag by itself', () => {
    const [one, two, three] = smallProject().bench;
    const pulls = [one!, two!, three!];
    const at = (dxMm: number) => [{ ...one!, dxMm }, two!, three!];
    const commands: Command[] = [
      { kind: 'set-lesson', pulls: pulls.slice(0, 2) },
      { kind: 'set-lesson', pulls },
      { kind: 'set-lesson', pulls: at(1), move: 'p1 1' },
      { kind: 'set-lesson', pulls: at(2), move: 'p1 1' },
      { kind: 'set-lesson', pulls: at(9), move: 'p1 2' },
    ];
    let history = commands.reduce(perform, startHistory(smallProject()));
    const back = (): unknown => {
      history = undo(history);
      return history.project.lesson.map(({ dxMm }) => dxMm);
    };
    expect([back(), back(), back(), back()]).toEqual([[2, 0, 0], [0, 0, 0], [0, 0], []]);
  });

  it('should undo and redo each command exactly', () => {
    const commands: Command[] = [
      { kind: 'move-pull', pull: 'p1', to: 2 },
      { kind: 'change-pull', pull: 'p2', change: { ink: 'tar' } },
      { kind: 'remove-pull', pull: 'p3' },
      { kind: 'set-explore', change: { count: 40 } },
    ];
    let history = startHistory(smallProject());
    const seen = [writeProject(history.project)];
    for (const command of commands) {
      history = perform(history, command);
      seen.push(writeProject(history.project));
    }
    for (let i = commands.length - 1; i >= 0; i--) {
      history = undo(history);
      expect(writeProject(history.project)).toBe(seen[i]);
    }
    for (let i = 1; i <= commands.length; i++) {
      history = redo(history);
      expect(writeProject(history.project)).toBe(seen[i]);
    }
  });

  it('should take back a run of nudges as one step', () => {
    let history = startHistory(smallProject());
    for (let i = 1; i <= 5; i++) history = perform(history, { kind: 'change-pull', pull: 'p1', change: { dxMm: i / 10 } });
    expect(history.past).toHaveLength(1);
    expect(undo(history).project.bench[0]!.dxMm).toBe(0);
    expect(redo(undo(history)).project.bench[0]!.dxMm).toBe(0.5);
  });
});

describe('readProject', () => {
  it('should give back what was written', () => {
    const project = smallProject();
    expect(readProject(writeProject(project), 'a.json').value).toEqual(project);
  });

  it('should refuse a cycle in holds, naming it', () => {
    const project = smallProject();
    project.explore.holds = [
      { kind: 'before', pull: 'p1', other: 'p2' },
      { kind: 'before', pull: 'p2', other: 'p1' },
    ];
    const read = readProject(writeProject(project), 'a.json');
    expect(read.value).toBeNull();
    expect(read.problems[0]!.message).toMatch(/^a\.json: /);
  });

  it('should refuse a visit of half a sheet, naming the field', () => {
    const project = { ...smallProject(), visit: [{ recipe: 'r', sheets: 0.5 }] };
    expect(readProject(writeProject(project), 'a.json').problems[0]!.message).toMatch(
      /visit\[0\]\.sheets is 0\.5, but must be a whole number/,
    );
  });
});
