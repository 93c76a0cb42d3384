import { describe, it, expect } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { makeInk } from '../../../../src/engine/ink/characterise/make-ink.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../../../src/engine/ink/film/overprint-colour.ts';
import { nearestInk, overprintGrid } from '../../../../src/engine/ink/film/overprint.ts';
import { swatchLab, swatchOf, swatchReflectance } from '../../../../src/engine/ink/film/swatch.ts';
import { checkPaper } from '../../../../src/engine/ink/paper/check-paper.ts';

const RED = makeInk({ id: 'r', name: 'red', basis: 'invented', overWhite: [50, 55, 35], overBlack: [14, 12, 8] });
const CHALK = makeInk({ id: 'c', name: 'chalk', basis: 'invented', overWhite: [88, 0, 6], overBlack: [70, -2, -2] });
const PAPER = { reflectance: CARD_WHITE.map((r) => r * 0.97) };

describe('swatchLab', () => {
  it('should give back the colours that an ink was made from', () => {
    expect(deltaE2000(swatchLab(RED, CARD_WHITE), RED.overWhite)).toBeLessThan(0.5);
    expect(deltaE2000(swatchLab(CHALK, CARD_BLACK), CHALK.overBlack)).toBeLessThan(2);
  });

  it('should make two strokes at full gain the same as two pulls', () => {
    // Kubelka and Munk (1931): films of one ink add up.
    const two = swatchReflectance(RED, PAPER.reflectance, { strokes: 2, strokeGain: 1 });
    const stacked = stackReflectance([RED, RED], PAPER.reflectance);
    two.forEach((r, band) => expect(r).toBeCloseTo(stacked[band]!, 12));
  });
});

describe('swatchOf', () => {
  it('should show the paper as white only when asked', () => {
    expect(swatchOf(PAPER.reflectance, PAPER.reflectance)).toMatchObject({ hex: '#ffffff', inGamut: true });
    expect(swatchOf(PAPER.reflectance).hex).not.toBe('#ffffff');
  });

  it('should tell when the screen cannot show a colour', () => {
    const narrow = CARD_WHITE.map((_, band) => (band >= 14 && band <= 16 ? 0.9 : 0.01));
    expect(swatchOf(narrow).inGamut).toBe(false);
    expect(swatchOf(CARD_WHITE).inGamut).toBe(true);
  });
});

describe('overprintGrid', () => {
  const grid = overprintGrid([RED, CHALK], { paper: PAPER }, false);

  it('should give each cell as the stack of two films gives it', () => {
    const [l, a, b] = swatchOf(stackReflectance([RED, CHALK], PAPER.reflectance)).lab;
    const cell = grid.rows[0]![1]!.swatch.lab;
    expect(cell[0]).toBeCloseTo(l, 9);
    expect(cell[1]).toBeCloseTo(a, 9);
    expect(cell[2]).toBeCloseTo(b, 9);
  });

  it('should tell the same order difference from both sides, and none for an ink over itself', () => {
    expect(grid.rows[0]![1]!.orderDeltaE).toBe(grid.rows[1]![0]!.orderDeltaE);
    expect(grid.rows[0]![1]!.orderDeltaE).toBeGreaterThan(5);
    expect(grid.rows[1]![1]!.orderDeltaE).toBe(0);
  });

  it('should call overprint colours only those that are far from every ink', () => {
    const between = {
      ...RED,
      id: 'between',
      kx: RED.kx.map((k, band) => (k + CHALK.kx[band]!) / 2),
      sx: RED.sx.map((s, band) => (s + CHALK.sx[band]!) / 2),
    };
    const inks = [RED, CHALK, between];
    for (const chosen of [OVERPRINT_COLOUR_DELTA_E, 4]) {
      const { own, rows } = overprintGrid(inks, { paper: PAPER }, false, chosen);
      let found = 0;
      for (const [first, row] of rows.entries()) {
        for (const [over, cell] of row.entries()) {
          const gaps = own.map(({ lab }) => deltaE2000(cell.swatch.lab, lab));
          expect(cell.nearestDeltaE).toBe(Math.min(...gaps));
          expect(cell.overprintColour).toBe(first !== over && gaps.every((gap) => gap > chosen));
          if (cell.overprintColour) found++;
        }
      }
      if (chosen === 4) expect(found).toBeGreaterThan(0);
    }
  });

  it('should be empty without inks', () => {
    expect(overprintGrid([], { paper: PAPER }, true)).toEqual({ own: [], rows: [] });
  });
});

describe('checkPaper', () => {
  const sheet = { name: 'p', widthMm: 560, heightMm: 760, printable: { xMm: 30, yMm: 30, widthMm: 500, heightMm: 700 } };

  it('should pass a printable part on its sheet', () => {
    expect(checkPaper(sheet)).toEqual([]);
    expect(checkPaper({ ...sheet, printable: { xMm: 0, yMm: 0, widthMm: 560, heightMm: 760 } })).toEqual([]);
  });

  it('should name what is wrong', () => {
    const codes = (paper: typeof sheet): string[] => checkPaper(paper).map((problem) => problem.code);
    expect(codes({ ...sheet, widthMm: 520 })).toEqual(['paper.off-sheet']);
    expect(codes({ ...sheet, heightMm: Number.NaN })).toEqual(['paper.size']);
    const strip = { ...sheet, widthMm: 5000, heightMm: 199, printable: { xMm: 0, yMm: 0, widthMm: 5000, heightMm: 199 } };
    expect(codes(strip)).toEqual(['paper.size']);
    expect(codes({ ...strip, heightMm: 200 })).toEqual([]);
    expect(codes({ ...sheet, printable: { ...sheet.printable, xMm: -1 } })).toEqual(['paper.off-sheet']);
    expect(codes({ ...sheet, printable: { ...sheet.printable, widthMm: 0 } })).toEqual(['paper.no-printable']);
  });
});

describe('nearestInk', () => {
  it('should find the ink that the chart measured to', () => {
    const inks = demoInks();
    const grid = overprintGrid(inks, { paper: DEMO_PAPER }, true);
    for (const [first, row] of grid.rows.entries()) {
      for (const [over, { swatch, nearestDeltaE }] of row.entries()) {
        const nearest = grid.own[nearestInk(grid, first, over)]!;
        expect(deltaE2000(swatch.lab, nearest.lab)).toBe(nearestDeltaE);
        for (const { lab } of grid.own) expect(deltaE2000(swatch.lab, lab)).toBeGreaterThanOrEqual(nearestDeltaE);
      }
    }
    // Nothing shows through a film of tar, so that it is nearest to itself over anything dark.
    const tar = inks.findIndex(({ id }) => id === 'tar');
    expect(nearestInk(grid, tar, tar)).toBe(tar);
  });
});
