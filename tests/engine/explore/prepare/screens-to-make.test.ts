import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { type ScreensAsked, screensToMake } from '../../../../src/engine/index.ts';

/** Invented questions: prints share screens as prints of one wall do. */
function question(seed: number, screens: number, prints: number, long: number): ScreensAsked {
  const random = randomFrom(`screens ${seed}`);
  const ids = Array.from({ length: screens }, (_, i) => `s${i}`);
  return {
    prints: Array.from({ length: prints }, () => ({
      screens: random.shuffle([...ids]).slice(0, 1 + random.int(long)),
      weight: 1 + random.int(5),
    })),
    have: random.shuffle([...ids]).slice(0, random.int(Math.ceil(screens / 3))),
    most: random.int(screens),
  };
}

/** What a set of new screens prints, counted one print at a time. */
function printedWith({ prints, have = [] }: ScreensAsked, made: readonly string[]): number {
  const there = [...have, ...made];
  return prints.filter((print) => print.screens.every((id) => there.includes(id))).reduce((sum, { weight = 1 }) => sum + weight, 0);
}

/** All subsets, one by one. */
function bruteForce(asked: ScreensAsked): number {
  const fresh = [...new Set(asked.prints.flatMap(({ screens }) => screens))].filter((id) => !(asked.have ?? []).includes(id));
  let best = 0;
  for (let bits = 0; bits < 2 ** fresh.length; bits++) {
    const made = fresh.filter((_, i) => (bits >> i) & 1);
    if (made.length <= asked.most) best = Math.max(best, printedWith(asked, made));
  }
  return best;
}

const highs = await loadHighs();

/** The same as an integer programme, solved by HiGHS (MIT licence), a general-purpose solver. */
function byHighs(asked: ScreensAsked): number {
  const fresh = [...new Set(asked.prints.flatMap(({ screens }) => screens))].filter((id) => !(asked.have ?? []).includes(id));
  const rows = asked.prints.flatMap(({ screens }, p) =>
    [...new Set(screens)].filter((id) => fresh.includes(id)).map((id) => ` r${p}_${id}: z${p} - y${id} <= 0`),
  );
  const text = [
    'Maximize',
    ` obj: ${asked.prints.map(({ weight = 1 }, p) => `${weight} z${p}`).join(' + ')}`,
    'Subject To',
    ...rows,
    ...(fresh.length > 0 ? [` most: ${fresh.map((id) => `y${id}`).join(' + ')} <= ${asked.most}`] : []),
    'Binary',
    ` ${[...asked.prints.map((_, p) => `z${p}`), ...fresh.map((id) => `y${id}`)].join(' ')}`,
    'End',
  ].join('\n');
  return Math.round(highs.solve(text, { mip_rel_gap: 0 }).ObjectiveValue);
}

function expectHonest(asked: ScreensAsked): void {
  const { screens, printed, bound } = screensToMake(asked);
  expect(screens.length).toBeLessThanOrEqual(asked.most);
  expect(screens.filter((id) => (asked.have ?? []).includes(id))).toEqual([]);
  expect(printedWith(asked, screens)).toBeCloseTo(printed, 9);
  expect(bound).toBeGreaterThanOrEqual(printed);
}

