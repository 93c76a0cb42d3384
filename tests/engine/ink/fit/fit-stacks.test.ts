import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { filmFactor } from '../../../../src/engine/ink/film/film-factor.ts';
import { fitFilms } from '../../../../src/engine/ink/fit/fit-stacks.ts';
import { fitTargetSteps } from '../../../../src/engine/ink/fit/fit-target.ts';
import { ink } from '../../order/drawer.ts';

interface Press {
  trapping: number;
  k2: number;
}

/** Absorption and scattering of invented inks, per band. */
const INKS: Record<string, [k: (band: number) => number, s: number]> = {
  fern: [(b) => 0.05 + 1.1 * Math.exp(-(((b - 8) / 6) ** 2)) + 0.8 * Math.exp(-(((b - 30) / 6) ** 2)), 0.03],
  rose: [(b) => 0.03 + 1.4 * Math.exp(-(((b - 15) / 5) ** 2)), 0.01],
  straw: [(b) => 0.02 + 1.6 / (1 + Math.exp((b - 11) / 1.5)), 0.05],
};
const PAPER = Array.from({ length: 36 }, (_, band) => 0.7 + (0.15 * band) / 35);

/**
 * What an instrument reads of a stack, by the textbook's hyperbolic forms, without the engine's films.
 * Sources: Kubelka (1948), J. Opt. Soc. Am. 38(5), 448–457; Saunderson (1942), ibid. 32(12), 727–736.
 */
function read(films: readonly string[], { trapping, k2 }: Press, thick = 1): number[] {
  return PAPER.map((paper, band) => {
    let r = paper / (1 - k2 + k2 * paper);
    films.forEach((film, i) => {
      const [absorb, scatter] = INKS[film]!;
      const x = thick * (i === 0 ? 1 : trapping);
      const a = 1 + absorb(band) / scatter;
      const b = Math.sqrt(a * a - 1);
      const coth = 1 / Math.tanh(b * scatter * x);
      r = (1 - r * (a - b * coth)) / (a - r + b * coth);
    });
    return ((1 - k2) * r) / (1 - k2 * r);
  });
}

const TOLD = [['fern'], ['rose'], ['straw'], ['fern', 'rose'], ['rose', 'straw'], ['straw', 'fern'], ['rose', 'fern'], ['fern', 'straw']];
const ASKED = [
  ['straw', 'rose'],
  ['fern', 'rose', 'straw'],
  ['straw', 'rose', 'fern'],
  ['fern', 'fern'],
];

function misses(press: Press, kind: 'lab' | 'reflectance') {
  const reading = (films: readonly string[]) =>
    kind === 'lab' ? { lab: labD50(read(films, press)) } : { reflectance: read(films, press) };
  const fit = fitFilms({ samples: TOLD.map((films) => ({ films, ...reading(films) })), paper: reading([]) });
  return { fit, most: Math.max(...ASKED.map((films) => deltaE2000(fit.predict(films), labD50(read(films, press))))) };
}

