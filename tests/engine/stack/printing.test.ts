import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { labD50 } from '../../../src/engine/colour/lab.ts';
import { stackReflectance } from '../../../src/engine/ink/film/film.ts';
import { cellLab, colourCells, stateColours } from '../../../src/engine/stack/appearance.ts';
import { buildCellMap } from '../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../src/engine/stack/layers.ts';
import { placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { ink, pull, rectDrawer } from '../order/drawer.ts';

type Printing = Pick<Studio, 'surface' | 'trapping'>;

/**
 * One film after the other in one band, by the textbook's hyperbolic form and Saunderson's bounces.
 * Sources: Kubelka (1948), J. Opt. Soc. Am. 38(5), 448–457; Saunderson (1942), ibid. 32(12), 727–736.
 */
function filmByFilm(films: readonly { id: string; k: number; s: number }[], paper: number, { surface, trapping }: Printing): number {
  const { k1, k2 } = surface ?? { k1: 0, k2: 0 };
  let r = (paper - k1) / (1 - k1 - k2 + k2 * paper);
  films.forEach(({ id, k, s }, i) => {
    const below = films[i - 1]?.id;
    const pair = trapping?.pairs?.find(({ under, over }) => under === below && over === id)?.factor;
    const x = below === undefined ? 1 : (pair ?? trapping?.factor ?? 1);
    const a = 1 + k / s;
    const b = Math.sqrt(a * a - 1);
    const coth = 1 / Math.tanh(b * s * x);
    r = (1 - r * (a - b * coth)) / (a - r + b * coth);
  });
  return k1 + ((1 - k1) * (1 - k2) * r) / (1 - k2 * r);
}

const CASES: [string, (inks: readonly string[]) => Printing][] = [
  ['a surface', () => ({ surface: { k1: 0.04, k2: 0.6 } })],
  ['trapping', () => ({ trapping: { factor: 0.7 } })],
  ['both', () => ({ surface: { k1: 0, k2: 0.5 }, trapping: { factor: 1.1 } })],
  [
    'pairs of inks',
    (inks) => ({
      surface: { k1: 0.01, k2: 0.4 },
      trapping: { factor: 0.9, pairs: inks.slice(1).map((over, i) => ({ under: inks[i]!, over, factor: 0.4 + 0.05 * i })) },
    }),
  ],
];

describe('cells under a surface and with trapping', () => {
  it.each(CASES)('should show what one film after the other gives: %s', (_, printing) => {
    const random = randomFrom('printing');
    for (let stack = 0; stack < 20; stack++) {
      const n = 1 + random.int(9);
      const rects = Array.from({ length: n }, (): [number, number, number, number] => [
        random.int(120),
        random.int(60),
        30 + random.int(80),
        20 + random.int(60),
      ]);
      const inks = rects.map((_none, i) => {
        const [at, strength, s] = [random.int(36), 0.1 + random.int(20) / 10, 0.01 + random.int(50) / 100];
        return ink(
          `ink${i}`,
          (band) => 0.02 + strength * Math.exp(-(((band - at) / 8) ** 2)),
          () => s,
        );
      });
      const studio: Studio = { ...rectDrawer(rects), inks, ...printing(inks.map(({ id }) => id)) };
      const pulls = inks.map((each, i) => pull(i, each.id));
      const grid = { widthMm: 200, heightMm: 100, rows: 100 };
      const map = buildCellMap(placedSpans({ pulls }, studio, grid), grid);
      const layers = stackLayers({ pulls }, studio);
      const lab = cellLab(map, layers, studio.paper.reflectance);
      const states = stateColours(map, layers, studio.paper.reflectance, undefined, false);
      const whole = colourCells(map, layers, studio.paper.reflectance, undefined, false);
      for (let cell = 0; cell < map.cells; cell++) {
        const here = inks.filter((_none, i) => ((map.cover[cell * map.words]! >>> i) & 1) === 1);
        const wanted = labD50(
          studio.paper.reflectance.map((paper, band) =>
            filmByFilm(
              here.map(({ id, kx, sx }) => ({ id, k: kx[band]!, s: sx[band]! })),
              paper,
              studio,
            ),
          ),
        );
        wanted.forEach((value, i) => expect(lab[cell * 3 + i]!).toBeCloseTo(value, 8));
        labD50(stackReflectance(here, studio.paper.reflectance, studio)).forEach((value, i) => expect(value).toBeCloseTo(wanted[i]!, 8));
        for (let i = 0; i < 3; i++) expect(states[n]!.linear[cell * 3 + i]!).toBeCloseTo(whole.linear[cell * 3 + i]!, 9);
      }
    }
  });

  it('should be the picture from before to the digit where k1, k2 are 0 and trapping is 1', () => {
    const studio = rectDrawer([
      [0, 0, 120, 80],
      [40, 20, 120, 70],
      [20, 10, 100, 60],
    ]);
    const pulls = [pull(0, 'rust'), pull(1, 'foam'), pull(2, 'dusk')];
    const grid = { widthMm: 200, heightMm: 100, rows: 50 };
    const map = buildCellMap(placedSpans({ pulls }, studio, grid), grid);
    const show = (printing: Printing) => [...cellLab(map, stackLayers({ pulls }, { ...studio, ...printing }), studio.paper.reflectance)];
    expect(show({ surface: { k1: 0, k2: 0 }, trapping: { factor: 1 } })).toEqual(show({}));
  });
});
