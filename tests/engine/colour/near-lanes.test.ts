import { describe, expect, it } from 'vitest';
import { CodeRoom } from '../../../src/engine/base/code/code-room.ts';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { deltaE2000At } from '../../../src/engine/colour/delta-e.ts';
import { NEAR_ROOM, NearLanes, putColours, STEP } from '../../../src/engine/colour/near-lanes.ts';
import table from '../../published/colour/ciede2000-sharma34.json' with { type: 'json' };

/** Pairs of neighbours all over Lab and beyond, some of them grey, opposite in hue or equal, the second up to `far` away either way. */
function neighbours(seed: string, count: number, far: number): Float64Array {
  const random = randomFrom(seed);
  const at = (least: number, most: number): number => least + ((most - least) * random.int(2 ** 30)) / 2 ** 30;
  const lab = new Float64Array(count * 6);
  for (let i = 0; i < lab.length; i += 6) {
    const wide = i % 24 === 0 ? 2 : 120;
    lab.set([at(-2, 125), at(-wide, wide), at(-wide, wide)], i);
    for (let k = 0; k < 3; k++) lab[i + 3 + k] = lab[i + k]! + at(-far, far);
    if (i % 42 === 0) lab.set([-lab[i + 1]! * at(0, 2), -lab[i + 2]!], i + 4);
    if (i % 54 === 0) lab.fill(0, i + 1, i + 3);
    if (i % 66 === 0) lab.copyWithin(i + 3, i, i + 3);
  }
  return lab;
}

const pairsOf = (count: number): Uint32Array => Uint32Array.from({ length: count * 2 }, (_, i) => i);

const LISTS = ['held', 'open', 'pairs', 'near', 'colours'] as const;
const room = new CodeRoom([...LISTS, 'lab'], () => {});
const lanes = new NearLanes(room);

/** 1 for each pair that is within a difference as lanes find it, 0 for the others. */
function within(lab: Float64Array, pairs: Uint32Array, deltaE: number): number[] {
  const count = pairs.length / 2;
  const lengths = { ...NEAR_ROOM, pairs: (count + STEP) * 2, near: count + STEP, colours: (lab.length / 3) * 4 };
  room.begin();
  const [held, open, pairsAt, near, colours] = LISTS.map((name) => room.intList(name, lengths[name])) as [
    number,
    number,
    ...[number, number, number],
  ];
  const labAt = room.realList('lab', lab.length);
  room.fit();
  room.reals.set(lab, labAt);
  room.words.set(pairs, pairsAt);
  putColours(lab, 0, lab.length / 3, [room.singles, colours]);
  lanes.within({ held, open, pairs: pairsAt, near, lab: labAt, colours }, count, deltaE);
  return [...room.ints.subarray(near, near + count)].map((each) => each & 1);
}

describe('NearLanes', () => {
  // Differences just below and above that of each pair, where single precision cannot decide, and further away, where it may.
  it.each([0.01, 1, 6, 40])('should know what is within a difference as it is without lanes, pairs up to %d apart', (far) => {
    const count = 1501;
    const lab = neighbours(`near ${far}`, count, far);
    const exact = Array.from({ length: count }, (_, i) => deltaE2000At(lab, i * 6, lab, i * 6 + 3));
    const sorted = exact.toSorted((a, b) => a - b);
    for (const deltaE of [0, sorted[300]!, sorted[750]!, sorted[1400]! * (1 - 1e-12), 2, 10]) {
      expect(within(lab, pairsOf(count), deltaE)).toEqual(exact.map((each) => (each <= deltaE ? 1 : 0)));
    }
    for (let i = 0; i < count; i++) {
      const two = lab.subarray(i * 6, i * 6 + 6);
      for (const share of [0.99, 1 - 1e-13, 1, 1.01]) {
        expect(within(two, pairsOf(1), exact[i]! * share)).toEqual([exact[i]! <= exact[i]! * share ? 1 : 0]);
      }
    }
  });

  it('should tell the 34 published differences from ones a hair smaller and larger', () => {
    const lab = Float64Array.from(table.pairs.flatMap((row) => row.slice(0, 6)));
    table.pairs.forEach((row, i) => {
      const pair = Uint32Array.of(i * 2, i * 2 + 1);
      expect(within(lab, pair, row[6]! + table.tolerance)).toEqual([1]);
      expect(within(lab, pair, row[6]! - table.tolerance)).toEqual([0]);
    });
  });
});
