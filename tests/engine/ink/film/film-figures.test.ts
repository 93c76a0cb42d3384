import { describe, expect, it } from 'vitest';
import { filmFigures } from '../../../../src/engine/ink/film/film-figures.ts';

describe('filmFigures', () => {
  it('should follow the catalogue row 90/225-48 and the rule for dry film', () => {
    // A mesh maker's catalogue (see tests/published/ink/mesh.json): w 65 µm, 33 %, 24 cm³/m²; wet and dry are arithmetic: 24 × 0.8 × 1.4, × 0.35.
    const mesh = { threadsPerCm: 225 / 2.54, threadUm: 48, fabricUm: 72 };
    const figures = filmFigures({ mesh, strokes: 2, strokeGain: 0.4, transfer: 0.8, solids: 0.35 });
    expect(figures.openingUm).toBeCloseTo(65, 0);
    expect(figures.openAreaPct).toBeCloseTo(33, 0);
    expect(Math.abs(figures.volumeCm3PerM2 - 24)).toBeLessThan(0.5);
    expect(figures.wetUm).toBeCloseTo(figures.volumeCm3PerM2 * 0.8 * 1.4, 9);
    expect(figures.dryUm).toBeCloseTo(figures.wetUm * 0.35, 9);
  });
});
