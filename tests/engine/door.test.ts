import { describe, expect, it } from 'vitest';
import * as door from '../../src/engine/index.ts';
import { smallProject } from '../helpers/small-project.ts';

const project = smallProject();
const { drawer } = project;
const stack = { pulls: project.bench };
const flat = (value: number): number[] => new Array<number>(36).fill(value);
const film = { kx: flat(0.3), sx: flat(0.1) };

/** What a script that is not checked by a compiler may hand over. */
const loose = door as unknown as Record<string, (...args: unknown[]) => unknown>;

function call(name: string, ...args: unknown[]): unknown {
  const value = loose[name]!(...args);
  // Generators say what is wrong at the first step.
  return typeof (value as Iterator<unknown> | null)?.next === 'function' ? (value as Iterator<unknown>).next() : value;
}

describe('the engine door', () => {
  it('should do in a script what it says', () => {
    // A triangle has 3! acyclic orientations, a path of three 2² (Stanley 1973).
    const triangle: [number, number][] = [
      [0, 1],
      [1, 2],
      [0, 2],
    ];
    expect(door.countOrderClasses(3, triangle)).toBe(6n);
    expect([...door.orderClasses(3, triangle.slice(0, 2))]).toHaveLength(4);
    expect([...door.sampleOrder(3, triangle, 'a')].sort()).toEqual([0, 1, 2]);
    const found = [...door.explore(project, { seed: 'a', count: 3 })];
    expect(new Set(found.map(({ pulls }) => JSON.stringify(pulls))).size).toBe(3);
    const sheet = (...screens: string[]) => ({
      pulls: screens.map((screen) => ({ screen, ink: screen })),
      overlaps: [[0, 1]] as [number, number][],
    });
    // |a| + |b| − LCS: two sheets in opposite orders need 3.
    expect(door.planPulls({ sheets: [sheet('a', 'b'), sheet('b', 'a')] }, { budgetMs: 5, seed: 1 })).toMatchObject({
      mounts: 3,
      bound: { setUps: 3, mounts: 3 },
    });
    expect(door.overlapsOf(stack, drawer, { toleranceMm: 0.1, minDeltaE: 1 }).length).toBeGreaterThan(0);
    expect([...door.stackReflectance([], flat(0.5))]).toEqual(flat(0.5));
  });

  it('should take a number as a seed as well as a text', () => {
    const pulls = (seed: string | number): unknown => [...door.explore(project, { seed, count: 2 })].map((variant) => variant.pulls);
    expect(pulls(7)).toEqual(pulls('7'));
  });

  it('should refuse what it cannot use in one sentence with a code', () => {
    const bad: [name: string, code: string, ...args: unknown[]][] = [
      ['countOrderClasses', 'order.pulls', undefined, undefined],
      ['orderClasses', 'order.overlaps', 3, null],
      ['sampleOrder', 'order.range', 3, [null], 'a'],
      ['explore', 'explore.project', undefined, { seed: 'a', count: 1 }],
      ['explore', 'explore.project', {}, { seed: 'a', count: 1 }],
      ['explore', 'explore.project', { ...project, bench: null }, { seed: 'a', count: 1 }],
      ['explore', 'explore.project', { ...project, drawer: {} }, { seed: 'a', count: 1 }],
      ['explore', 'explore.project', { ...project, explore: undefined }, { seed: 'a', count: 1 }],
      ['explore', 'explore.seed', project, { seed: null, count: 1 }],
      ['explore', 'explore.count', project, { seed: 'a', count: 0 }],
      ['planPulls', 'pullorder.budget', null],
      ['planPulls', 'pullorder.input', { sheets: [null] }, { budgetMs: 1, seed: 1 }],
      ['overlapsOf', 'order.stack', undefined, drawer, { toleranceMm: 0.1, minDeltaE: 1 }],
      ['overlapsOf', 'order.drawer', stack, {}, { toleranceMm: 0.1, minDeltaE: 1 }],
      ['overlapsOf', 'order.min-delta-e', stack, drawer],
      ['freeSwaps', 'order.min-delta-e', stack, drawer],
      ['dryingPairs', 'order.tolerance', stack, drawer],
      ['stackReflectance', 'ink.bad-film', undefined, flat(0.9)],
      ['stackReflectance', 'ink.bad-film', [{}], flat(0.9)],
      ['stackReflectance', 'ink.bad-film', [film, { ...film, sx: [1] }], flat(0.9)],
      ['stackReflectance', 'ink.bad-ground', [film], undefined],
      ['labD50', 'colour.bands', null],
      ['labD50', 'colour.bands', flat(Number.NaN)],
      ['labD50', 'colour.bands', flat(-1)],
      ['labD50', 'colour.bands', flat(2)],
      ['srgbHexFromLab', 'colour.not-a-colour'],
      ['srgbHexFromLab', 'colour.not-a-colour', [Number.NaN, 0, 0]],
      ['stackReflectance', 'ink.bad-ground', [], flat(2)],
      ['overlapsOf', 'order.stack', { pulls: [{ ...project.bench[0], dxMm: Number.NaN }] }, drawer, { toleranceMm: 0.1, minDeltaE: 1 }],
      ['overlapsOf', 'order.stack', { pulls: [null] }, drawer, { toleranceMm: 0.1, minDeltaE: 1 }],
      [
        'overlapsOf',
        'order.drawer',
        stack,
        { ...drawer, paper: { ...drawer.paper, reflectance: flat(2) } },
        { toleranceMm: 0.1, minDeltaE: 1 },
      ],
      ['groupOrders', 'order.stack'],
      ['groupOrders', 'order.stack', {}],
      ['matchInk', 'match.target'],
      ['matchInk', 'match.target', {}],
      ['matchInk', 'match.no-stocks', [50, 0, 0]],
      ['matchInk', 'match.no-stocks', [50, 0, 0], [null]],
      ['paperFromCurve', 'paper.bad-curve'],
      ['paperFromCurve', 'paper.bad-curve', {}, flat(2)],
      ['deltaE2000', 'colour.not-a-colour', undefined, [50, 0, 0]],
      ['deltaE2000', 'colour.not-a-colour', [50, 0], [50, 0, 0]],
      ['twoBackground', 'ink.bands', undefined],
      ['curveFromColour', 'colour.not-a-colour', undefined],
      ['curveFromColour', 'colour.not-a-colour', 'x'],
    ];
    for (const [name, code, ...args] of bad) {
      let error: unknown;
      try {
        call(name, ...args);
      } catch (thrown) {
        error = thrown;
      }
      expect(error, `${name}, ${code}`).toBeInstanceOf(door.EngineError);
      const { code: told, message } = error as InstanceType<typeof door.EngineError>;
      expect(told, `${name}: ${message}`).toBe(code);
      expect(message).toMatch(/^[A-Z\d][^\n]{20,}\.$/u);
    }
  });

  it('should tell and not throw where a file is no text', () => {
    expect(call('readCgats', undefined, 'chart.txt')).toMatchObject({ samples: [], problems: [{ code: 'cgats.binary' }] });
    expect(call('readShapes', undefined, 'a.svg')).toMatchObject({ problems: [{ code: 'shape.binary' }] });
    for (const name of ['readShapes', 'readCgats', 'readRecipe', 'readProject', 'readLog']) {
      for (const text of [undefined, null, {}, 1, '', 'x', '{}']) {
        const { problems } = call(name, text) as { problems: { message: string }[] };
        expect(problems.map(({ message }) => message)).toEqual([expect.stringMatching(/^file[:,] .{20,}\.$/u)]);
      }
    }
  });

  /** Functions of the door that take something; readers of files tell and do not throw, as the next test says. */
  const takers = Object.entries(loose).filter(
    ([name, value]) => typeof value === 'function' && !/^(?:read[CSRPL]|demoStocks$|measuredPairs$|EngineError$)/u.test(name),
  );
  const sentence = /^[A-Z\d“][^\n]{20,400}\.$/u;

  function refused(name: string, args: unknown[]): string | null {
    try {
      call(name, ...args);
      return null;
    } catch (error) {
      if (!(error instanceof door.EngineError)) return `threw ${String(error)}`;
      return sentence.test(error.message) ? error.code : `no sentence: ${error.message}`;
    }
  }

  it('should refuse every call without arguments in one sentence with a code', () => {
    expect(takers.length).toBeGreaterThan(60);
    for (const [name] of takers) expect(refused(name, []), name).toMatch(/^[a-z]+\.[a-z-]+$/u);
  });

  it('should never throw anything but such a sentence, whatever it is given', () => {
    const things = [undefined, null, {}, [], '', 'x', Number.NaN, -1, [null], [[]], { pulls: [{}] }, [{}], true];
    for (const [name] of takers) {
      for (const first of things) {
        for (const second of things) {
          expect(refused(name, [first, second, {}, []]) ?? '', `${name}(${JSON.stringify([first, second])})`).toMatch(
            /^(?:[a-z]+\.[a-z-]+)?$/u,
          );
        }
      }
    }
  });
});
