import { describe, expect, it } from 'vitest';
import { labWords, nearestInk, squareSentence } from '../../../../src/components/inks/overprint/overprint-words.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { type Overprint, overprintGrid } from '../../../../src/engine/ink/film/overprint.ts';

const NAMES = ['Tar', 'Rust'];
const cell: Overprint = {
  swatch: { lab: [50, 0, 0], hex: '#777777', inGamut: true },
  orderDeltaE: 3.14,
  nearestDeltaE: 12.34,
  thirdColour: true,
};

describe('squareSentence', () => {
  it('should tell the orders apart and what marks mean', () => {
    expect(squareSentence(NAMES, 0, 1, cell, 10)).toBe(
      'Rust over Tar: ΔE 3.1 to Tar over Rust. A third colour: ΔE 12.3 to the nearest ink, past 10.',
    );
    expect(squareSentence(NAMES, 1, 1, { ...cell, thirdColour: false, swatch: { ...cell.swatch, inGamut: false } }, 10)).toBe(
      'Rust over itself, a second pull. More colourful in print than this screen can show.',
    );
  });
});

describe('nearestInk', () => {
  it('should find the ink that the chart measured to', () => {
    const inks = demoInks();
    const grid = overprintGrid(inks, DEMO_PAPER, true);
    inks.forEach((_, i) => expect(grid.own[nearestInk(grid, i, i)]).toBeDefined());
    // Nothing shows through a film of tar, so that it is nearest to itself over anything dark.
    const tar = inks.findIndex(({ id }) => id === 'tar');
    expect(nearestInk(grid, tar, tar)).toBe(tar);
  });
});

describe('labWords', () => {
  it('should write a true minus and no minus nought', () => {
    expect(labWords([50.04, -0.04, -12.34])).toEqual(['50.0', '0.0', '−12.3']);
  });
});
