import { describe, expect, it } from 'vitest';
import { type RemoteHelper, WallHelpers } from '../../../src/workers/helpers/wall-helpers.ts';

/** Draws are told apart by their candidate; what they hold is not looked at. */
const drawOf = (candidate: number): never => ({ candidate }) as never;

/** A helper whose answers come when they are let go. */
function heldHelper(): { helper: RemoteHelper; asked: number[]; answer: () => Promise<void> } {
  const asked: number[] = [];
  const waiting: (() => void)[] = [];
  const helper: RemoteHelper = {
    begin: () => Promise.resolve(),
    draw: (from, count) =>
      new Promise((done) => {
        asked.push(from);
        waiting.push(() => done(Array.from({ length: count }, (_, i) => drawOf(from + i))));
      }),
    paint: () => Promise.resolve([]),
  };
  const answer = async (): Promise<void> => {
    for (const done of waiting.splice(0)) done();
    await settled();
  };
  return { helper, asked, answer };
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

async function begun(): Promise<ReturnType<typeof heldHelper> & { helpers: WallHelpers }> {
  const held = heldHelper();
  const helpers = new WallHelpers([held.helper], {} as never);
  await settled();
  return { ...held, helpers };
}

describe('WallHelpers', () => {
  it('should give each first draw once', async () => {
    const { helpers, answer } = await begun();
    expect(helpers.ahead(0, 2)).toBe(false);
    await answer();
    expect(helpers.ahead(0, 2)).toBe(true);
    expect([helpers.first(0), helpers.first(0), helpers.first(1)]).toEqual([{ candidate: 0 }, undefined, { candidate: 1 }]);
  });

  it('should not wait for a candidate whose first draw was used up', async () => {
    const { helpers, answer } = await begun();
    helpers.ahead(0, 1);
    await answer();
    // Its picture was there already, so that the search tries the same candidate again, by itself.
    helpers.first(0);
    expect(helpers.ahead(0, 1)).toBe(true);
  });

  it('should begin a late helper when told, and go on without it until then', async () => {
    const { helper, asked } = heldHelper();
    const helpers = new WallHelpers([{ ...helper, late: true }], {} as never);
    await settled();
    expect([helpers.any, helpers.ahead(0, 2), asked.length]).toEqual([false, true, 0]);
    helpers.beginLate();
    await settled();
    expect([helpers.any, helpers.ahead(4, 2)]).toEqual([true, false]);
    expect(asked).toEqual([4, 5]);
  });

  it('should go on without a helper that is away, and wait for nothing that it was asked for', async () => {
    const { helper, asked } = heldHelper();
    const away = { ...helper, away: false };
    const helpers = new WallHelpers([away], {} as never);
    await settled();
    expect(helpers.ahead(0, 1)).toBe(false);
    away.away = true;
    expect([helpers.any, helpers.ahead(0, 1), asked.length]).toEqual([false, true, 2]);
    away.away = false;
    helpers.ahead(2, 1);
    expect(helpers.any).toBe(true);
  });

  it('should ask for more at once of a helper that is quick', async () => {
    const { helpers, asked, answer } = await begun();
    for (let next = 0; next < 40; next++) {
      helpers.ahead(next, 1);
      await answer();
      helpers.first(next);
    }
    const blocks = asked.slice(1).map((from, i) => from - asked[i]!);
    expect(blocks[0]).toBe(1);
    expect(Math.max(...blocks)).toBe(8);
  });

  it('should throw away what comes after the search has drawn it by itself', async () => {
    const { helpers, asked, answer } = await begun();
    helpers.ahead(0, 1);
    expect(asked).toEqual([0, 1]);
    expect(helpers.first(0)).toBeUndefined();
    await answer();
    expect(helpers.first(0)).toBeUndefined();
    expect(helpers.first(1)).toEqual({ candidate: 1 });
  });

  it('should take what the search draws while it would wait, of candidates that no helper has', async () => {
    const { helpers, asked, answer } = await begun();
    expect(helpers.ahead(0, 2)).toBe(false);
    expect(asked).toEqual([0, 1]);
    const lent: number[] = [];
    const draw = (candidate: number): never => {
      lent.push(candidate);
      return drawOf(candidate);
    };
    while (helpers.lend(draw));
    expect(lent[0]).toBe(2);
    expect(lent).toEqual(Array.from(lent, (_, i) => 2 + i));
    await answer();
    for (const candidate of [0, 1, ...lent]) expect(helpers.first(candidate)).toEqual({ candidate });
    // What comes next is asked for behind what was lent.
    helpers.ahead(2 + lent.length, 1);
    expect(asked.at(-1)).toBeGreaterThanOrEqual(2 + lent.length);
  });
});
