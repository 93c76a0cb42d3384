import { describe, expect, it } from 'vitest';
import { squareSentence } from '../../../../src/components/inks/overprint/overprint-words.ts';
import { labWords } from '../../../../src/components/ui/words.ts';
import type { Overprint } from '../../../../src/engine/ink/film/overprint.ts';

const NAMES = ['Tar', 'Rust'];
const cell: Overprint = {
  swatch: { lab: [50, 0, 0], hex: '#777777', inGamut: true },
  orderDeltaE: 3.14,
  nearestDeltaE: 12.34,
  expectedDeltaE: 3,
  overprintColour: true,
};

describe('squareSentence', () => {
  it('should tell the orders apart and what marks mean', () => {
    expect(squareSentence(NAMES, { first: 0, over: 1, cell, overprintDeltaE: 10 })).toBe(
      'Rust over Tar: ΔE 3.1 to Tar over Rust. An overprint colour: ΔE 12.3 to the nearest ink, past 10. A print should come out within about 3 ΔE of it.',
    );
    expect(
      squareSentence(NAMES, {
        first: 1,
        over: 1,
        cell: { ...cell, overprintColour: false, swatch: { ...cell.swatch, inGamut: false } },
        overprintDeltaE: 10,
      }),
    ).toBe(
      'Rust over itself, a second pull. A print should come out within about 3 ΔE of it. More colourful in print than this screen can show.',
    );
  });
});

describe('labWords', () => {
  it('should write a true minus and no minus nought', () => {
    expect(labWords([50.04, -0.04, -12.34])).toEqual(['50.0', '0.0', '−12.3']);
  });
});
