import { expect, it } from 'vitest';
import { gapsCounted, GapWords } from '../../../src/components/bench/look/gap-words.ts';
import type { Gap } from '../../../src/engine/order/gaps.ts';
import { numbersFrom, sheetShape, stackOf } from '../../engine/stack/fixtures.ts';

const square = (x: number): number[] => [x, 50, x + 50, 50, x + 50, 100, x, 100];
const { studio, pulls } = stackOf(
  [10, 60, 110].map((x) => sheetShape(`s${x}`, [square(x)])),
  numbersFrom('gap words'),
);
const words = new GapWords({ name: 'a print', pulls, drawer: studio });
const gap: Gap = { a: 0, b: 1, lengthMm: 50, bareMm: 50, covers: [], standsMm: 0, opensMm: 1, spread: 1, noTrap: null, xMm: 60, yMm: 75 };

it('should say what could show between two pulls, and what to do about it', () => {
  expect(words.sentences(gap)).toMatch(/ meet along 50 mm\. Up to 1 mm of bare paper could show\. Spread screen 2 by 1 mm\.$/);
  expect(words.sentences({ ...gap, standsMm: 0.3, opensMm: 1.3 })).toContain(', up to 0.3 mm apart as drawn. Up to 1.3 mm');
});

it('should ask for no trap where another pull covers the gap, and refuse one that cannot be', () => {
  const covered = words.sentences({ ...gap, bareMm: 0, covers: [2] });
  expect(covered).toMatch(/\(pull 3\) lies there too: no bare paper shows\.$/);
  expect(words.sentences({ ...gap, bareMm: 20, covers: [2] })).toContain('could show along 20 mm of it; elsewhere');
  expect(words.sentences({ ...gap, opensMm: 4, noTrap: { why: 'wide' } })).toContain(
    'A trap of 4 mm would show as a line of its own (over 2 mm',
  );
  const thin = words.sentences({ ...gap, noTrap: { why: 'thin', pull: 0 } });
  expect(thin).toContain('No trap of 1 mm fits: screen 1 is narrower than that there');
  expect(thin).not.toContain('Spread');
});

it('should count pairs, and those over bare paper', () => {
  const covered = { ...gap, bareMm: 0, covers: [2] };
  expect(gapsCounted([gap])).toBe('1 pair of pulls only just meets, over bare paper.');
  expect(gapsCounted([covered])).toBe('1 pair of pulls only just meets; another pull covers the gap.');
  expect(gapsCounted([gap, covered])).toBe('2 pairs of pulls only just meet; bare paper could show in 1 of them.');
});
