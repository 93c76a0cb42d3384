import { describe, expect, it } from 'vitest';
import { type Random, randomFrom } from '../../../../src/engine/base/random.ts';
import { numbered } from '../../../../src/engine/pullorder/beds/arrangement.ts';
import { BedClock } from '../../../../src/engine/pullorder/beds/bed-clock.ts';
import { shopOf } from '../../../../src/engine/pullorder/beds/shop.ts';
import { planPulls } from '../../../../src/engine/pullorder/planner.ts';
import { changesOnBeds, endOf } from '../../../../src/engine/pullorder/timeline/beds.ts';
import type { TimelineInput } from '../../../../src/engine/pullorder/timeline/start-state.ts';
import { timelineOf } from '../../../../src/engine/pullorder/timeline/timeline.ts';

const CASES = 400;

/** A visit with all that a timeline knows of: beds, lunch, nights, racks, strokes, a test sheet, and one that is under way. */
function visitOf(random: Random): TimelineInput {
  const screens = 1 + random.int(5);
  const touching: [number, number][][] = [];
  const sheets = Array.from({ length: 1 + random.int(5) }, () => {
    const pulls = Array.from({ length: 1 + random.int(5) }, () => ({
      screen: `S${random.int(screens)}`,
      ink: `I${random.int(3)}`,
      offset: random.pick(['', '', '1']),
      strokes: 1 + random.int(2),
    }));
    const pairs = pulls.flatMap((_, b) =>
      pulls.slice(0, b).flatMap((_each, a): [number, number][] => (random.chance(1, 2) ? [[a, b]] : [])),
    );
    touching.push(pairs);
    return { pulls, overlaps: pairs.filter(() => random.chance(2, 3)) };
  });
  const onPress = [0, 1].map((bed) => (random.chance(1, 3) ? null : { screen: `S${bed}`, ink: `I${random.int(3)}`, offset: '' }));
  const start = {
    minute: random.int(80),
    ...(random.chance(1, 2) ? { onPress } : {}),
    ...(random.chance(1, 3) ? { mixed: ['I0'] } : {}),
    readyAt: sheets.map(({ pulls }) => pulls.map(() => ({ minute: random.int(100), ink: 'I0' }))),
    stackAt: sheets.map(() => random.int(100)),
    testStackAt: random.int(90),
  };
  return {
    problem: { sheets },
    touching,
    times: {
      pullsPerHour: random.pick([60, 10, 45]),
      strokeMinutes: 0.5,
      mountMinutes: random.int(16),
      washUpMinutes: random.int(16),
      registerMinutes: random.int(8),
      mixMinutes: random.int(8),
      testPulls: random.int(2),
    },
    dryMinutesByInk: { I0: random.int(60), I1: random.int(300), I2: 0 },
    ...(random.chance(1, 2) ? { stackMinutesByInk: { I0: random.int(60), I1: random.int(500), I2: 30 } } : {}),
    visit: {
      days: 30,
      hoursPerDay: random.pick([1.5, 4, 8]),
      beds: 1 + random.int(3),
      ...(random.chance(1, 3) ? { lunch: { fromMinute: 20 + random.int(40), minutes: 30 } } : {}),
      ...(random.chance(1, 3) ? { rackPlaces: 1 + random.int(4) } : {}),
    },
    start: random.chance(1, 2) ? start : undefined,
  };
}

describe('BedClock', () => {
  it(`should cost ${CASES} random arrangements as the timeline lays them out`, () => {
    let late = 0;
    let waits = 0;
    for (let i = 0; i < CASES; i++) {
      const random = randomFrom(`bed clock ${i}`);
      const input = visitOf(random);
      const { setUps } = planPulls(input.problem, { budgetMs: 0.1, seed: i });
      const beds = setUps.map(() => random.int(input.visit.beds!));
      const { timeline, problems } = timelineOf(input)(setUps, beds);
      const shop = shopOf(input);
      const cost = new BedClock(shop).cost(numbered(setUps, beds, shop));
      const expected = {
        overruns: problems.filter(({ code }) => code === 'visit.long-set-up').length,
        end: Math.round(10 * endOf(timeline)),
        wait: Math.round(timeline.waitMinutes),
        ...changesOnBeds(setUps, beds, input.start?.onPress),
      };
      expect(cost, `case ${i}`).toMatchObject(expected);
      late += expected.overruns;
      if (expected.wait > 0) waits++;
    }
    expect(late).toBeGreaterThan(5);
    expect(waits).toBeGreaterThan(CASES / 4);
  });

  it('should leave off where an order ends later than it may', () => {
    const input = visitOf(randomFrom('leave off'));
    const { setUps } = planPulls(input.problem, { budgetMs: 1, seed: 1 });
    const shop = shopOf(input);
    const clock = new BedClock(shop);
    const order = numbered(
      setUps,
      setUps.map(() => 0),
      shop,
    );
    const { end } = clock.cost(order)!;
    expect(clock.cost(order, end)).toMatchObject({ end });
    expect(clock.cost(order, end - 1)).toBeNull();
  });
});
