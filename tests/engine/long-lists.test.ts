import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkHolds, type Hold, type LogEvent, mergeLogs, readLog, recipeFamilies, standing } from '../../src/engine/index.ts';

/** Lists as long as no one makes them by hand: each ran out of stack or of patience before. */
const log = readLog(readFileSync(new URL('../files-from-before/log.json', import.meta.url), 'utf8'), 'log.json').value!;
const head = { device: 'd', sheet: 1 };

describe('long lists', () => {
  it('should follow an undoing of 150,000 undoings: every other one counts', () => {
    const chain = (length: number): LogEvent[] => [
      { ...head, id: 'u0', atMs: 1, kind: 'spoiled', note: '' },
      ...Array.from({ length }, (_, i): LogEvent => ({ ...head, id: `u${i + 1}`, atMs: 2 + i, kind: 'undone', event: `u${i}` })),
    ];
    expect(standing(chain(150_000))).toHaveLength(1);
    expect(standing(chain(150_001))).toHaveLength(0);
  });

  it('should merge two logs of 50,000 that share half, the same either way round', () => {
    const events = (device: string, from: number): LogEvent[] =>
      Array.from({ length: 50_000 }, (_, i) => ({ device, sheet: 1, id: `e${from + i}`, atMs: 1e12 + from + i, kind: 'placed', box: 'A' }));
    const [one, other] = [
      { ...log, events: events('a', 0) },
      { ...log, events: events('b', 25_000) },
    ];
    const { log: merged, conflicts } = mergeLogs(one, other, () => new Set());
    expect(merged.events).toHaveLength(100_000);
    expect(conflicts.filter(({ code }) => code === 'log.double')).toHaveLength(25_000);
    expect(mergeLogs(other, one, () => new Set()).log.events).toEqual(merged.events);
    expect(mergeLogs(merged, other, () => new Set()).log.events).toEqual(merged.events);
  });

  it('should keep 20,000 different events under one name apart, with names that stay short', () => {
    const events = Array.from({ length: 20_000 }, (_, i): LogEvent => ({ ...head, id: 'x', atMs: i, kind: 'spoiled', note: '' }));
    const merged = mergeLogs({ ...log, events }, { ...log, events: [] }, () => new Set()).log.events;
    expect(new Set(merged.map(({ id }) => id)).size).toBe(20_000);
    expect(Math.max(...merged.map(({ id }) => id.length))).toBeLessThan(20);
  });

  it('should find the family of 100,000 recipes that come one of another, and of a ring with a tail', () => {
    const row = Array.from({ length: 100_000 }, (_, i) => ({ id: `r${i}`, title: '', ...(i === 0 ? {} : { parent: `r${i - 1}` }) }));
    expect(recipeFamilies(row.reverse())).toHaveLength(1);
    const ring = [
      ['a', 'z'],
      ['z', 'y'],
      ['y', 'z'],
    ].map(([id, parent]) => ({ id: id!, title: '', parent: parent! }));
    expect(recipeFamilies(ring).map(({ id }) => id)).toEqual(['y']);
  });

  it('should find the one contradiction among 1,000 holds', () => {
    const pulls = Array.from({ length: 200 }, (_, i) => ({ id: `p${i}` }));
    const holds: Hold[] = [
      ...pulls.flatMap(({ id }): Hold[] => [
        { kind: 'place', pull: id },
        { kind: 'ink', pull: id },
      ]),
      ...Array.from({ length: 600 }, (_, i): Hold => ({ kind: 'before', pull: `p${i % 100}`, other: `p${100 + ((i * 7) % 100)}` })),
    ];
    expect(checkHolds(pulls, holds)).toEqual([]);
    expect(checkHolds(pulls, [...holds, { kind: 'before', pull: 'p107', other: 'p1' }])).toMatchObject([
      { code: 'hold.contradiction', where: 'holds[1000]' },
    ]);
  });

  it('should tell no more than a hundred of the contradictions that 4,000 holds have', () => {
    const pulls = Array.from({ length: 200 }, (_, i) => ({ id: `p${i}` }));
    const holds = Array.from({ length: 4000 }, (_, i): Hold => ({ kind: i % 2 === 0 ? 'first' : 'last', pull: `p${i % 200}` }));
    expect(checkHolds(pulls, holds)).toHaveLength(100);
  });
});
