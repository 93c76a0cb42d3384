import { describe, expect, it } from 'vitest';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { curveFromColour } from '../../../../src/engine/ink/film/curves.ts';
import { labOfSwatch, labSwatch } from '../../../../src/engine/ink/film/lab-swatch.ts';
import { swatchOf } from '../../../../src/engine/ink/film/swatch.ts';
import { PAPER_PRESETS } from '../../../../src/engine/ink/paper/paper-presets.ts';

const cream = PAPER_PRESETS[1]!.reflectance;

describe('labSwatch', () => {
  it('should show a colour as swatchOf shows a curve of it, absolute and on a paper', () => {
    const curve = curveFromColour([52, 20, -18]);
    for (const white of [undefined, cream])
      expect(labSwatch(labD50(curve), white)).toMatchObject({ hex: swatchOf(curve, white).hex, inGamut: true });
  });
  it('should show the paper itself as white', () => {
    expect(labSwatch(labD50(cream), cream)).toMatchObject({ hex: '#ffffff', inGamut: true });
  });
  it('should tell that the strongest cyan inks are beyond the screen', () => {
    // sRGB reaches no chroma of 55 at this lightness and hue; CIELAB of sRGB cyan itself is L 91.
    expect(labSwatch([55, -37, -50]).inGamut).toBe(false);
  });
});

describe('labOfSwatch', () => {
  it('should undo labSwatch on any paper', () => {
    for (const { reflectance } of PAPER_PRESETS) expect(labSwatch(labOfSwatch('#7a9450', reflectance), reflectance).hex).toBe('#7a9450');
  });
  it('should refuse what is no colour', () => {
    expect(() => labOfSwatch('#12')).toThrow(/six hex digits/);
  });
});
