import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labD50 } from '../../../src/engine/colour/lab.ts';
import { linearSrgbFromReflectance } from '../../../src/engine/colour/srgb.ts';
import { stackReflectance } from '../../../src/engine/ink/film/film.ts';
import { filmThickness } from '../../../src/engine/ink/film/thickness.ts';
import { cellLab, colourCells, createCellColours, stateColours } from '../../../src/engine/stack/appearance.ts';
import { buildCellMap } from '../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../src/engine/stack/layers.ts';
import { placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import type { CellMap, Pull } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { PAPER, blobStack, numbersFrom } from './fixtures.ts';

const GRID = { widthMm: PAPER.widthMm, heightMm: PAPER.heightMm, rows: 64 };
const mapOf = (studio: Studio, pulls: Pull[]): CellMap => buildCellMap(placedSpans({ pulls }, studio, GRID), GRID);

/** The reflectance of a cell the long way: the covering pulls' films through the public stack function. */
function cellReflectance(map: CellMap, cell: number, base: Pull[], pulls: Pull[], studio: Studio): Float64Array {
  const films = pulls
    .filter((pull) => {
      const bit = base.findIndex(({ id }) => id === pull.id);
      return ((map.cover[cell * map.words + (bit >> 5)]! >>> (bit & 31)) & 1) === 1;
    })
    .map((pull) => {
      const ink = studio.inks.find(({ id }) => id === pull.ink)!;
      const thickness = filmThickness(pull.strokes, studio.strokeGain);
      return { kx: ink.kx.map((k) => k * thickness), sx: ink.sx.map((s) => s * thickness) };
    });
  return stackReflectance(films, PAPER.reflectance);
}

function shuffled(pulls: Pull[], next: () => number): Pull[] {
  return pulls
    .map((pull) => ({ pull: { ...pull, ink: `ink${Math.floor(next() * 8)}`, strokes: 1 + Math.floor(next() * 3) }, key: next() }))
    .sort((a, b) => a.key - b.key)
    .map(({ pull }) => pull);
}

describe('colourCells and cellLab', () => {
  it('should equal the film-by-film path for random stacks, orders and leavings-out', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 45 }), fc.integer(), fc.boolean(), (count, seed, relative) => {
        const { studio, pulls } = blobStack(`colour ${seed}`, count);
        const next = numbersFrom(`order ${seed}`);
        const map = mapOf(studio, pulls);
        const variant = shuffled(pulls, next).filter(() => next() < 0.9);
        const layers = stackLayers({ pulls: variant }, studio, { pulls });
        const colours = colourCells(map, layers, PAPER.reflectance, undefined, relative, true);
        const lab = cellLab(map, layers, PAPER.reflectance);
        const white = relative ? linearSrgbFromReflectance(PAPER.reflectance, new Float64Array(3)) : [1, 1, 1];
        for (let cell = 0; cell < map.cells; cell++) {
          const reflectance = cellReflectance(map, cell, pulls, variant, studio);
          const rgb = linearSrgbFromReflectance(reflectance, new Float64Array(3));
          const expected = labD50(reflectance);
          for (let i = 0; i < 3; i++) {
            const want = Math.min(1, Math.max(0, rgb[i]! / white[i]!));
            expect(Math.abs(colours.linear[cell * 3 + i]! - want)).toBeLessThan(1e-9);
            expect(Math.abs(lab[cell * 3 + i]! - expected[i]!)).toBeLessThan(1e-9);
            // sRGB by its formula (IEC 61966-2-1), rounded.
            const encoded = want <= 0.0031308 ? 12.92 * want : 1.055 * want ** (1 / 2.4) - 0.055;
            expect(Math.abs(((colours.packed[cell]! >>> (8 * i)) & 255) - encoded * 255)).toBeLessThan(0.5001);
          }
          expect(colours.packed[cell]! >>> 24).toBe(255);
        }
      }),
      { seed: 3, numRuns: 20 },
    );
  });

  it('should give a reorder on the same map the colours of a map built for it', () => {
    const { studio, pulls } = blobStack('reorder', 40);
    const map = mapOf(studio, pulls);
    const variant = shuffled(pulls, numbersFrom('new order'));
    const other = mapOf(studio, variant);
    const a = cellLab(map, stackLayers({ pulls: variant }, studio, { pulls }), PAPER.reflectance);
    const b = cellLab(other, stackLayers({ pulls: variant }, studio), PAPER.reflectance);
    expect(other.runEndMm).toEqual(map.runEndMm);
    map.runCell.forEach((cell, run) => {
      for (let i = 0; i < 3; i++) expect(Math.abs(a[cell * 3 + i]! - b[other.runCell[run]! * 3 + i]!)).toBeLessThan(1e-9);
    });
  });

  it('should show bare paper as white when relative and as it is when not', () => {
    const { studio, pulls } = blobStack('paper', 3);
    const map = mapOf(studio, pulls);
    expect(colourCells(map, [], PAPER.reflectance).packed[0]).toBe(0xffffffff);
    expect(colourCells(map, [], PAPER.reflectance, createCellColours(), false).packed[0]).not.toBe(0xffffffff);
  });

  it('should refuse a paper with another number of bands', () => {
    const { studio, pulls } = blobStack('bands', 2);
    expect(() => colourCells(mapOf(studio, pulls), [], [0.5, 0.5])).toThrow(/2 bands; 36/);
  });
});

