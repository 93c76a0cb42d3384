import { entryAt } from '../../base/at.ts';

/**
 * The pull of a set-up that is tried on the test sheet: that of its lowest sheet, whatever the order in
 * which it lists them, so that time, ink and log mean the same.
 * @param pulls at least one [sheet, pull]
 */
export function testPullOf(pulls: readonly (readonly [number, number])[]): [number, number] {
  const [sheet, pull] = pulls.reduce(
    (least, each) => (each[0] < least[0] || (each[0] === least[0] && each[1] < least[1]) ? each : least),
    entryAt(pulls, 0),
  );
  return [sheet, pull];
}
