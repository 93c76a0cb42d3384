import { describe, expect, it } from 'vitest';
import { deltaWords, weighLines } from '../../../src/components/inks/match/match-words.ts';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import type { MatchAnswer } from '../../../src/engine/ink/mix/match.ts';

describe('words of a mix', () => {
  const [base, lime, soot] = demoStocks();
  const answer: Pick<MatchAnswer, 'parts' | 'deltaE' | 'exactDeltaE'> = {
    parts: [
      { ink: base!, share: 0.5, grams: 30 },
      { ink: soot!, share: 0.2, grams: 4 },
      { ink: lime!, share: 0.3, grams: 16 },
    ],
    deltaE: 0.42,
    exactDeltaE: 0.18,
  };
  it('should give parts of 100 by weight', () => {
    expect(weighLines(answer).map(({ hundredths, grams }) => [hundredths, grams])).toEqual([
      ['60.0', '30.0'],
      ['8.0', '4.0'],
      ['32.0', '16.0'],
    ]);
  });
  it('should tell what rounding cost', () => {
    expect(deltaWords(answer)).toBe('ΔE 0.4 as weighed, 0.2 before rounding');
    expect(deltaWords({ deltaE: 0.41, exactDeltaE: 0.4 })).toBe('ΔE 0.4');
  });
});