describe('stateColours', () => {
  it('should give after k pulls the colours of the first k layers', () => {
    const { studio, pulls } = blobStack('states', 12);
    const map = mapOf(studio, pulls);
    const layers = stackLayers({ pulls }, studio);
    const states = stateColours(map, layers, PAPER.reflectance);
    expect(states).toHaveLength(13);
    states.forEach((state, k) => {
      const alone = colourCells(map, layers.slice(0, k), PAPER.reflectance);
      for (let i = 0; i < map.cells * 3; i++) expect(Math.abs(state.linear[i]! - alone.linear[i]!)).toBeLessThan(1e-9);
      expect(state.packed.slice(0, map.cells)).toEqual(alone.packed.slice(0, map.cells));
    });
  });
});

describe('stackLayers', () => {
  it('should make a film as thick as the mesh of its screen carries', () => {
    const { studio, pulls } = blobStack('meshes', 4);
    const meshed = {
      ...studio,
      inks: studio.inks.map((ink) => ({ ...ink, mesh: { threadsPerCm: 90, threadUm: 48 } })),
      screens: studio.screens.map((screen, i) => ({
        ...screen,
        mesh: { threadsPerCm: [43, 90, 120, 61][i]!, threadUm: [80, 48, 34, 64][i]! },
      })),
    };
    // Wet film by hand, (1 − n·d)² · 1.55 d; 43-80 against 90-48 is 53.4 against 24.0 cm³/m².
    const volume = (n: number, d: number): number => (1 - (n * d) / 1e4) ** 2 * 1.55 * d;
    expect(volume(43, 80)).toBeCloseTo(53.4, 1);
    expect(volume(90, 48)).toBeCloseTo(24, 1);
    stackLayers({ pulls }, meshed).forEach(({ film }, i) => {
      const { threadsPerCm, threadUm } = meshed.screens[i]!.mesh;
      const thickness = filmThickness(pulls[i]!.strokes, studio.strokeGain) * (volume(threadsPerCm, threadUm) / volume(90, 48));
      const ink = studio.inks.find(({ id }) => id === pulls[i]!.ink)!;
      const shown = stackReflectance([{ kx: ink.kx.map((k) => k * thickness), sx: ink.sx.map((s) => s * thickness) }], PAPER.reflectance);
      shown.forEach((r, band) => {
        const g = PAPER.reflectance[band]!;
        expect((film.q[band]! * g + film.r0[band]!) / (1 - film.r0[band]! * g)).toBeCloseTo(r, 12);
      });
    });
  });

  it('should name the pull and ink that cannot be printed', () => {
    const { studio, pulls } = blobStack('bad layers', 3);
    const change = (more: Partial<Pull>): { pulls: Pull[] } => ({ pulls: [pulls[0]!, { ...pulls[1]!, ...more }] });
    expect(() => stackLayers(change({ ink: 'gone' }), studio)).toThrow(/Pull 2 uses the ink 'gone'/);
    const elsewhere = { ...studio, screens: [studio.screens[0]!] };
    expect(() => stackLayers({ pulls }, elsewhere)).toThrow(/Pull 2 uses the screen 's1'/);
    for (const strokes of [0, -1, 1.5, NaN]) expect(() => stackLayers(change({ strokes }), studio)).toThrow(/whole number/);
    expect(() => stackLayers(change({ dxMm: 1 }), studio, { pulls })).toThrow(/Pull 2 .* build the map again/);
    const short = { ...studio, inks: studio.inks.map((ink) => ({ ...ink, kx: [1] })) };
    expect(() => stackLayers({ pulls }, short)).toThrow(/1 bands; 36/);
    const bad = { ...studio, inks: studio.inks.map((ink) => ({ ...ink, kx: ink.kx.map(() => NaN) })) };
    expect(() => stackLayers({ pulls }, bad)).toThrow(/0 or more and finite; found NaN/);
  });
});
