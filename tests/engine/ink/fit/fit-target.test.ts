import { describe, expect, it } from 'vitest';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { fitTargetSteps } from '../../../../src/engine/ink/fit/fit-target.ts';
import { targetSquares } from '../../../../src/engine/ink/target/target.ts';
import { choices } from '../../../helpers/noise.ts';

// Covering and transparent inks together; their prints come from the engine's films, so this tests the search alone.
describe('fitTargetSteps', () => {
  it('should find covering inks, trapping and surface from a whole target, and say how far off it is', () => {
    const { gauss } = choices(4);
    const inks = demoInks();
    const real = inks.map((ink) => ({ ...ink, kx: ink.kx.map((k) => 1.35 * k), sx: ink.sx.map((s) => 1.2 * s) }));
    const printing = { surface: { k1: 0, k2: 0.5 }, trapping: { factor: 0.8 } };
    const squares = targetSquares(inks.map(({ id }) => id)).map(({ first, over }) => {
      const films = [first, ...(over === null ? [] : [over])];
      const stack = films.map((id) => real.find((ink) => ink.id === id)!);
      const reflectance = stackReflectance(stack, DEMO_PAPER.reflectance, printing).map((value) => Math.max(0, value + 0.001 * gauss()));
      return { films: films.map((ink) => ({ ink })), reflectance };
    });
    const run = fitTargetSteps({ squares, inks, paper: DEMO_PAPER });
    let next = run.next();
    let share = 0;
    for (; !next.done; next = run.next()) {
      expect(next.value).toBeGreaterThanOrEqual(share);
      share = next.value;
    }
    const { trapping, surface, nowDeltaE, meanDeltaE, looDeltaE } = next.value;
    expect(nowDeltaE).toBeGreaterThan(5);
    expect(meanDeltaE).toBeLessThan(0.5);
    expect(looDeltaE).toBeGreaterThan(meanDeltaE);
    expect(looDeltaE).toBeLessThan(1);
    expect(Math.abs(trapping.factor - 0.8)).toBeLessThan(0.02);
    expect(Math.abs(surface.k2 - 0.5)).toBeLessThan(0.05);
  }, 60_000);
});
