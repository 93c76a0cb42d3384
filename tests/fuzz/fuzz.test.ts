import { describe, expect, it } from 'vitest';
import { guarded } from './guard.ts';
import { READERS } from './readers.ts';
import { realFiles } from './seeds.ts';

/** Of the processor’s time; `npm run fuzz` gives 2 s, but here the runner of tests takes its share. */
const MOST_MS = 10_000;

/** Whole documents, each of which takes some ten milliseconds to read and use. */
const LONG_READ: ReadonlySet<string> = new Set(['recipe', 'project', 'log', 'visit']);

describe('500 changed files, 100 where they are whole documents: the short form of npm run fuzz', () => {
  it.each(READERS)('should be read or refused in a sentence by the reader of %s', { timeout: 300_000 }, async (reader) => {
    const faults = await guarded({
      reader,
      files: realFiles(reader),
      changed: { seed: 20_261, count: LONG_READ.has(reader) ? 100 : 500 },
      mostMs: MOST_MS,
    });
    expect(faults).toEqual([]);
  });
});
