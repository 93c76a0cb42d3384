import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import type { Lab } from '../../../src/engine/colour/lab.ts';
import { type ExpectedColour, expectedError } from '../../../src/engine/ink/certainty/expected-error.ts';
import { inkCurvesOn } from '../../../src/engine/ink/characterise/characterise.ts';
import { guessInk } from '../../../src/engine/ink/characterise/guess.ts';
import { curveFromColour, nearestPossible } from '../../../src/engine/ink/film/curves.ts';
import type { Ink, InkBasis } from '../../../src/engine/ink/types.ts';
import { ink } from '../../engine/order/drawer.ts';
import published from '../colour/process-overprints.json';

type PublishedSet = Record<string, Lab>;

export const SETS = Object.values(published.sets) as unknown as PublishedSet[];
/** As new projects begin; offset prints have less. */
const PRINTING = { surface: { k1: 0, k2: 0.5 }, trapping: { factor: 0.85 } };

export const mean = (list: readonly number[]): number => list.reduce((sum, value) => sum + value, 0) / list.length;

/** Three inks of a set as they are typed over the set's paper and its black, or guessed transparent. */
function inksOf(set: PublishedSet, basis: InkBasis): Record<string, Ink> {
  const white = curveFromColour(nearestPossible(set['W']!));
  const black = curveFromColour(nearestPossible(set['K']!));
  const grounds = { white, black, surface: PRINTING.surface };
  return Object.fromEntries(
    ['C', 'M', 'Y'].map((id) => {
      const { kx, sx } =
        basis === 'guess'
          ? guessInk(nearestPossible(set[id]!), 'transparent', grounds)
          : inkCurvesOn(nearestPossible(set[id]!), set[`${id}K`]!, grounds);
      return [
        id,
        {
          ...ink(
            id,
            (band) => kx[band]!,
            (band) => sx[band]!,
          ),
          basis,
        },
      ];
    }),
  );
}

/** What a predicted overprint is expected to miss by, and what it does, ΔE00. */
interface TypedMiss {
  /** Place of the set. */
  set: number;
  films: number;
  expected: number;
  real: number;
  parts: ExpectedColour['parts'];
}

/** Overprints of C, M and Y of all sets, predicted from inks known in this way. */
export function typedMisses(basis: InkBasis): TypedMiss[] {
  return SETS.flatMap((set, place) => {
    const paper = { reflectance: [...curveFromColour(nearestPossible(set['W']!))] };
    const inks = inksOf(set, basis);
    return ['CM', 'CY', 'MY', 'CMY'].map((key): TypedMiss => {
      const { lab, deltaE, parts } = expectedError(
        [...key].map((id) => ({ ink: inks[id]! })),
        { paper, ...PRINTING },
      );
      return { set: place, films: key.length, expected: deltaE, real: deltaE2000(lab, set[key]!), parts };
    });
  });
}

/**
 * Each set judged by the five others: what is expected is scaled to what those really miss, and held
 * against what the sixth does.
 * @returns for each set the scale and the mean expected and real misses, ΔE00
 */
export function leftOutSets(misses: readonly TypedMiss[]): { scale: number; expected: number; real: number; within: number }[] {
  return SETS.map((_, place) => {
    const others = misses.filter(({ set }) => set !== place);
    const own = misses.filter(({ set }) => set === place);
    const scale = mean(others.map(({ real }) => real)) / mean(others.map(({ expected }) => expected));
    return {
      scale,
      expected: scale * mean(own.map(({ expected }) => expected)),
      real: mean(own.map(({ real }) => real)),
      within: own.filter(({ expected, real }) => real < 2 * scale * expected).length,
    };
  });
}
