import { describe, expect, it } from 'vitest';
import { demoStocks } from '../../../../src/engine/ink/demo/demo-stocks.ts';
import { inkParts, mixName } from '../../../../src/engine/ink/mix/match-mix.ts';

const [base, lime, soot] = demoStocks();
const parts = [
  { ink: base!, share: 0.5, grams: 30 },
  { ink: soot!, share: 0.2, grams: 4 },
  { ink: lime!, share: 0.3, grams: 16 },
];

describe('mixName', () => {
  it('should name the strongest inks, not the base', () => {
    expect(mixName({ parts })).toBe('Quay lime and Stack soot');
    expect(mixName({ parts: parts.slice(0, 1) })).toBe('Clear water');
  });
});

describe('inkParts', () => {
  it('should be by weight', () => {
    expect(inkParts({ parts })).toEqual([
      { ink: base, parts: 30 },
      { ink: soot, parts: 4 },
      { ink: lime, parts: 16 },
    ]);
  });
});
