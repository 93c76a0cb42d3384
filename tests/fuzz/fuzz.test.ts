import { describe, expect, it } from 'vitest';
import { guarded } from './guard.ts';
import { READERS } from './readers.ts';
import { realFiles } from './seeds.ts';

/** Of the processor’s time; `npm run fuzz` gives 2 s, but here the runner of tests takes its share. */
const MOST_MS = 10_000;

describe('2,000 changed files, the short form of npm run fuzz', () => {
  // The reading of 2,000 whole projects takes half a minute of a processor.
  it.each(READERS)('should be read or refused in a sentence by the reader of %s', { timeout: 300_000 }, async (reader) => {
    const faults = await guarded({ reader, files: realFiles(reader), changed: { seed: 20_261, count: 2000 }, mostMs: MOST_MS });
    expect(faults).toEqual([]);
  });
});
