import { describe, expect, it } from 'vitest';
import { sheetsWithOvers } from '../../../src/engine/visit/quantities/sheets.ts';
import published from './overs.json' with { type: 'json' };

/** Whether so many sheets leave enough good ones: sheets × (100 − r)^runs against good × 100^runs, in whole numbers. */
function enough(sheets: number, { good, rejectPercent, runs }: (typeof published.rows)[number]): boolean {
  let left = BigInt(sheets);
  let wanted = BigInt(good);
  for (let run = 0; run < runs; run++) {
    left *= BigInt(100 - rejectPercent);
    wanted *= 100n;
  }
  return left >= wanted;
}

describe('sheetsWithOvers', () => {
  it.each(published.rows)('should start with just enough sheets for $good good ones over $runs runs at $rejectPercent %', (row) => {
    const start = sheetsWithOvers(row.good, row.rejectPercent / 100, row.runs);
    expect(enough(start, row)).toBe(true);
    expect(enough(start - 1, row)).toBe(false);
  });

  it('should start with 100 for 81 over two runs at 10 %, where nothing is rounded', () => {
    expect(sheetsWithOvers(81, 0.1, 2)).toBe(100);
  });
});
