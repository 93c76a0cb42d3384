import { describe, expect, it } from 'vitest';
import { onwardWords } from '../../../src/components/ui/next/next-words.ts';

const measures = (edgeContrast: number, change = 4.5) => ({ change, edgeContrast, distance: null });

describe('onwardWords', () => {
  it('should tell how much the contrast of edges changes', () => {
    expect(onwardWords(measures(0.5, 0), measures(0.43))).toBe('ΔE 4.5 in the mean, 14\u00a0% less contrast of edges');
    expect(onwardWords(measures(0.5, 0), measures(0.501))).toBe('ΔE 4.5 in the mean, contrast of edges as before');
  });

  it('should not call the first edges of a bare sheet as before', () => {
    expect(onwardWords(measures(0, 0), measures(0.218))).toBe('ΔE 4.5 in the mean, its first edges, 0.22 ΔE/mm');
    expect(onwardWords(measures(0, 0), measures(0))).toBe('ΔE 4.5 in the mean, no edges');
  });
});
