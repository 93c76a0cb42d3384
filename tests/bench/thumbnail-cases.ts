import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import svgpath from 'svgpath';
import { randomFrom } from '../../src/engine/base/random.ts';
import { toOffsetGrid } from '../../src/engine/base/units.ts';
import type { Shape } from '../../src/engine/shapes/types.ts';
import type { Pull, Stack } from '../../src/engine/stack/types.ts';
import type { Studio } from '../../src/engine/studio/studio.ts';
import { blobRing, numbersFrom, sheetShape, stackOf } from '../engine/stack/fixtures.ts';

/** One placed stack and what is done to it. */
export interface ThumbnailCase {
  drawer: Studio;
  base: Stack;
  /** Other orders and inks of the same placed screens. */
  reorders: Stack[];
  /** The base with every pull shifted on the 0.1 mm grid, up to 6 mm either way. */
  offsets: Stack[];
}

// Icons of a general icon set, for outlines with holes, corners and many parts.
const ICONS = [
  'anchor',
  'bicycle',
  'bug',
  'camera',
  'cloud-rain-heavy',
  'compass',
  'fan',
  'feather',
  'flower1',
  'gear-fill',
  'hurricane',
  'key',
  'life-preserver',
  'lightbulb',
  'moon-stars',
  'water',
].filter((name) => hasIcon(name));

/**
 * A seeded stack: two thirds blobs of 80 to 150 points, one third icons (curves flattened to 10
 * pieces), all over the printable area of a 560 × 760 mm sheet.
 * @param radiiMm least and greatest radius of the shapes
 */
export function thumbnailCase(seed: string, pulls: number, variants: number, radiiMm: readonly [number, number]): ThumbnailCase {
  const next = numbersFrom(seed);
  const shapes: Shape[] = Array.from({ length: pulls }, (_, i) => {
    const x = 80 + next() * 400;
    const y = 80 + next() * 600;
    const radius = radiiMm[0] + next() * (radiiMm[1] - radiiMm[0]);
    const rings =
      i % 3 === 2
        ? iconRings(ICONS[((i / 3) | 0) % ICONS.length]!, x, y, radius * 2)
        : [blobRing(next, x, y, radius, 80 + Math.floor(next() * 71))];
    return sheetShape(`shape${i}`, rings);
  });
  const { studio: drawer, pulls: basePulls } = stackOf(shapes, next);
  const random = randomFrom(`${seed} variants`);
  const reorders = Array.from({ length: variants }, () => ({
    pulls: random.shuffle(basePulls).map((pull) => ({ ...pull, ink: random.pick(drawer.inks).id })),
  }));
  const offsets = Array.from({ length: variants }, () => ({
    pulls: basePulls.map((pull): Pull => ({
      ...pull,
      dxMm: toOffsetGrid((random.int(121) - 60) / 10),
      dyMm: toOffsetGrid((random.int(121) - 60) / 10),
    })),
  }));
  return { drawer, base: { pulls: basePulls }, reorders, offsets };
}

function iconPath(name: string): string {
  return createRequire(import.meta.url).resolve(`bootstrap-icons/icons/${name}.svg`);
}

function hasIcon(name: string): boolean {
  try {
    iconPath(name);
    return true;
  } catch {
    return false;
  }
}

/** The filled outlines of a 16 × 16 icon, scaled to `size` mm about (x, y). */
function iconRings(name: string, x: number, y: number, size: number): number[][] {
  const text = readFileSync(iconPath(name), 'utf8');
  const rings: number[][] = [];
  for (const [, d] of text.matchAll(/<path[^>]*? d="([^"]+)"/g)) {
    let ring: number[] = [];
    const path = svgpath(d!)
      .abs()
      .unarc()
      .unshort()
      .translate(-8, -8)
      .scale(size / 16)
      .translate(x, y);
    path.iterate((segment, _index, px, py) => {
      const [command, ...v] = segment as [string, ...number[]];
      if (command === 'M') {
        if (ring.length > 4) rings.push(ring);
        ring = [v[0]!, v[1]!];
      } else if (command === 'L') ring.push(v[0]!, v[1]!);
      else if (command === 'H') ring.push(v[0]!, py);
      else if (command === 'V') ring.push(px, v[0]!);
      else if (command === 'C' || command === 'Q') pushCurve(ring, px, py, command, v);
    });
    if (ring.length > 4) rings.push(ring);
  }
  return rings;
}

function pushCurve(ring: number[], px: number, py: number, command: 'C' | 'Q', v: number[]): void {
  const [x1, y1] = command === 'C' ? [v[0]!, v[1]!] : [px + (2 / 3) * (v[0]! - px), py + (2 / 3) * (v[1]! - py)];
  const [x3, y3] = [v.at(-2)!, v.at(-1)!];
  const [x2, y2] = command === 'C' ? [v[2]!, v[3]!] : [x3 + (2 / 3) * (v[0]! - x3), y3 + (2 / 3) * (v[1]! - y3)];
  for (let i = 1; i <= 10; i++) {
    const t = i / 10;
    const u = 1 - t;
    const [a, b, c, e] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    ring.push(a * px + b * x1 + c * x2 + e * x3, a * py + b * y1 + c * y2 + e * y3);
  }
}