describe('fitFilms', () => {
  it('should find trapping and surface again from curves, and predict stacks that were not pulled', () => {
    for (const press of [
      { trapping: 0.7, k2: 0.5 },
      { trapping: 0.9, k2: 0.3 },
      { trapping: 1, k2: 0 },
    ]) {
      const { fit, most } = misses(press, 'reflectance');
      expect(Math.abs(fit.trapping - press.trapping)).toBeLessThan(0.05);
      expect(most).toBeLessThan(1);
      expect(fit.looMean).toBeLessThan(1);
    }
  });

  it('should predict from colours alone', () => {
    const { most } = misses({ trapping: 0.75, k2: 0.5 }, 'lab');
    expect(most).toBeLessThan(3);
  });

  it('should give smooth films, the paper for no films, and the same again', () => {
    const { fit } = misses({ trapping: 0.7, k2: 0.5 }, 'lab');
    expect(deltaE2000(fit.predict([]), labD50(PAPER))).toBeLessThan(0.01);
    expect(Object.keys(fit.films).sort()).toEqual(['fern', 'rose', 'straw']);
    for (const { kx, sx } of Object.values(fit.films)) {
      expect(kx.length + sx.length).toBe(72);
      for (let band = 1; band < 36; band++) {
        expect(kx[band]!).toBeGreaterThan(0);
        expect(Math.abs(Math.log(sx[band]! / sx[band - 1]!))).toBeLessThan(0.2);
      }
    }
    expect(misses({ trapping: 0.7, k2: 0.5 }, 'lab').fit.predict(['fern', 'rose'])).toEqual(fit.predict(['fern', 'rose']));
  });

  it('should leave trapping and surface out where no film lies on a film', () => {
    const samples = [
      { films: ['a'], lab: [50, 40, 10] as Lab },
      { films: ['b'], lab: [70, -20, 40] as Lab },
    ];
    const fit = fitFilms({ samples, paper: { lab: [93, 0, 2] } });
    expect(fit.trapping).toBeCloseTo(1, 3);
    expect(fit.k2).toBeCloseTo(0, 3);
    expect(fit.looMean).toBeNaN();
  });

  it('should refuse what cannot be fitted in one sentence', () => {
    const a = { films: ['a'], lab: [50, 40, 10] as Lab };
    const b = { films: ['b'], lab: [70, -20, 40] as Lab };
    const paper = { lab: [93, 0, 2] as Lab };
    const cases: [Parameters<typeof fitFilms>[0], RegExp][] = [
      [{ samples: [a], paper }, /^One square cannot/],
      [{ samples: [a, { films: ['a', 'a'], lab: [30, 30, 5] }], paper }, /^All squares are of one ink, a;/],
      [{ samples: [a, b, { films: ['a'], lab: [80, 0, 0] }], paper }, /^Squares 1 and 3 are both a but differ/],
      [{ samples: [a, { films: [], lab: [90, 0, 0] }], paper }, /^Square 2 names no films/],
      [{ samples: [a, { films: ['b'] }], paper }, /^Square 2 \(b\) has neither/],
      [{ samples: [a, { films: ['b'], lab: [NaN, 0, 0] }], paper }, /^Square 2 \(b\) needs a colour/],
      [{ samples: [a, { films: ['b'], reflectance: [0.5, 0.4] }], paper }, /^Square 2 \(b\) needs 36 bands/],
      [{ samples: [a, b], paper: {} }, /^The paper has neither/],
    ];
    for (const [input, sentence] of cases) expect(() => fitFilms(input)).toThrow(sentence);
    // Overprints lighter than both their films, and darker than black under white.
    const nonsense = [
      { films: ['a', 'b'], lab: [92, 0, 0] as Lab },
      { films: ['b', 'a'], lab: [5, 60, -90] as Lab },
      { films: ['a', 'b', 'a'], lab: [95, -60, 60] as Lab },
    ];
    expect(() => fitFilms({ samples: [a, b, ...nonsense], paper })).toThrow(/^The squares contradict each other, .*\.$/);
    const { fit } = misses({ trapping: 0.8, k2: 0.4 }, 'lab');
    expect(() => fit.predict(['moss'])).toThrow(/^“moss” is in no square; the films are fern, rose, straw\.$/);
  });

  it('should refuse a surface that no print has', () => {
    expect(() => misses({ trapping: 0.85, k2: 0.965 }, 'reflectance')).toThrow(
      /^The surface would throw back 0\.9\d of the light inside, and only 0 to 0\.9 happens on prints; .*\.$/,
    );
  });

  it('should find the film of another mesh', () => {
    // Twice the ink volume, of which only 1.7 films arrive.
    const mesh = { threadsPerCm: 43, threadUm: 80 };
    const own = { threadsPerCm: 90, threadUm: 48 };
    const inks = Object.keys(INKS).map((id) => ({
      ...ink(
        id,
        () => 1,
        () => 0.1,
      ),
      mesh: own,
    }));
    const volume = filmFactor(inks[0]!, mesh);
    const press = { trapping: 0.8, k2: 0.4 };
    const squares = [...TOLD, ['fern'], ['rose']].map((films, i) => {
      const thick = i < TOLD.length ? 1 : 0.85 * volume;
      return {
        films: films.map((id) => ({ ink: id, ...(i < TOLD.length ? {} : { mesh }) })),
        reflectance: read(films, press, thick),
      };
    });
    const run = fitTargetSteps({ squares, inks, paper: { reflectance: read([], press) } });
    let next = run.next();
    while (!next.done) next = run.next();
    expect(next.value.meshes).toHaveLength(1);
    expect(next.value.meshes[0]!.factor).toBeCloseTo(0.85, 1);
    expect(next.value.looDeltaE).toBeLessThan(1);
  });

  it('should refuse trapping that no press has', () => {
    expect(() => misses({ trapping: 0.1, k2: 0 }, 'reflectance')).toThrow(/only 0\.3 to 1\.2 happens on a press/);
  });
});
