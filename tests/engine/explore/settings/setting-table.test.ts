import { describe, expect, it } from 'vitest';
import { checkRanges } from '../../../../src/engine/explore/settings/check-ranges.ts';
import { COUNT_LIMITS, LIMIT_FIELDS, LIMITS, limitText } from '../../../../src/engine/explore/settings/limits.ts';
import { NUMBER_SETTINGS } from '../../../../src/engine/explore/settings/setting-table.ts';
import { keptNumber } from '../../../../src/engine/explore/settings/typed-number.ts';
import type { ExploreSettings } from '../../../../src/engine/explore/types.ts';
import { exploreSchema } from '../../../../src/engine/project/explore-schema.ts';
import { pull } from '../../order/drawer.ts';

const SETTINGS: ExploreSettings = {
  seed: 'slack tide',
  count: 80,
  order: true,
  recolour: true,
  palette: ['tar'],
  offsetRangeMm: 0,
  leaveOut: 0,
  bringIn: 0,
  holds: [],
  minDeltaE: 0.5,
};

describe('the table of settings', () => {
  it('should let a file and a check agree on every number, at both ends and beyond', () => {
    expect(NUMBER_SETTINGS.length).toBe(20);
    for (const [field, { range }] of NUMBER_SETTINGS) {
      const step = range.whole ? 1 : 0.001;
      const ends = [
        range.least,
        range.least - step,
        range.least + 0.5,
        Number.NaN,
        ...(range.most < Infinity ? [range.most, range.most + step] : [1e9]),
      ];
      for (const value of ends) {
        const settings = { ...SETTINGS, [field]: value };
        const told = checkRanges(settings).some(
          ({ code, where }) => where === field && !(code === 'limit.snap' && field === 'offsetRangeMm'),
        );
        expect(told, `${field} ${value}`).toBe(!exploreSchema.safeParse(settings).success);
      }
    }
  });

  it('should ask for the numbers that every wall needs, and for no other', () => {
    const bare = { seed: 'tide', order: true, recolour: true, palette: [], holds: [] } as unknown as ExploreSettings;
    expect(checkRanges(bare).map(({ where }) => where)).toEqual(['count', 'offsetRangeMm', 'leaveOut', 'bringIn', 'minDeltaE']);
  });

  it('should keep what files held before the table', () => {
    // The widest values that the schema before it let pass.
    const widest = { count: 10_000, offsetRangeMm: 100, leaveOut: 200, bringIn: 200, minDeltaE: 100, maxInks: 200, offsetSnapMm: 100 };
    const rest = {
      echoes: 200,
      echoMm: 100,
      maxStrokes: 20,
      maxPulls: 200,
      maxScreens: 200,
      maxSetUps: 200,
      maxThirdShare: 1,
      maxEdgeShare: 0,
    };
    const settings = { ...SETTINGS, ...widest, ...rest };
    expect(exploreSchema.safeParse(settings)).toEqual({ success: true, data: settings });
  });
});

describe('LIMITS', () => {
  it('should count a set-up for every screen, ink, offset, turn and number of strokes', () => {
    const one = pull(0, 'tar');
    const pulls = [
      one,
      { ...one, id: 'again' },
      { ...one, id: 'b', strokes: 2 },
      { ...one, id: 'c', dxMm: 1 },
      { ...one, id: 'd', turnDeg: 180 },
      pull(1, 'tar'),
    ];
    const counted = Object.fromEntries(COUNT_LIMITS.map(([field, { measure }]) => [field, measure(pulls)]));
    expect(counted).toEqual({ maxInks: 1, maxPulls: 6, maxScreens: 2, maxSetUps: 5 });
  });

  it('should say each limit as a condition', () => {
    const says = LIMIT_FIELDS.map((field) => LIMITS[field].says(limitText(field, LIMITS[field].kind === 'count' ? 1 : 0.125)));
    expect(says).toEqual([
      'a print has at most 1 ink',
      'a print has at most 1 pull',
      'a print has at most 1 screen',
      'a print has at most 1 set-up',
      'overprint colours cover at most 12.5 % of a print',
      "ink covers at most 12.5 % of the sheet's outer 10 mm",
    ]);
  });
});

describe('keptNumber', () => {
  it('should keep a share of what is typed in %, on its steps and within its range', () => {
    expect(keptNumber('maxEdgeShare', 12.3)).toBeCloseTo(0.125, 12);
    expect([keptNumber('maxEdgeShare', 140), keptNumber('maxEdgeShare', -3)]).toEqual([1, 0]);
  });

  it('should keep whole numbers whole and lengths on tenths, no further than asked', () => {
    expect([keptNumber('count', 12.4), keptNumber('count', 0), keptNumber('leaveOut', 9, 5)]).toEqual([12, 1, 5]);
    expect([keptNumber('offsetRangeMm', 2.34), keptNumber('echoMm', -1)]).toEqual([2.3, 0]);
  });
});
