import { describe, expect, it } from 'vitest';
import { changesBetween, changesInShort } from '../../../../src/engine/explore/look/changes.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

const drawer = rectDrawer(Array.from({ length: 12 }, (_, i) => [10 * i, 10, 40, 40] as const));
const base = Array.from({ length: 9 }, (_, i) => pull(i, 'weed'));

function told(change: (pulls: Pull[]) => Pull[]): { sentence: string; touched: string[] } {
  return changesBetween(base, change(base.map((each) => ({ ...each }))), drawer);
}

function swap(pulls: Pull[], a: number, b: number): Pull[] {
  const out = [...pulls];
  [out[a], out[b]] = [out[b]!, out[a]!];
  return out;
}

describe('changesBetween', () => {
  it('should tell a swap, an ink and a screen left out in one sentence', () => {
    const { sentence, touched } = told((pulls) =>
      swap(pulls, 2, 6)
        .map((each) => (each.id === 'p4' ? { ...each, ink: 'rust' } : each))
        .filter(({ id }) => id !== 'p8'),
    );
    expect(sentence).toBe('Pulls 3 and 7 changed places; pull 5 is now rust instead of weed; screen 9 left out.');
    expect(touched.sort()).toEqual(['p2', 'p4', 'p6']);
  });

  it('should count screens where they would make a list too long to read', () => {
    expect(told(() => []).sentence).toBe('9 screens left out.');
    expect(changesBetween([], base, drawer)).toEqual({ sentence: '9 screens brought in.', touched: base.map(({ id }) => id) });
    expect(told((pulls) => pulls.slice(8)).sentence).toBe(
      'Screen 1, screen 2, screen 3, screen 4, screen 5, screen 6, screen 7 and screen 8 left out.',
    );
  });

  it('should tell a pull that moved by itself', () => {
    const moved = told((pulls) => [...pulls.slice(1, 5), pulls[0]!, ...pulls.slice(5)]);
    expect(moved).toEqual({ sentence: 'Pull 1 now goes down after pull 5.', touched: ['p0'] });
    expect(told((pulls) => [...pulls.slice(1), pulls[0]!]).sentence).toBe('Pull 1 now goes down last.');
    expect(told((pulls) => [pulls[8]!, ...pulls.slice(0, 8)]).sentence).toBe('Pull 9 now goes down first.');
  });

  it('should tell shifts, turns, strokes and screens brought in', () => {
    const { sentence, touched } = told((pulls) => [
      { ...pulls[0]!, dxMm: 1.5, dyMm: -0.3 },
      { ...pulls[1]!, turnDeg: 180 },
      { ...pulls[2]!, strokes: 2 },
      ...pulls.slice(3),
      pull(10, 'tar', { id: 'in-s10' }),
    ]);
    expect(sentence).toBe(
      'Pull 1 lies 1.5 mm further right and 0.3 mm higher; pull 2 is turned by 180°; pull 3 has 2 strokes instead of 1; screen 11 brought in, in tar.',
    );
    expect(touched).toEqual(['p0', 'p1', 'p2', 'in-s10']);
  });

  it('should sum up what is too much to tell', () => {
    expect(told((pulls) => pulls.map((each) => ({ ...each, ink: 'tar' }))).sentence).toBe(
      'Pulls 1, 2, 3, 4, 5, 6, 7, 8 and 9 changed ink.',
    );
    expect(told((pulls) => [...pulls].reverse()).sentence).toMatch(/^Pulls 1 and 9 changed places; .*4 and 6 changed places\.$/);
  });

  it('should find pulls again by their screens when ids are others', () => {
    expect(told((pulls) => pulls.map((each) => ({ ...each, id: `x${each.id}` }))).sentence).toBe('Nothing changed.');
    // A screen that was left out and came back is a pull of its own.
    const twice = [...base, pull(0, 'rust', { id: 'echo', dxMm: 2 })];
    expect(changesBetween(base, twice, drawer).sentence).toBe('Screen 1 brought in, in rust.');
  });
});

describe('changesInShort', () => {
  const short = (change: (pulls: Pull[]) => Pull[]): string => changesInShort(base, change(base.map((each) => ({ ...each }))));

  it('should count what changed, kind by kind', () => {
    expect(short((pulls) => pulls)).toBe('nothing changed');
    expect(
      short((pulls) =>
        swap(pulls, 2, 6)
          .map((each, i) => (i < 3 ? { ...each, ink: 'rust', ...(i === 0 ? { dxMm: 3 } : {}) } : each))
          .filter(({ id }) => id !== 'p8'),
      ),
    ).toBe('2 pulls reordered, 3 in another ink, 1 moved, 1 left out');
    expect(short((pulls) => pulls.map((each, i) => (i === 4 ? { ...each, strokes: 2 } : each)))).toBe('1 pull in other strokes');
    expect(short((pulls) => pulls.map((each, i) => (i < 2 ? { ...each, dxMm: 40, turnDeg: 90 * i } : each)))).toBe('2 pulls moved');
    expect(changesInShort([], base)).toBe('9 pulls brought in');
  });
});
