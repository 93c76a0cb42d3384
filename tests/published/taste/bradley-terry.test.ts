import { describe, expect, it } from 'vitest';
import { fitPairs, varianceOf } from '../../../src/engine/explore/taste/logistic.ts';

/**
 * Games won by the team of the row from that of the column in a season of seven teams, 13 games each two.
 * Source, table and estimates: A. Agresti, "Categorical Data Analysis", 2nd edition, section 10.6 (baseball, season of
 * 1987), with the estimates against the last team and their standard errors as fitted to four digits by a package of
 * R for such models; both from memory.
 */
const WON = [
  [0, 7, 9, 7, 7, 9, 11],
  [6, 0, 7, 5, 11, 9, 9],
  [4, 6, 0, 7, 7, 8, 12],
  [6, 8, 6, 0, 6, 7, 10],
  [6, 2, 6, 7, 0, 7, 12],
  [4, 4, 5, 6, 6, 0, 6],
  [2, 4, 1, 3, 1, 7, 0],
];
const ABILITY = [1.5814, 1.4364, 1.2945, 1.2476, 1.1077, 0.6839];
const ERROR = [0.3433, 0.3396, 0.3367, 0.3359, 0.3339, 0.3319];

/** Abilities of the first six against the seventh, which is 0. */
function fitted(ridge: number) {
  const size = WON.length - 1;
  const games = WON.flatMap((row, winner) => row.map((times, loser) => ({ winner, loser, times }))).filter(({ times }) => times > 0);
  const differences = Float64Array.from(
    games.flatMap(({ winner, loser }) => Array.from({ length: size }, (_, i) => Number(i === winner) - Number(i === loser))),
  );
  const counts = Float64Array.from(games, ({ times }) => times);
  return fitPairs({ size, differences, counts }, new Float64Array(size).fill(ridge))!;
}

describe('a pairwise logistic fit', () => {
  it('should give the published abilities and standard errors of a season as the ridge goes to 0', () => {
    const fit = fitted(1e-12);
    expect([...fit.weights].map((weight) => weight.toFixed(4))).toEqual(ABILITY.map((ability) => ability.toFixed(4)));
    ERROR.forEach((error, i) => {
      const one = new Float64Array(ERROR.length);
      one[i] = 1;
      expect(Math.sqrt(varianceOf(fit, one)), `team ${i}`).toBeCloseTo(error, 3.9);
    });
  });

  it('should draw abilities together with a ridge, and never past one another into doubt', () => {
    const [loose, tight] = [fitted(1e-12), fitted(2)];
    expect(Math.max(...tight.weights)).toBeLessThan(0.8 * Math.max(...loose.weights));
  });

  it('should have no gradient left at the weights it gives', () => {
    // As many games are won as the weights say: the condition of a maximum, worked out here from the chances alone.
    const abilities = [...fitted(1e-12).weights, 0];
    WON.forEach((row, team) => {
      const won = row.reduce((sum, times) => sum + times, 0);
      const meant = abilities.reduce((sum, ability, other) => {
        if (other === team) return sum;
        return sum + 13 / (1 + Math.exp(ability - abilities[team]!));
      }, 0);
      expect(meant).toBeCloseTo(won, 6);
    });
  });

  it('should say that a trait by which no pair differs is settled by a ridge alone', () => {
    const pairs = { size: 2, differences: Float64Array.from([1, 0, -1, 0]), counts: Float64Array.from([1, 1]) };
    expect(fitPairs(pairs, new Float64Array(2))).toBeNull();
    expect(fitPairs(pairs, Float64Array.from([1, 1]))).not.toBeNull();
  });
});
