import { describe, expect, it } from 'vitest';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { checkInk } from '../../../../src/engine/ink/characterise/check-ink.ts';
import { demoStocks } from '../../../../src/engine/ink/demo/demo-stocks.ts';
import { filmFactor } from '../../../../src/engine/ink/film/film-factor.ts';
import { swatchReflectance } from '../../../../src/engine/ink/film/swatch.ts';
import { baseOf, letDown, mixInks, printInks, stockInks } from '../../../../src/engine/ink/mix/mix.ts';
import type { Ink } from '../../../../src/engine/ink/types.ts';

function plain(id: string, k: number, s: number, more: Partial<Ink> = {}): Ink {
  return {
    id,
    name: id,
    basis: 'measured',
    overWhite: [50, 0, 0],
    overBlack: [20, 0, 0],
    kx: new Array<number>(36).fill(k),
    sx: new Array<number>(36).fill(s),
    dryMinutes: 20,
    densityGPerCm3: 1,
    ...more,
  };
}

const HEAD = { id: 'm', name: 'mix' };

describe('mixInks', () => {
  it('should add K and S by the volumes that weights and densities give', () => {
    // By hand: 3 g at 1.5 g/cm³ are 2 cm³, 3 g at 1 g/cm³ are 3 cm³: shares 0.4 and 0.6.
    const mix = mixInks(
      [
        { ink: plain('a', 1, 0.5, { densityGPerCm3: 1.5 }), parts: 3 },
        { ink: plain('b', 0.2, 0.1), parts: 3 },
      ],
      HEAD,
    );
    expect(mix.kx[7]).toBeCloseTo(0.4 * 1 + 0.6 * 0.2, 12);
    expect(mix.sx[30]).toBeCloseTo(0.4 * 0.5 + 0.6 * 0.1, 12);
    expect(mix.densityGPerCm3).toBeCloseTo(6 / 5, 12);
    expect(mix.mix).toEqual([
      { ink: 'a', parts: 3 },
      { ink: 'b', parts: 3 },
    ]);
  });

  it('should give an ink mixed with itself as it was', () => {
    const [ink] = demoStocks().slice(3);
    const mix = mixInks(
      [
        { ink: ink!, parts: 2 },
        { ink: ink!, parts: 5 },
      ],
      HEAD,
    );
    mix.kx.forEach((k, band) => expect(k).toBeCloseTo(ink!.kx[band]!, 12));
    expect(mix.mix).toEqual([{ ink: ink!.id, parts: 7 }]);
  });

  it('should bring inks to one mesh before they add', () => {
    // The same ink, its curves found once on a mesh that carries twice as much.
    const thin = plain('thin', 1, 0.2, { mesh: { threadsPerCm: 120, threadUm: 34, statedVolumeCm3PerM2: 10 } });
    const thick = plain('thick', 2, 0.4, { mesh: { threadsPerCm: 61, threadUm: 64, statedVolumeCm3PerM2: 20 } });
    const mix = mixInks(
      [
        { ink: thin, parts: 1 },
        { ink: thick, parts: 3 },
      ],
      HEAD,
    );
    expect(mix.kx[0]).toBeCloseTo(1, 12);
    expect(mix.mesh).toEqual(thin.mesh);
  });

  it('should be trusted as its least trusted ink is and dry like its slowest', () => {
    const mix = mixInks(
      [
        { ink: plain('a', 1, 0), parts: 1 },
        { ink: plain('b', 1, 0, { basis: 'guess', dryMinutes: 45 }), parts: 1 },
        { ink: plain('c', 1, 0, { basis: 'invented' }), parts: 0 },
      ],
      HEAD,
    );
    expect(mix).toMatchObject({ basis: 'guess', dryMinutes: 45 });
  });

  it('should take a mix of mixes apart into stock inks', () => {
    const [a, b, c] = ['a', 'b', 'c'].map((id) => plain(id, 1, 0));
    const half = mixInks(
      [
        { ink: a!, parts: 1 },
        { ink: b!, parts: 3 },
      ],
      { id: 'h', name: 'half' },
    );
    const mix = mixInks(
      [
        { ink: half, parts: 8 },
        { ink: c!, parts: 4 },
        { ink: a!, parts: 1 },
      ],
      HEAD,
    );
    expect(mix.mix).toEqual([
      { ink: 'a', parts: 3 },
      { ink: 'b', parts: 6 },
      { ink: 'c', parts: 4 },
    ]);
  });

  it('should refuse what cannot be weighed', () => {
    expect(() => mixInks([], HEAD)).toThrow('nothing in it');
    expect(() => mixInks([{ ink: plain('a', 1, 0), parts: -1 }], HEAD)).toThrow('-1 parts of a');
    expect(() => mixInks([{ ink: plain('a', 1, 0), parts: Number.NaN }], HEAD)).toThrow('NaN parts of a');
  });
});

describe('letDown', () => {
  const base = plain('base', 0, 0, { role: 'base', stock: true });

  it('should make a film of 1:1 like one of half the thickness over any ground', () => {
    // A base without colour only thins: Beer's law and Kubelka–Munk take K·X and S·X, not K and X.
    const ink = plain('rust', 1.2, 0.3);
    const down = letDown(ink, base, 1);
    for (const ground of [CARD_WHITE, CARD_BLACK]) {
      const let1 = swatchReflectance(down, ground, { strokes: 2, strokeGain: 1 });
      const full = swatchReflectance(ink, ground, { strokes: 1, strokeGain: 1 });
      let1.forEach((r, band) => expect(r).toBeCloseTo(full[band]!, 12));
    }
    expect(down.name).toBe('rust 1:1');
  });
});

describe('filmFactor', () => {
  it('should follow what the meshes carry', () => {
    const ink = plain('a', 1, 0, { mesh: { threadsPerCm: 90, threadUm: 48 } });
    expect(filmFactor(ink, { threadsPerCm: 90, threadUm: 48 }, 3, 0.4)).toBe(1 + 2 * 0.4);
    // By hand, fabric 1.55 d cancels: (1 − 0.0048·90)²·48 against (1 − 0.0064·54)²·64.
    const ratio = ((1 - 0.0064 * 54) ** 2 * 64) / ((1 - 0.0048 * 90) ** 2 * 48);
    expect(filmFactor(ink, { threadsPerCm: 54, threadUm: 64 })).toBeCloseTo(ratio, 12);
    expect(filmFactor({ mesh: { threadsPerCm: 54, threadUm: 64 } }, { threadsPerCm: 54, threadUm: 64 }, 1, 0.3)).toBe(1);
    expect(filmFactor(ink, { threadsPerCm: 54, threadUm: 64, statedVolumeCm3PerM2: 48 })).toBeCloseTo(
      48 / ((1 - 0.432) ** 2 * 1.55 * 48),
      12,
    );
    expect(filmFactor(plain('unknown', 1, 0), { threadsPerCm: 54, threadUm: 64 }, 2, 0.5)).toBe(1.5);
  });
});

describe('demoStocks', () => {
  it('should be possible inks, one of them a base, all stock', () => {
    const stocks = demoStocks();
    expect(stocks).toHaveLength(12);
    for (const ink of stocks) expect(checkInk(ink), ink.name).toEqual([]);
    expect(stockInks(stocks)).toEqual(stocks);
    expect(printInks(stocks)).toEqual([]);
    expect(baseOf(stocks)!.id).toBe('stock-base');
  });
});
