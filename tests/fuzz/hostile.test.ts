import { describe, expect, it } from 'vitest';
import { guarded } from './guard.ts';
import { HOSTILE } from './hostile.ts';
import { READERS } from './readers.ts';

/** Of the processor’s time; `npm run fuzz` gives 2 s, but here the runner of tests takes its share. */
const MOST_MS = 10_000;

describe('hostile files, each in a worker that is ended after some seconds or 500 MB', () => {
  it.each(READERS)('should be read or refused in a sentence by the reader of %s', { timeout: 300_000 }, async (reader) => {
    const files = HOSTILE.filter((file) => file.reader === reader);
    expect(files.length).toBeGreaterThan(0);
    const faults = await guarded({ reader, files: files.map(({ text }) => text), changed: null, mostMs: MOST_MS });
    expect(faults.map(({ index, what }) => `${files[index]!.what}: ${what}`)).toEqual([]);
  });
});
