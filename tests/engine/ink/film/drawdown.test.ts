import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { drawdown } from '../../../../src/engine/ink/film/drawdown.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';

const [, rust] = demoInks();

describe('drawdown', () => {
  it('should show the card itself through an ink that does nothing', () => {
    const clear = { ...rust!, kx: rust!.kx.map(() => 0), sx: rust!.sx.map(() => 0) };
    const { white, black } = drawdown(clear, 1, 0.4);
    expect(deltaE2000(white.lab, labD50(CARD_WHITE))).toBeLessThan(1e-9);
    expect(deltaE2000(black.lab, labD50(CARD_BLACK))).toBeLessThan(1e-9);
  });

  it('should be a film as many times as thick as its strokes give', () => {
    for (const strokes of [1, 2, 3]) {
      const thickness = 1 + 0.4 * (strokes - 1);
      const film = { kx: rust!.kx.map((k) => k * thickness), sx: rust!.sx.map((s) => s * thickness) };
      const { white, black } = drawdown(rust!, strokes, 0.4);
      expect(deltaE2000(white.lab, labD50(stackReflectance([film], CARD_WHITE)))).toBeLessThan(1e-6);
      expect(deltaE2000(black.lab, labD50(stackReflectance([film], CARD_BLACK)))).toBeLessThan(1e-6);
    }
  });
});
