import { randomFrom } from '../../base/random.ts';
import { roundTo } from '../../base/units.ts';
import type { Pull } from '../types.ts';

/** Offsets are drawn in whole hundredths of a millimetre. */
const STEPS_PER_MM = 100;

/** What sheets of an edition are drawn from. */
export interface Register {
  /** No pull of any sheet lies farther than this from its place, mm. */
  toleranceMm: number;
  sheets: number;
  seed: string;
}

/**
 * How the sheets of an edition may lie: every pull of every sheet is laid anew, anywhere within a circle of the
 * tolerance about its place, each place of it as likely (a model; common practice, no source).
 * @returns the pulls of each sheet; the same for the same seed
 */
export function outOfRegister(pulls: readonly Pull[], { toleranceMm, sheets, seed }: Register): Pull[][] {
  const random = randomFrom(`out of register ${seed}`);
  const reach = Math.max(0, Math.round(toleranceMm * STEPS_PER_MM));
  const draw = (): [number, number] => {
    for (;;) {
      const [x, y] = [random.int(2 * reach + 1) - reach, random.int(2 * reach + 1) - reach];
      if (x * x + y * y <= reach * reach) return [x / STEPS_PER_MM, y / STEPS_PER_MM];
    }
  };
  return Array.from({ length: sheets }, () =>
    pulls.map((pull) => {
      const [x, y] = draw();
      return { ...pull, dxMm: roundTo(pull.dxMm + x, 2), dyMm: roundTo(pull.dyMm + y, 2) };
    }),
  );
}
