import { describe, expect, it } from 'vitest';
import { sheetsWithOvers } from '../../../src/engine/visit/quantities/sheets.ts';
import published from './overs.json' with { type: 'json' };

describe('sheetsWithOvers', () => {
  it.each(published.rows)('should start $start sheets for $good good ones over $runs runs', (row) => {
    expect(sheetsWithOvers(row.good, row.rejectPerRun, row.runs)).toBe(row.start);
  });
});
