import { expect, it } from 'vitest';
import { Describer, descriptorDistance } from '../../../../src/engine/explore/look/descriptor.ts';
import { explore } from '../../../../src/engine/explore/search/explorer.ts';
import { Finder } from '../../../../src/engine/explore/search/finder.ts';
import { smallProject } from '../../../helpers/small-project.ts';

/** Candidates from which the first print is taken. */
const FIRST = 12;

it('should hang the candidate first that looks least like the base stack', () => {
  const { drawer, bench, explore: settings } = smallProject();
  let early = 0;
  for (const seed of ['ebb', 'flood', 'neap', 'spring']) {
    const input = { drawer, bench, explore: { ...settings, seed, count: 1 } };
    const finder = new Finder(input);
    const describer = new Describer(drawer);
    const base = describer.describe(bench);
    const candidates = [...new Map(Array.from({ length: FIRST }, (_, i) => finder.draw(i, 0)!).map((each) => [each.key, each])).values()];
    expect(candidates).toHaveLength(FIRST);
    const away = candidates.map(({ pulls }) => descriptorDistance(describer.describe(pulls), base));
    const [first] = [...explore(input, { seed, count: 1 })];
    const taken = candidates.findIndex(({ key }) => key === first!.key);
    expect(away[taken]).toBe(Math.max(...away));
    if (taken === 0) early++;
  }
  // Not just the one that came first.
  expect(early).toBeLessThan(4);
});
