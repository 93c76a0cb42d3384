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
      expect(printed, `seed ${seed}`).toBeLessThanOrEqual(best);
      expect(bound, `seed ${seed}`).toBeGreaterThanOrEqual(best - 1e-6);
      if (Math.abs(bound - printed) < 1e-6) expect(printed, `seed ${seed}`).toBe(best);
    }
  });

  it('should stay honest where no proof is in reach', () => {
    const asked = question(5, 200, 1000, 14);
    expectHonest({ ...asked, most: 60 });
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
    expect(() => screensToMake({ prints: [{}] as never, most: 1 })).toThrow('Print 1 names no screens');
    expect(() => screensToMake({ prints: [], have: 5 as never, most: 1 })).toThrow('The screens that are there are a list of ids');
  });
});
