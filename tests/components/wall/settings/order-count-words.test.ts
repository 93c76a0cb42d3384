import { describe, expect, it } from 'vitest';
import { countSentence, drawnSentence } from '../../../../src/components/wall/settings/order-count-words.ts';

const count = (pulls: number, value: string | null, oneByOne = false) => ({ pulls, overlaps: 0, count: value, oneByOne });

describe('countSentence', () => {
  it('should say that it counts orders that may differ, not pictures', () => {
    expect(countSentence(count(12, '42950880'))).toBe('42,950,880 orders of these 12 pulls may print differently.');
    expect(countSentence(count(40, '1234567890123456789'))).toBe('About 1.2 × 10¹⁸ orders of these 40 pulls may print differently.');
    expect(countSentence(count(3, '1'))).toBe('All orders of these 3 pulls print the same.');
    expect(countSentence(count(90, null))).toContain('than can be counted');
    const bounds = { ...count(40, null), least: '345' + '0'.repeat(30), most: '9' + '9'.repeat(39) };
    expect(countSentence(bounds)).toBe('Between 10³² and 10⁴⁰ orders of these 40 pulls may print differently.');
  });
  it('should say what is not taken off', () => {
    expect(drawnSentence(count(12, '42950880'))).toContain('Fewer prints differ where a pull hides');
    expect(drawnSentence(count(1, '1'))).toBe('');
  });
});
