import { describe, expect, it } from 'vitest';
import type { PaperTable } from '../../../../src/components/output/papers/paper-blocks.ts';
import { weekBlocks } from '../../../../src/components/output/papers/week-blocks.ts';
import type { DatedVisit } from '../../../../src/engine/visitfile/calendar.ts';

const serial = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;
const day = (at: number, bed = 0, fromMinute = 570) => ({ day: at, bed, fromMinute, toMinute: fromMinute + 300, setUps: at });

function tableOf(visits: readonly DatedVisit[]): string[][] {
  const table = weekBlocks(visits).find((block): block is PaperTable => block.kind === 'table')!;
  for (const { cells } of table.rows) expect(cells).toHaveLength(table.columns.length);
  expect(table.columns.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  return table.rows.map(({ cells }) => cells.map(({ lines }) => lines.map(({ text }) => text).join(', ')));
}

describe('the papers of a week', () => {
  const ebb = { title: 'Ebb', firstDay: serial('2026-11-27'), days: [day(1), day(2)] };

  it('should name each day once, with whose it is, from when until when', () => {
    // By the calendar: 27 November 2026 is a Friday, the next working day Monday the 30th.
    const flood = { title: 'Flood', firstDay: serial('2026-11-30'), days: [day(1, 0, 900)] };
    expect(tableOf([ebb, flood])).toEqual([
      ['Fri 27 Nov', '9:30 to 14:30', 'Ebb, day 1 of 2', '1'],
      ['Mon 30 Nov', '9:30 to 14:30', 'Ebb, day 2 of 2', '2'],
      ['', '15:00 to 20:00', 'Flood, day 1 of 1', '1'],
    ]);
    expect(weekBlocks([ebb, flood]).some((block) => block.kind === 'text' && block.bold)).toBe(false);
  });

  it('should say where two want one bed, and which', () => {
    const flood = { title: 'Flood', firstDay: serial('2026-11-27'), days: [day(1, 1), day(1)] };
    expect(tableOf([ebb, flood]).map((row) => row[2])).toEqual(['1', '1', '2', '1']);
    expect(weekBlocks([ebb, flood])[0]).toMatchObject({ text: 'Fri 27 Nov: Ebb and Flood want bed 1 at one time.', bold: true });
  });
});
