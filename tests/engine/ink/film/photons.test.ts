import { describe, expect, it } from 'vitest';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { GEOMETRIES, USUAL_SURFACE } from '../../../../src/engine/ink/film/printing.ts';
import { choices } from '../../../helpers/noise.ts';

interface Print {
  films: { kx: number; sx: number }[];
  /** Reflectance of the paper inside the surface. */
  paper: number;
  k1: number;
  k2: number;
}

/**
 * Light counted photon by photon: each goes up or down, is absorbed at the rate K and turned about at the
 * rate S (what Kubelka and Munk's two streams mean), thrown back by the paper, and by the surface from inside.
 * No formula of films or surfaces is used.
 */
function photons({ films, paper, k1, k2 }: Print, count: number, uniform: () => number): number {
  let out = 0;
  for (let i = 0; i < count; i++) {
    if (uniform() < k1) {
      out++;
      continue;
    }
    // Counted from the top: film at the end of the list lies there.
    let film = films.length - 1;
    let depth = 0;
    let down = true;
    for (;;) {
      if (film < 0) {
        if (uniform() >= paper) break;
        down = false;
        film = 0;
        depth = 1;
      } else if (film === films.length) {
        if (uniform() >= k2) {
          out++;
          break;
        }
        down = true;
        film = films.length - 1;
        depth = 0;
      }
      if (films.length === 0) {
        film = down ? -1 : 0;
        if (!down) film = films.length;
        continue;
      }
      const { kx, sx } = films[film]!;
      const way = -Math.log(1 - uniform()) / (kx + sx);
      const room = down ? 1 - depth : depth;
      if (way >= room) {
        film += down ? -1 : 1;
        depth = down ? 0 : 1;
        continue;
      }
      depth += down ? way : -way;
      if (uniform() < kx / (kx + sx)) break;
      down = !down;
    }
  }
  return out / count;
}

/** Fresnel's reflectance of unpolarised light that meets a surface at an angle, from index 1 to n. */
function fresnel(angle: number, n: number): number {
  const sine = Math.sin(angle) / n;
  if (sine >= 1) return 1;
  const [ci, ct] = [Math.cos(angle), Math.sqrt(1 - sine * sine)];
  const s = (ci - n * ct) / (ci + n * ct);
  const p = (n * ci - ct) / (n * ci + ct);
  return (s * s + p * p) / 2;
}

/** The same for light from all directions: ∫ F(θ) sin 2θ dθ. */
function diffuse(n: number): number {
  const steps = 200_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const angle = ((i + 0.5) / steps) * (Math.PI / 2);
    sum += fresnel(angle, n) * Math.sin(2 * angle);
  }
  return (sum * (Math.PI / 2)) / steps;
}

describe('films with a surface', () => {
  it('should reflect what photons do, within 1 %', () => {
    const { uniform } = choices(42);
    let most = 0;
    for (let each = 0; each < 24; each++) {
      const films = Array.from({ length: 1 + (each % 4) }, () => ({ kx: 0.02 + 1.2 * uniform() ** 2, sx: 0.01 + 1.5 * uniform() ** 2 }));
      // Every way of measuring that can be chosen, then surfaces of any kind.
      const { surface } = GEOMETRIES[each] ?? { surface: { k1: 0.05 * uniform(), k2: 0.7 * uniform() } };
      const print: Print = { films, paper: 0.2 + 0.7 * uniform(), ...surface };
      const { k1, k2, paper } = print;
      const seen = k1 + ((1 - k1) * (1 - k2) * paper) / (1 - k2 * paper);
      const [shown] = stackReflectance(
        films.map(({ kx, sx }) => ({ kx: [kx], sx: [sx] })),
        [seen],
        { surface: { k1, k2 } },
      );
      most = Math.max(most, Math.abs(shown! - photons(print, 60_000, uniform)));
    }
    expect(GEOMETRIES.map(({ id }) => id)).toEqual(['45-0', 'sphere', 'sphere-gloss', 'none']);
    expect(most).toBeLessThan(0.01);
  });

  it('should have the surfaces that Fresnel gives paints of index 1.5', () => {
    // Judd (1942), J. Res. Natl. Bur. Stand. 29, 329, table of n = 1.50: 0.0918 from outside, 0.5963 from inside (from memory).
    expect(diffuse(1.5)).toBeCloseTo(0.0918, 3);
    expect(diffuse(1 / 1.5)).toBeCloseTo(0.5963, 3);
    const gloss = GEOMETRIES.find(({ id }) => id === 'sphere-gloss')!;
    expect(gloss.surface.k1).toBeCloseTo(fresnel(0, 1.5), 6);
    // Real prints are said to lie between 0.4 and a smooth surface's own.
    for (const { id, surface } of GEOMETRIES) if (id !== 'none') expect(surface.k2).toBeLessThan(diffuse(1 / 1.5));
    expect(USUAL_SURFACE.k2).toBeGreaterThanOrEqual(0.4);
  });
});
