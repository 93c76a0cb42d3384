import { describe, expect, it } from 'vitest';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import type { StudioLoad } from '../../../src/workers/api/engine-api.ts';
import { KnownStudios } from '../../../src/workers/client/known-studios.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer } = smallProject();

/** A worker that only notes what it gets. */
function notedWorker() {
  const loads: StudioLoad[] = [];
  const dropped: number[] = [];
  const studios = new KnownStudios({
    loadStudio: (load) => loads.push(load),
    dropStudios: (keys) => dropped.push(...keys),
  });
  return { studios, loads, dropped };
}

describe('KnownStudios', () => {
  it('should hand over a studio once', () => {
    const { studios, loads } = notedWorker();
    const key = studios.key(drawer);
    expect(studios.key(drawer)).toBe(key);
    expect(loads).toEqual([{ key, studio: drawer, like: null }]);
  });

  it('should leave out shapes and screens that the worker has from another', () => {
    const { studios, loads } = notedWorker();
    const key = studios.key(drawer);
    const gained: Studio = { ...drawer, strokeGain: 0.9 };
    const other = studios.key(gained);
    expect(other).not.toBe(key);
    expect(loads[1]).toEqual({ key: other, studio: { inks: drawer.inks, paper: drawer.paper, strokeGain: 0.9 }, like: key });
  });

  it('should name a studio alike for two workers, and hand it over to each', () => {
    const [one, two] = [notedWorker(), notedWorker()];
    expect(one.studios.key(drawer)).toBe(two.studios.key(drawer));
    expect([one.loads.length, two.loads.length]).toEqual([1, 1]);
  });

  it('should let go of those used longest ago, and hand them over again', () => {
    const { studios, loads, dropped } = notedWorker();
    const first = { ...drawer };
    const second = { ...drawer };
    const [firstKey, secondKey] = [studios.key(first), studios.key(second)];
    for (let more = 0; more < 90; more++) {
      studios.key({ ...drawer });
      // Used again and again, so it stays.
      studios.key(first);
    }
    expect(dropped).toContain(secondKey);
    expect(dropped).not.toContain(firstKey);
    const before = loads.length;
    expect(studios.key(second)).toBe(secondKey);
    expect(loads.length).toBe(before + 1);
  });
});
