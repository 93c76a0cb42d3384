import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { Describer, descriptorDistance } from '../../../../src/engine/explore/look/descriptor.ts';
import { curveFromColour } from '../../../../src/engine/ink/film/curves.ts';
import { rectDrawer } from '../../order/drawer.ts';

/** How far apart two sheets look that are of one colour all over. */
function apart(one: Lab, other: Lab): { look: number; deltaE: number } {
  const [a, b] = [one, other].map((lab) => {
    const reflectance = Array.from(curveFromColour(lab));
    // Colours relative to a white paper: films that hide all of it.
    const studio = rectDrawer([[0, 0, 200, 100]]);
    const paper = { ...studio.paper, reflectance: Array.from({ length: 36 }, () => 1) };
    const kx = reflectance.map((r) => (500 * (1 - r) ** 2) / (2 * r));
    const ink = { ...studio.inks[0]!, id: 'all', kx, sx: kx.map(() => 500) };
    const pulls = [{ id: 'p', screen: 's0', ink: 'all', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }];
    return { at: new Describer({ ...studio, paper, inks: [ink] }).describe(pulls), lab: labD50(reflectance) };
  }) as [{ at: Uint8Array; lab: Lab }, { at: Uint8Array; lab: Lab }];
  return { look: descriptorDistance(a.at, b.at), deltaE: deltaE2000(a.lab, b.lab) };
}

describe('descriptorDistance', () => {
  // CIEDE2000 is the yardstick: a step in lightness and a step in hue or chroma that it calls alike.
  it.each([
    ['red against green', [55, 18, 0], [55, -18, 0]],
    ['yellow against blue', [55, 0, 18], [55, 0, -18]],
    ['strong against dull', [55, 40, 20], [55, 14, 7]],
  ] as [string, Lab, Lab][])('should weigh a difference in colour as it does one in lightness: %s', (_name, one, other) => {
    const colour = apart(one, other);
    const light = apart([45, 0, 0], [68, 0, 0]);
    expect(colour.deltaE).toBeGreaterThan(10);
    const ratio = colour.look / colour.deltaE / (light.look / light.deltaE);
    // Kinds of colour and rounding to whole numbers keep it from being nearer.
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(2);
  });
});