describe('screensToMake', () => {
  it('should print as much as the best of all subsets', () => {
    for (let seed = 0; seed < 200; seed++) {
      const asked = question(seed, 3 + (seed % 8), 1 + (seed % 17), 4);
      expectHonest(asked);
      const best = bruteForce(asked);
      const { printed, bound } = screensToMake(asked);
      expect(printed, `seed ${seed}`).toBe(best);
      expect(bound, `seed ${seed}`).toBeCloseTo(best, 6);
    }
  });

  it('should agree with HiGHS on prints of two dozen screens', () => {
    for (let seed = 0; seed < 30; seed++) {
      const asked = question(1000 + seed, 24, 40, 6);
      expectHonest(asked);
      const { printed, bound } = screensToMake(asked);
      const best = byHighs(asked);
      expect([printed, bound], `seed ${seed}`).toEqual([best, best]);
    }
  });

  it('should find what long searches found, with a bound beside it, where no proof is in reach', () => {
    // Prints of 6 to 10 of 120 screens that are drawn alike likely, so few share several. 462 is the best that a search by
    // swaps found in ten times as long; the linear relaxation by itself allows 8,300.
    const random = randomFrom('u1');
    const ids = Array.from({ length: 120 }, (_, i) => `s${i}`);
    const prints = Array.from({ length: 1000 }, () => ({
      screens: random.shuffle(ids).slice(0, 6 + random.int(5)),
      weight: 1 + random.int(100),
    }));
    const asked = { prints, most: 20 };
    const { screens, printed, bound } = screensToMake(asked);
    expect(printedWith(asked, screens)).toBe(printed);
    expect(printed).toBeGreaterThanOrEqual(462);
    expect(bound).toBeGreaterThanOrEqual(printed);
    expect(bound).toBeLessThan(1500);
  });

  it('should stay honest about prints of 80 screens', () => {
    const random = randomFrom('eighty');
    const ids = Array.from({ length: 200 }, (_, i) => `s${i}`);
    const base = random.shuffle(ids).slice(0, 90);
    const prints = Array.from({ length: 20 }, () => ({
      screens: [...random.shuffle(base).slice(0, 78), ...random.shuffle(ids).slice(0, 2)],
    }));
    expectHonest({ prints, most: 84 });
    expect(screensToMake({ prints, most: 200 })).toMatchObject({ printed: 20, bound: 20 });
    expect(screensToMake({ prints, most: 60 })).toEqual({ screens: [], printed: 0, bound: 0 });
  });

  it('should take from prints that share nothing as a knapsack does', () => {
    // Weights and numbers of screens of nine prints; worked out by trying all 512 choices of prints.
    const random = randomFrom('apart');
    for (let round = 0; round < 8; round++) {
      const prints = Array.from({ length: 9 }, (_, i) => ({
        screens: Array.from({ length: 1 + random.int(6) }, (_n, j) => `p${i} ${j}`),
        weight: 1 + random.int(20),
      }));
      const most = 5 + random.int(15);
      let best = 0;
      for (let mask = 0; mask < 512; mask++) {
        const taken = prints.filter((_, i) => (mask >> i) & 1);
        if (taken.reduce((sum, { screens }) => sum + screens.length, 0) > most) continue;
        best = Math.max(
          best,
          taken.reduce((sum, { weight }) => sum + weight, 0),
        );
      }
      expect(screensToMake({ prints, most })).toMatchObject({ printed: best, bound: best });
    }
  });

  it('should go up a ladder of prints that hold each other', () => {
    const prints = Array.from({ length: 30 }, (_, i) => ({ screens: Array.from({ length: i + 1 }, (_n, j) => `s${j}`) }));
    for (const most of [0, 1, 17, 30, 99]) {
      const rungs = Math.min(30, most);
      expect(screensToMake({ prints, most })).toMatchObject({ printed: rungs, bound: rungs });
    }
    // The other way round: nothing until all are there.
    expect(screensToMake({ prints: prints.slice(-1), most: 29 })).toEqual({ screens: [], printed: 0, bound: 0 });
  });

  it('should count large, broken, zero and repeated prints for what they weigh', () => {
    const one = { screens: ['a', 'b'] };
    // As JSON has it where nothing was said.
    const unsaid = { screens: ['c'], weight: null as unknown as undefined };
    expect(screensToMake({ prints: [unsaid], most: 1 })).toEqual({ screens: ['c'], printed: 1, bound: 1 });
    expect(screensToMake({ prints: [one, one, one, { screens: ['c'], weight: 2.5 }], most: 2 })).toEqual({
      screens: ['a', 'b'],
      printed: 3,
      bound: 3,
    });
    expect(
      screensToMake({
        prints: [
          { ...one, weight: 0 },
          { screens: ['c'], weight: 0 },
        ],
        most: 3,
      }),
    ).toEqual({ screens: [], printed: 0, bound: 0 });
    const large = [
      { ...one, weight: 1e15 },
      { screens: ['c', 'd'], weight: 1e15 + 2 },
    ];
    expect(screensToMake({ prints: large, most: 2 })).toEqual({ screens: ['c', 'd'], printed: 1e15 + 2, bound: 1e15 + 2 });
    const small = [
      { ...one, weight: 1e-9 },
      { screens: ['c', 'd'], weight: 2e-9 },
    ];
    expect(screensToMake({ prints: small, most: 2 }).screens).toEqual(['c', 'd']);
  });

  it('should ask for nothing that is there, and not mind screens that no print knows', () => {
    const asked = question(7, 12, 20, 5);
    const have = ['nowhere', ...new Set(asked.prints.flatMap(({ screens }) => screens))];
    const whole = asked.prints.reduce((sum, { weight = 1 }) => sum + weight, 0);
    expect(screensToMake({ ...asked, have, most: 5 })).toEqual({ screens: [], printed: whole, bound: whole });
    expect(screensToMake({ ...asked, have: ['nowhere', ''], most: 12 }).printed).toBe(whole);
    expect(screensToMake({ prints: [{ screens: [] }, { screens: ['a'] }], most: 0 })).toEqual({ screens: [], printed: 1, bound: 1 });
  });

  it('should give the same answer each time', () => {
    const asked = { ...question(11, 40, 60, 12), most: 18 };
    expect(screensToMake(asked)).toEqual(screensToMake(asked));
  });

  it('should not be led astray by single screens', () => {
    // One by one, a and b print 2 each; the four that belong together print 9.
    const prints = [
      { screens: ['a'], weight: 2 },
      { screens: ['b'], weight: 2 },
      { screens: ['c', 'd', 'e', 'f'], weight: 9 },
    ];
    expect(screensToMake({ prints, most: 4 })).toEqual({ screens: ['c', 'd', 'e', 'f'], printed: 9, bound: 9 });
  });

  it('should answer for no prints, nothing to make and all that is there', () => {
    expect(screensToMake({ prints: [], most: 3 })).toEqual({ screens: [], printed: 0, bound: 0 });
    expect(screensToMake({ prints: [{ screens: ['a'] }], most: 0 })).toEqual({ screens: [], printed: 0, bound: 0 });
    expect(screensToMake({ prints: [{ screens: ['a', 'a'] }], have: ['a', 'z'], most: 2 })).toEqual({ screens: [], printed: 1, bound: 1 });
  });

  it('should refuse what it cannot count, in a sentence', () => {
    expect(() => screensToMake({ prints: [], most: -1 })).toThrow('The number of new screens is -1; give a whole number from 0.');
    expect(() => screensToMake({ prints: [{ screens: ['a'], weight: Number.NaN }], most: 1 })).toThrow(
      'Print 1 counts NaN; give 0 or a positive number.',
    );
    const [huge, half] = [
      { screens: ['a'], weight: 1e300 },
      { screens: ['b'], weight: 5e299 },
    ];
    expect(() => screensToMake({ prints: [huge, half], most: 1 })).toThrow('The prints count more than 10³⁰⁰ together');
    expect(screensToMake({ prints: [half, { screens: ['a', 'b'], weight: 4e299 }], most: 1 })).toMatchObject({
      printed: 5e299,
      bound: 5e299,
    });
    expect(() => screensToMake({ prints: [{}] as never, most: 1 })).toThrow('Print 1 names no screens');
    expect(() => screensToMake({ prints: [], have: 5 as never, most: 1 })).toThrow('The screens that are there are a list of ids');
  });
});
