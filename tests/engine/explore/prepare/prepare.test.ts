import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import {
  filmAreas,
  filmOfScreen,
  limitsOf,
  newWithin,
  type PrepareLimit,
  screenTakes,
} from '../../../../src/engine/explore/prepare/budget.ts';
import { atHand, frameState, withFrame } from '../../../../src/engine/explore/prepare/frames.ts';
import {
  lacks,
  type PrepareAsked,
  prepareSteps,
  type PrepareStep,
  takenByNone,
  type WantedPrint,
} from '../../../../src/engine/explore/prepare/prepare.ts';
import { apply } from '../../../../src/engine/project/apply.ts';
import { readSections } from '../../../../src/engine/project/read-sections.ts';
import { readProject } from '../../../../src/engine/project/read.ts';
import { writeProject } from '../../../../src/engine/project/write.ts';
import { rectangle, screenAt, smallProject } from '../../../helpers/small-project.ts';

function all(asked: PrepareAsked): PrepareStep[] {
  const steps = prepareSteps(asked);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** Greatest weight that any choice of `count` of the ids prints, by trying all. */
function bestOf(ids: readonly string[], count: number, weightOf: (made: ReadonlySet<string>) => number): number {
  let best = 0;
  for (let mask = 0; mask < 1 << ids.length; mask++) {
    const made = new Set(ids.filter((_, i) => (mask >> i) & 1));
    if (made.size <= count) best = Math.max(best, weightOf(made));
  }
  return best;
}

const PRINTS: WantedPrint[] = [
  { name: 'a', screens: ['1', '2', '3'], inks: ['tar', 'foam'], weight: 2 },
  { name: 'b', screens: ['1', '4'], inks: ['foam'], weight: 1 },
  { name: 'c', screens: ['4', '5', '6'], inks: ['rust'], weight: 5 },
  { name: 'd', screens: ['7', '7'], inks: ['rust', 'weed'], weight: 0.5 },
];

describe('prepareSteps', () => {
  it('should answer every number of new screens, inks or both as trying all sets does', () => {
    const random = randomFrom('prepare');
    for (let round = 0; round < 40; round++) {
      const prints = Array.from({ length: 2 + random.int(9) }, (_, i): WantedPrint => ({
        name: String(i),
        screens: Array.from({ length: 1 + random.int(4) }, () => `s${random.int(6)}`),
        inks: Array.from({ length: 1 + random.int(3) }, () => `k${random.int(4)}`),
        weight: 1 + random.int(3),
      }));
      const by = (['screens', 'inks', 'both'] as const)[round % 3]!;
      const [haveScreens, haveInks] = [['s0'], ['k0']];
      const needs = (print: WantedPrint): string[] => [...(by === 'inks' ? [] : print.screens), ...(by === 'screens' ? [] : print.inks)];
      const there = new Set([...haveScreens, ...haveInks]);
      const lacking = [...new Set(prints.flatMap(needs))].filter((id) => !there.has(id));
      const weightOf = (made: ReadonlySet<string>): number =>
        prints.reduce((sum, print) => sum + (needs(print).every((id) => there.has(id) || made.has(id)) ? print.weight : 0), 0);
      const steps = all({ prints, haveScreens, haveInks, by, most: 99 });
      expect(steps.map(({ count }) => count)).toEqual(Array.from({ length: lacking.length + 1 }, (_, i) => i));
      for (const step of steps) {
        const best = bestOf(lacking, step.count, weightOf);
        expect(step.printed).toBe(best);
        expect(step.bound).toBe(best);
        expect(weightOf(new Set([...step.screens, ...step.inks]))).toBe(best);
        expect(step.screens.length + step.inks.length).toBeLessThanOrEqual(step.count);
      }
    }
  });

  it('should name what is lacking, and refuse a question without prints in one sentence', () => {
    expect(lacks(PRINTS[0]!, new Set(['1', '3']), new Set(['tar']))).toEqual({ screens: ['2'], inks: ['foam'] });
    expect(lacks(PRINTS[3]!, new Set(), new Set(['rust', 'weed']))).toEqual({ screens: ['7'], inks: [] });
    expect(() => all({ prints: [], haveScreens: [], haveInks: [], by: 'screens', most: 3 })).toThrow(
      'No prints are chosen; select, pin or keep some, or take the whole wall.',
    );
  });

  it('should stop at the most that is asked for, and at what any print needs', () => {
    const asked = { prints: PRINTS, haveScreens: [], haveInks: [], by: 'screens' as const };
    expect(all({ ...asked, most: 3 }).at(-1)).toMatchObject({ count: 3, screens: ['4', '5', '6'], printed: 5, bound: 5 });
    expect(all({ ...asked, most: 99 }).at(-1)).toMatchObject({ count: 7, printed: 8.5 });
    expect(all({ ...asked, most: 99, haveScreens: ['1', '2', '3', '4', '5', '6', '7', '99'] })).toEqual([
      { count: 0, screens: [], inks: [], printed: 8.5, bound: 8.5 },
    ]);
  });
});

describe('a budget', () => {
  it('should reckon a film by its image and a margin, and no larger than the sheet unless the image is', () => {
    const { drawer } = smallProject();
    const paper = { ...drawer.paper, widthMm: 300, heightMm: 400 };
    const studio = { ...drawer, paper, shapes: [rectangle('bar', 100, 380)], screens: [screenAt('a', 1, 'bar', 150, 200)] };
    // 100 + 2 × 30 wide; 380 + 2 × 30 is more than the sheet's 400.
    expect(filmOfScreen(studio.screens[0]!, studio)).toEqual({ widthMm: 160, heightMm: 400 });
    expect(filmOfScreen(studio.screens[0]!, studio, 5)).toEqual({ widthMm: 110, heightMm: 390 });
    expect(filmAreas(studio, { filmMarginMm: 5 })).toEqual(new Map([['a', 0.0429]]));
    const twice = { ...studio.screens[0]!, placed: [{ ...studio.screens[0]!.placed[0]!, scale: 2 }] };
    expect(filmOfScreen(twice, studio)).toEqual({ widthMm: 260, heightMm: 760 });
    expect(filmOfScreen({ ...twice, placed: [] }, studio)).toEqual({ widthMm: 0, heightMm: 0 });
  });

  it('should allow as many screens or inks as its tightest part pays for', () => {
    const each = { moneyEach: 40, hoursEach: 1.5, inkMoneyEach: 12, inkHoursEach: 0.5 };
    const allowed = (budget: Parameters<typeof limitsOf>[0]): number[] =>
      (['screens', 'inks'] as const).map((by) => newWithin(limitsOf({ ...each, ...budget }, new Map()), by));
    expect(allowed({})).toEqual([Infinity, Infinity]);
    // Film is of screens alone, and differs from one to the next: it is for the search.
    expect(allowed({ filmM2: 2.1 })).toEqual([Infinity, Infinity]);
    expect(allowed({ screens: 9, filmM2: 2.1 })).toEqual([9, 9]);
    expect(allowed({ screens: 9, money: 200, hours: 20 })).toEqual([5, 9]);
    expect(allowed({ money: 100 })).toEqual([2, 8]);
    expect(allowed({ hours: 1 })).toEqual([0, 2]);
    expect(allowed({ money: 10, moneyEach: 0, inkMoneyEach: undefined })).toEqual([Infinity, Infinity]);
  });

  it.each(['both', 'screens'] as const)('should choose between %s as trying all sets within it does', (by) => {
    const random = randomFrom(`budget of ${by}`);
    for (let round = 0; round < 40; round++) {
      const prints = Array.from({ length: 3 + random.int(9) }, (_, i): WantedPrint => ({
        name: String(i),
        screens: Array.from({ length: 1 + random.int(4) }, () => `s${random.int(6)}`),
        inks: Array.from({ length: 1 + random.int(3) }, () => `k${random.int(4)}`),
        weight: 1 + random.int(3),
      }));
      // Films from 0.05 to 0.4 m², and so much money for each.
      const films = new Map(Array.from({ length: 6 }, (_, i) => [`s${i}`, 0.05 * (1 + random.int(8))] as const));
      const priced = new Map([...films].map(([id, m2]) => [id, 100 * m2]));
      const limits: PrepareLimit[] = [
        { most: 0.05 * random.int(30), screen: 0, ink: 0, beyond: films },
        { most: 20 + random.int(200), screen: 40, ink: 15, ...(round % 2 === 0 ? {} : { beyond: priced }) },
        { most: 2 + random.int(8), screen: 0.5, ink: 2 },
      ].slice(round % 3);
      const needs = ({ screens, inks }: WantedPrint): string[] => (by === 'screens' ? [...screens] : [...screens, ...inks]);
      const lacking = [...new Set(prints.flatMap(needs))];
      const may = (made: ReadonlySet<string>): boolean =>
        limits.every((limit) => {
          const cost = [...made].reduce((sum, id) => sum + (id.startsWith('s') ? screenTakes(limit, id) : limit.ink), 0);
          return cost <= limit.most + 1e-9;
        });
      const weightOf = (made: ReadonlySet<string>): number =>
        may(made) ? prints.reduce((sum, print) => sum + (needs(print).every((id) => made.has(id)) ? print.weight : 0), 0) : 0;
      const steps = all({ prints, haveScreens: [], haveInks: [], by, most: 99, limits });
      for (const step of steps) {
        const best = bestOf(lacking, step.count, weightOf);
        expect([step.printed, step.bound], `round ${round}, ${step.count} new`).toEqual([best, best]);
        expect(weightOf(new Set([...step.screens, ...step.inks]))).toBe(best);
      }
      // As many are answered as may be had of those that take least; no set of more keeps to all limits.
      const sizes = Array.from({ length: 1 << lacking.length }, (_, mask) => new Set(lacking.filter((_id, i) => (mask >> i) & 1)));
      expect(steps.at(-1)!.count).toBeGreaterThanOrEqual(Math.max(...sizes.filter(may).map(({ size }) => size)));
    }
  });

  it('should never promise more with fewer, nor print less with more, where nothing is proven', () => {
    const random = randomFrom('many');
    const ids = Array.from({ length: 32 }, (_, i) => `s${i}`);
    const prints = Array.from({ length: 60 }, (_, i): WantedPrint => ({
      name: String(i),
      screens: random.shuffle(ids).slice(0, 11 + random.int(6)),
      inks: [],
      weight: 1 + random.int(3),
    }));
    const steps = all({ prints, haveScreens: [], haveInks: [], by: 'screens', most: 20 });
    expect(steps.some(({ printed, bound }) => bound > printed)).toBe(true);
    for (const [i, step] of steps.entries()) {
      expect(step.bound).toBeGreaterThanOrEqual(step.printed);
      if (i === 0) continue;
      expect(step.printed).toBeGreaterThanOrEqual(steps[i - 1]!.printed);
      expect(step.bound).toBeGreaterThanOrEqual(steps[i - 1]!.bound);
    }
  });
});

describe('what is said of the question', () => {
  it('should name screens that no print takes', () => {
    expect(takenByNone(['7', '9', '1', '8'], PRINTS)).toEqual(['9', '8']);
    expect(takenByNone([], PRINTS)).toEqual([]);
  });
});

describe('a budget in a project', () => {
  it('should be kept, undone and refused where it is no amount', () => {
    const project = smallProject();
    const { project: next } = apply(project, { kind: 'set-screen-budget', budget: { screens: 4, money: 120.5, moneyEach: undefined } });
    expect(project.screenBudget).toBeUndefined();
    expect(next.screenBudget).toEqual({ screens: 4, money: 120.5 });
    expect(readProject(writeProject(next), 'saved.json').value!.screenBudget).toEqual({ screens: 4, money: 120.5 });
    const inks = apply(project, { kind: 'set-screen-budget', budget: { inkMoneyEach: 8, inkHoursEach: 0.5 } }).project;
    expect(readProject(writeProject(inks), 'saved.json').value!.screenBudget).toEqual({ inkMoneyEach: 8, inkHoursEach: 0.5 });
    expect(() => apply(project, { kind: 'set-screen-budget', budget: { hours: -1 } })).toThrow(
      'A budget of -1 cannot be kept; give 0 to 1000000000, or nothing.',
    );
    // A part that cannot be read takes nothing else with it.
    const read = readSections({ ...next, screenBudget: { money: 'much' } }, project, 'saved.json');
    expect(read.aside.length).toBe(1);
    expect(read.project.drawer).toEqual(next.drawer);
  });
});

describe('frames', () => {
  it('should stand in a project, be undone with it, and go with their screen', () => {
    const project = smallProject();
    const [first, second] = project.drawer.screens.map(({ id }) => id);
    const frames = withFrame(withFrame(undefined, first!, 'made'), second!, 'to make');
    const next = apply(project, { kind: 'set-frames', frames }).project;
    expect([first!, second!].map((id) => frameState(id, next.frames))).toEqual(['made', 'to make']);
    expect(frameState('nowhere', next.frames)).toBe('drawn');
    expect(project.frames).toBeUndefined();
    expect(readProject(writeProject(next), 'saved.json').value!.frames).toEqual(frames);
    expect(withFrame(frames, first!, 'drawn').made).toEqual([]);
    expect(() => apply(project, { kind: 'set-frames', frames: { made: ['nowhere'], toMake: [] } })).toThrow();
  });

  it('should leave a wall the screens at hand only, when that is asked for and there are some', () => {
    const { drawer, explore } = smallProject();
    const [first, ...others] = drawer.screens.map(({ id }) => id);
    const asked = { ...explore, onlyAtHand: true, mustScreens: [first!, others[0]!] };
    expect(atHand(explore, drawer, { made: [first!], toMake: [] })).toBe(explore);
    expect(atHand(asked, drawer, undefined)).toBe(asked);
    expect(atHand(asked, drawer, { made: [first!], toMake: [] })).toMatchObject({ notScreens: others, mustScreens: [first] });
  });
});
