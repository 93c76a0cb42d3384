import { describe, expect, it } from 'vitest';
import { bytesText } from '../../../../src/components/keep/copies/room-used.ts';

describe('bytes in words', () => {
  // Decimal prefixes: IEC 80000-13, 4; kB is 1000 bytes.
  it.each([
    [0, '0 bytes'],
    [999, '999 bytes'],
    [1000, '1.0 kB'],
    [3_440_000, '3.4 MB'],
    [120_000_000_000, '120 GB'],
    [5e18, '5000000 TB'],
  ])('should say %d as %s', (bytes, words) => {
    expect(bytesText(bytes)).toBe(words);
  });
});
