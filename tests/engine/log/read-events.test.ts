import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readEvents, readHeads } from '../../../src/engine/log/read-events.ts';
import type { VisitLog } from '../../../src/engine/log/types.ts';

const LOG = JSON.parse(readFileSync(new URL('../../files-from-before/log.json', import.meta.url), 'utf8')) as VisitLog;

describe('a kept log', () => {
  it('should read as it was kept', () => {
    expect(readEvents(LOG.events, 'the log')).toEqual({ read: LOG.events, problems: [] });
    expect(readHeads([LOG.head], 'the visits')).toEqual({ read: [LOG.head], problems: [] });
  });

  it('should lose a bad event alone, and say which', () => {
    const bad: unknown[] = [null, 7, 'x', {}, { ...LOG.events[0], pulls: 'junk' }, { ...LOG.events[0], atMs: Number.NaN }];
    const { read, problems } = readEvents([...bad, ...LOG.events], 'the log');
    expect(read).toEqual(LOG.events);
    expect(problems).toHaveLength(bad.length);
    expect(problems[4]!.message).toMatch(/^the log: events\[4\]\.pulls is "junk", but must be an array/);
  });

  it('should lose a bad visit alone', () => {
    const { read, problems } = readHeads([{ ...LOG.head, recipes: [] }, LOG.head, undefined], 'the visits');
    expect(read).toEqual([LOG.head]);
    expect(problems).toHaveLength(2);
  });
});
