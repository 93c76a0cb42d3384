import { Color, mix } from 'spectral.js';
import { describe, expect, it } from 'vitest';
import { BANDS } from '../../../src/engine/colour/weights.ts';
import { demoInks } from '../../../src/engine/ink/demo/demo-inks.ts';
import { infiniteReflectance, stackReflectance } from '../../../src/engine/ink/film/film.ts';
import { mixInks } from '../../../src/engine/ink/mix/mix.ts';
import type { Ink } from '../../../src/engine/ink/types.ts';
import peer from './spectral-peer.json' with { type: 'json' };

// spectral.js has 38 bands from 380 nm; what it sees beyond our 36 changes nothing band by band.
const PEER_BANDS = 38;
const inks = demoInks();
const PAPER = new Array<number>(BANDS).fill(0.8);

/** A colour of spectral.js with the curve of an ink so thick that it hides the ground. */
function hiding(ink: Ink): Color {
  const curve = ink.kx.map((k, band) => infiniteReflectance(k / ink.sx[band]!));
  while (curve.length < PEER_BANDS) curve.push(curve.at(-1)!);
  const colour = new Color(curve);
  // Takes its weighting by luminance out again, so that factors squared are concentrations.
  colour.tintingStrength = 1 / Math.sqrt(colour.luminance);
  return colour;
}

function peerMix(parts: readonly [Ink, number][]): number[] {
  return mix(...parts.map(([ink, share]): [Color, number] => [hiding(ink), Math.sqrt(share)])).R;
}

function ourMix(parts: readonly [Ink, number][], strokes: number): Float64Array {
  const ink = mixInks(
    parts.map(([each, share]) => ({ ink: each, parts: share })),
    { id: 'm', name: 'm' },
  );
  return stackReflectance([{ kx: ink.kx.map((k) => k * strokes), sx: ink.sx.map((s) => s * strokes) }], PAPER);
}

function mostApart(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return Math.max(...Array.from({ length: BANDS }, (_, band) => Math.abs(a[band]! - b[band]!)));
}

const alike = inks.map((ink) => ({ ...ink, sx: ink.sx.map(() => 0.5) }));

describe('mixInks beside spectral.js', () => {
  it.each([
    [1, 6, 1, 1],
    [2, 3, 1, 3],
    [5, 7, 4, 1],
  ])('should agree on hiding films of inks that scatter alike (%i, %i at %i : %i)', (a, b, x, y) => {
    const parts: [Ink, number][] = [
      [alike[a]!, x],
      [alike[b]!, y],
    ];
    expect(mostApart(ourMix(parts, 1000), peerMix(parts))).toBeLessThan(peer.tolerance.reflectance);
  });

  it('should agree on four inks at once', () => {
    const parts = alike.slice(1, 5).map((ink, i): [Ink, number] => [ink, i + 1]);
    expect(mostApart(ourMix(parts, 1000), peerMix(parts))).toBeLessThan(peer.tolerance.reflectance);
  });

  it('should differ where one ink scatters more, which a single constant cannot hold', () => {
    const strong = { ...alike[7]!, sx: alike[7]!.sx.map(() => 5) };
    const parts: [Ink, number][] = [
      [strong, 1],
      [alike[1]!, 1],
    ];
    expect(mostApart(ourMix(parts, 1000), peerMix(parts))).toBeGreaterThan(peer.tolerance.leastDifference);
  });

  it('should differ where the ground shows through', () => {
    const parts: [Ink, number][] = [
      [alike[1]!, 1],
      [alike[6]!, 1],
    ];
    expect(mostApart(ourMix(parts, 1), peerMix(parts))).toBeGreaterThan(peer.tolerance.leastDifference);
  });
});
