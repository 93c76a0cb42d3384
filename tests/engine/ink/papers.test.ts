import { describe, expect, it } from 'vitest';
import { labD50 } from '../../../src/engine/colour/lab.ts';
import { DEMO_PAPER } from '../../../src/engine/ink/demo/demo-paper.ts';
import { paperFromColour, paperFromCurve } from '../../../src/engine/ink/paper/paper-from.ts';
import { PAPER_PRESETS } from '../../../src/engine/ink/paper/paper-presets.ts';

describe('papers', () => {
  it('should take a colour exactly', () => {
    labD50(paperFromColour(DEMO_PAPER, [93, 1, 8]).reflectance).forEach((value, i) => expect(value).toBeCloseTo([93, 1, 8][i]!, 6));
    expect(() => paperFromColour(DEMO_PAPER, [50, 120, 0])).toThrow(
      expect.objectContaining({ code: 'colour.outside-solid', details: { nearest: expect.any(Array) } }),
    );
  });

  it('should take a curve, glow cut, and refuse what is none', () => {
    const curve = DEMO_PAPER.reflectance.with(6, 1.1);
    const paper = paperFromCurve({ ...DEMO_PAPER, name: 'Measured' }, curve);
    expect(paper).toEqual({ ...DEMO_PAPER, name: 'Measured', reflectance: curve.with(6, 1) });
    expect(() => paperFromCurve(DEMO_PAPER, curve.with(2, NaN))).toThrow('at 400 nm');
    expect(() => paperFromCurve(DEMO_PAPER, [0.9])).toThrow(expect.objectContaining({ code: 'paper.bad-curve' }));
  });

  it('should come in four colours that deserve their names', () => {
    const labs = Object.fromEntries(PAPER_PRESETS.map(({ id, reflectance }) => [id, labD50(reflectance)]));
    expect(labs.white![0]).toBeGreaterThan(94);
    expect(Math.hypot(labs.white![1], labs.white![2])).toBeLessThan(3);
    expect(labs.cream![2]).toBeGreaterThan(8);
    expect(labs.cream![2]).toBeLessThan(25);
    expect(labs.grey![0]).toBeGreaterThan(55);
    expect(labs.grey![0]).toBeLessThan(70);
    expect(labs.black![0]).toBeLessThan(28);
  });
});
