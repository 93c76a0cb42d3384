import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import type { TasteChoice } from '../../../../src/engine/explore/taste/choices.ts';
import { claimsOf } from '../../../../src/engine/explore/taste/claims.ts';
import { learnTaste } from '../../../../src/engine/explore/taste/taste.ts';
import { TRAITS } from '../../../../src/engine/explore/taste/traits.ts';
import { all, answers, prints, standard, together, VARYING, worths } from './simulated-choices.ts';

/** Simulated runs; more of them for figures to be told. */
const RUNS = process.env['TASTE_FIGURES'] === undefined ? 20 : 200;
const RUNS_BY_CHANCE = process.env['TASTE_FIGURES'] === undefined ? 40 : 300;

describe('what is told of a taste', () => {
  it('should be sure of something in few of many runs of choices made by chance', () => {
    let [sure, said] = [0, 0];
    for (let run = 0; run < RUNS_BY_CHANCE; run++) {
      const choices = answers(
        prints.map(() => 0),
        all,
        randomFrom(`chance ${run}`),
        20,
      );
      const claims = claimsOf(learnTaste(choices, prints)!);
      if (claims.some((claim) => claim.sure)) sure++;
      if (claims.length > 0) said++;
    }
    if (process.env['TASTE_FIGURES'] !== undefined) console.log('claims by chance', { sure, said }, 'of', RUNS_BY_CHANCE);
    expect(sure).toBeLessThanOrEqual(RUNS_BY_CHANCE / 20);
    expect(said).toBeLessThanOrEqual(0.35 * RUNS_BY_CHANCE);
  });

  it.each([
    // Least shares of the runs in which a trait that is chosen by, or one that goes with it, is told of at all, and is told as known.
    ['of one trait, always the same way', 1, Infinity, 0.95, 0.9],
    ['of one trait, four of five times', 1, 2, 0.7, 0.45],
    ['of two traits, always the same way', 2, Infinity, 0.7, 0.4],
  ])('should tell after twenty answers of a taste %s', (name, count, logits, leastTold, leastSure) => {
    let [told, sure] = [0, 0];
    for (let run = 0; run < RUNS; run++) {
      const random = randomFrom(`${name} ${run}`);
      const some = random.shuffle(VARYING).slice(0, count);
      const signs = some.map(() => (random.chance(1, 2) ? 1 : -1));
      const worth = worths(standard.map((row) => some.reduce((sum, trait, i) => sum + row[trait]! * signs[i]!, 0)));
      const choices = answers(
        worth.map((each) => (logits === Infinity ? 1e6 : 1) * each),
        all,
        random,
        20,
      );
      const right = claimsOf(learnTaste(choices, prints)!).filter(({ trait }) =>
        some.some((each) => Math.abs(together(each, TRAITS.indexOf(trait))) > 0.5),
      );
      if (right.length > 0) told++;
      if (right.some((claim) => claim.sure)) sure++;
    }
    if (process.env['TASTE_FIGURES'] !== undefined) console.log(name, { told, sure }, 'of', RUNS);
    expect(told).toBeGreaterThanOrEqual(leastTold * RUNS);
    expect(sure).toBeGreaterThanOrEqual(leastSure * RUNS);
  });

  it('should tell which way a trait is chosen by, and that it is its middle', () => {
    const trait = TRAITS.indexOf('light');
    for (const [way, value] of [
      ['more', (z: number) => z],
      ['less', (z: number) => -z],
      ['middle', (z: number) => -Math.abs(z)],
    ] as const) {
      const worth = standard.map((row) => 1e6 * value(row[trait]!));
      const [first] = claimsOf(learnTaste(answers(worth, all, randomFrom(`way ${way}`), 40), prints)!);
      expect(first).toMatchObject({ trait: 'light', way, sure: true });
    }
  });

  it('should count a print once that was selected, then pinned, then kept', () => {
    const few = answers(worths(standard.map((row) => row[TRAITS.indexOf('light')]!)), all, randomFrom('thrice'), 8);
    const claims = (ways: readonly TasteChoice['way'][]) =>
      claimsOf(
        learnTaste(
          few.flatMap((choice) => ways.map((way): TasteChoice => ({ ...choice, way }))),
          prints,
        )!,
      );
    expect(claims(['selected', 'pinned', 'kept'])).toEqual(claims(['kept']));
  });
});
