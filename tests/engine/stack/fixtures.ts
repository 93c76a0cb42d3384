import { randomFrom } from '../../../src/engine/base/random.ts';
import type { Ink } from '../../../src/engine/ink/types.ts';
import type { Screen, Shape } from '../../../src/engine/shapes/types.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';

const BANDS = 36;

/** A seeded stream of numbers in [0, 1). */
export function numbersFrom(seed: string): () => number {
  const random = randomFrom(seed);
  return () => random.int(2 ** 30) / 2 ** 30;
}

/** A closed curve round a centre, `points` points, radius wobbling by a few harmonics. */
export function blobRing(next: () => number, x: number, y: number, radius: number, points: number): number[] {
  const waves = [2, 3, 5, 7].map((k) => ({ k, size: (0.35 * next()) / k, turn: next() * 2 * Math.PI }));
  const ring: number[] = [];
  for (let i = 0; i < points; i++) {
    const angle = (2 * Math.PI * i) / points;
    let r = 1;
    for (const wave of waves) r += wave.size * Math.cos(wave.k * angle + wave.turn);
    ring.push(x + radius * r * Math.cos(angle), y + radius * r * Math.sin(angle));
  }
  return ring;
}

/** An invented ink: smooth random curves, scattering much, little or not at all. */
function randomInk(next: () => number, id: string): Ink {
  const opacity = next() < 0.25 ? 0 : next() * 2;
  const bump = { at: next() * BANDS, wide: 4 + next() * 10, high: next() * 3 };
  const kx = Array.from({ length: BANDS }, (_, band) => 0.02 + bump.high * Math.exp(-(((band - bump.at) / bump.wide) ** 2)));
  const sx = Array.from({ length: BANDS }, (_, band) => opacity * (0.5 + 0.5 * Math.sin(band / 9 + bump.at)));
  return {
    id,
    name: id,
    basis: 'invented',
    overWhite: [50, 0, 0],
    overBlack: [20, 0, 0],
    kx,
    sx,
    dryMinutes: 20,
    densityGPerCm3: 1.15,
  };
}

export function screenOf(id: string, number: number, shape: Shape, turnDeg = 0, scale = 1): Screen {
  const box = boxOf(shape);
  return {
    id,
    number,
    name: id,
    placed: [{ shape: shape.id, xMm: box.x + box.w / 2, yMm: box.y + box.h / 2, turnDeg, scale }],
    mesh: { threadsPerCm: 77, threadUm: 55 },
  };
}

function boxOf(shape: Shape): { x: number; y: number; w: number; h: number } {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of shape.rings) {
    for (let i = 0; i < ring.length; i += 2) {
      x0 = Math.min(x0, ring[i]!);
      x1 = Math.max(x1, ring[i]!);
      y0 = Math.min(y0, ring[i + 1]!);
      y1 = Math.max(y1, ring[i + 1]!);
    }
  }
  return { x: x0, y: y0, w: x1 - x0, h: y1 - y0 };
}

/** A shape whose coordinates are those of the sheet. */
export function sheetShape(id: string, rings: number[][], fillRule: 'nonzero' | 'evenodd' = 'nonzero'): Shape {
  const shape: Shape = { id, name: id, rings, fillRule, widthMm: 0, heightMm: 0 };
  const box = boxOf(shape);
  return { ...shape, widthMm: box.w, heightMm: box.h };
}

export const PAPER = {
  name: 'test paper',
  widthMm: 560,
  heightMm: 760,
  printable: { xMm: 30, yMm: 30, widthMm: 500, heightMm: 700 },
  reflectance: Array.from({ length: BANDS }, (_, band) => 0.7 + 0.2 * Math.min(1, band / 8)),
};

export function pullOf(index: number, screen: string, ink: string, more: Partial<Pull> = {}): Pull {
  return { id: `p${index}`, screen, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1, ...more };
}

/** A studio and a stack of one pull a shape; shapes are already where they print. */
export function stackOf(shapes: Shape[], next: () => number, inkCount = 8): { studio: Studio; pulls: Pull[] } {
  const inks = Array.from({ length: inkCount }, (_, i) => randomInk(next, `ink${i}`));
  const screens = shapes.map((shape, i) => screenOf(`s${i}`, i + 1, shape));
  const pulls = shapes.map((_, i) => pullOf(i, `s${i}`, `ink${Math.floor(next() * inkCount)}`, { strokes: 1 + Math.floor(next() * 2) }));
  return { studio: { shapes, screens, inks, paper: PAPER, strokeGain: 0.4 }, pulls };
}

/** A stack of seeded blobs of 80 to 150 points over the printable area. */
export function blobStack(seed: string, count: number): { studio: Studio; pulls: Pull[] } {
  const next = numbersFrom(seed);
  const shapes = Array.from({ length: count }, (_, i) => {
    const x = 80 + next() * 400;
    const y = 80 + next() * 600;
    return sheetShape(`b${i}`, [blobRing(next, x, y, 50 + next() * 90, 80 + Math.floor(next() * 71))]);
  });
  return stackOf(shapes, next);
}
