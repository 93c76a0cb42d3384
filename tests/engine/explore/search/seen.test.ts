import { describe, expect, it } from 'vitest';
import { rememberSeen, seenBefore, type SeenRun } from '../../../../src/engine/explore/search/seen.ts';
import { MOST_SEEN_PRINTS, MOST_SEEN_RUNS } from '../../../../src/engine/explore/search/seen.ts';

const print = (name: string) => ({ key: name, look: '' });
const prints = (name: string, count: number) => Array.from({ length: count }, (_, i) => print(`${name}${i}`));

describe('seen prints', () => {
  it('should keep from a seed only what hung before it, so that its wall comes again', () => {
    let seen: readonly SeenRun[] = [];
    seen = rememberSeen(seen, 'ebb', prints('e', 3));
    seen = rememberSeen(seen, 'flood', prints('f', 2));
    expect(seenBefore(seen, 'ebb')).toEqual([]);
    expect(seenBefore(seen, 'flood').map(({ key }) => key)).toEqual(['e0', 'e1', 'e2']);
    expect(seenBefore(seen, 'neap')).toHaveLength(5);
    // Going back to the first seed with other settings must not change the second one's wall.
    expect(rememberSeen(seen, 'ebb', prints('x', 5))).toBe(seen);
    expect(seenBefore(rememberSeen(seen, 'flood', prints('g', 1)), 'flood')).toEqual(seenBefore(seen, 'flood'));
    expect(rememberSeen(seen, 'flood', prints('f', 2))).toBe(seen);
  });

  it('should stay bounded', () => {
    let seen: readonly SeenRun[] = [];
    for (let i = 0; i < MOST_SEEN_RUNS + 5; i++) seen = rememberSeen(seen, `seed ${i}`, prints(`${i}-`, MOST_SEEN_PRINTS * 2));
    expect(seen).toHaveLength(MOST_SEEN_RUNS);
    expect(seen.every((run) => run.prints.length === MOST_SEEN_PRINTS)).toBe(true);
    expect(seen.at(-1)!.seed).toBe(`seed ${MOST_SEEN_RUNS + 4}`);
  });
});
