import { describe, expect, it } from 'vitest';
import type { FilmOffer } from '../../../../src/components/ui/films/film-offers.ts';
import { usualTicks } from '../../../../src/components/ui/films/screen-ticks.ts';

describe('usualTicks', () => {
  const offers = (...states: FilmOffer['state'][]) => states.map((state, i) => ({ id: `s${i}`, state }) as FilmOffer);

  it('should be the screens on the prep list, and all of them without one', () => {
    expect([...usualTicks(offers('made', 'to make', 'drawn', 'film made', 'to make'))]).toEqual(['s1', 's4']);
    expect([...usualTicks(offers('made', 'drawn'))]).toEqual(['s0', 's1']);
    expect([...usualTicks([])]).toEqual([]);
  });
});
