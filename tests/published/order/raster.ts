import { differenceCiede2000 } from 'culori';
import { WEIGHTS_D50 } from '../../../src/engine/colour/weights.ts';
import { filmFactor } from '../../../src/engine/ink/film/film-factor.ts';
import type { Screen } from '../../../src/engine/shapes/types.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';

// A print by other means than the engine's: points instead of spans, Kubelka's hyperbolic form
// instead of composed films, ΔE00 by culori.

type Point = [number, number];

/** The rings of a pull as points on the sheet: placed about the box's centre, turned about the sheet's. */
function outlines(screen: Screen, pull: Pull, studio: Studio): { rings: Point[][]; evenOdd: boolean }[] {
  const turn = (at: Point, [cx, cy]: Point, degrees: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    const [x, y] = [at[0] - cx, at[1] - cy];
    return [cx + x * Math.cos(angle) - y * Math.sin(angle), cy + x * Math.sin(angle) + y * Math.cos(angle)];
  };
  const middle: Point = [studio.paper.widthMm / 2, studio.paper.heightMm / 2];
  return screen.placed.map((place) => {
    const shape = studio.shapes.find(({ id }) => id === place.shape)!;
    const points = shape.rings.map((ring) => Array.from({ length: ring.length / 2 }, (_, i): Point => [ring[2 * i]!, ring[2 * i + 1]!]));
    const all = points.flat();
    const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
    const centre: Point = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
    const rings = points.map((ring) =>
      ring.map(([x, y]) => {
        const scaled: Point = [place.xMm + (x - centre[0]) * place.scale, place.yMm + (y - centre[1]) * place.scale];
        const [tx, ty] = turn(turn(scaled, [place.xMm, place.yMm], place.turnDeg), middle, pull.turnDeg);
        return [tx + pull.dxMm, ty + pull.dyMm] as Point;
      }),
    );
    return { rings, evenOdd: shape.fillRule === 'evenodd' };
  });
}

/** Pixels of a sheet by which pulls cover their middles, bit i pull i: area of each set, mm². */
export function coverAreas(pulls: readonly Pull[], studio: Studio, pitchMm: number): Map<number, number> {
  const { widthMm, heightMm } = studio.paper;
  const [columns, rows] = [Math.round(widthMm / pitchMm), Math.round(heightMm / pitchMm)];
  const cover = new Uint16Array(columns * rows);
  pulls.forEach((pull, bit) => {
    const screen = studio.screens.find(({ id }) => id === pull.screen)!;
    for (const { rings, evenOdd } of outlines(screen, pull, studio)) {
      for (let row = 0; row < rows; row++) {
        const y = (row + 0.5) * pitchMm;
        const crossings: { x: number; way: number }[] = [];
        for (const ring of rings) {
          ring.forEach(([x0, y0], i) => {
            const [x1, y1] = ring[(i + 1) % ring.length]!;
            if (y0 <= y === y1 <= y) return;
            crossings.push({ x: x0 + ((y - y0) / (y1 - y0)) * (x1 - x0), way: y1 > y0 ? 1 : -1 });
          });
        }
        crossings.sort((a, b) => a.x - b.x);
        let winding = 0;
        let at = 0;
        for (let column = 0; column < columns && crossings.length > 0; column++) {
          const x = (column + 0.5) * pitchMm;
          while (at < crossings.length && crossings[at]!.x <= x) winding += crossings[at++]!.way;
          const inside = evenOdd ? at % 2 === 1 : winding !== 0;
          if (inside) cover[row * columns + column]! |= 1 << bit;
        }
      }
    }
  });
  const areas = new Map<number, number>();
  for (const set of cover) areas.set(set, (areas.get(set) ?? 0) + 1);
  for (const [set, count] of areas) areas.set(set, count * pitchMm * pitchMm);
  return areas;
}

/** Kubelka (1948), eq. 20: R = (1 − Rg(a − b coth bSX)) / (a − Rg + b coth bSX); Bouguer where S is 0. */
function kubelka(ground: number, kx: number, sx: number): number {
  if (sx === 0) return ground * Math.exp(-2 * kx);
  const a = 1 + kx / sx;
  const b = Math.sqrt(a * a - 1);
  if (b < 1e-9) return (ground + (1 - ground) * sx) / (1 + (1 - ground) * sx);
  const coth = 1 / Math.tanh(b * sx);
  return (1 - ground * (a - b * coth)) / (a - ground + b * coth);
}

/**
 * CIELAB by CIE 15:2004, from 36 bands under D50; the observer's weights are the project's table. Called
 * lab65 because culori takes ΔE00 of these numbers as they are, and would adapt what is called lab.
 */
function lab(reflectance: readonly number[]): { mode: 'lab65'; l: number; a: number; b: number } {
  const f = (weights: readonly number[]): number => {
    const white = weights.reduce((sum, w) => sum + w, 0);
    const t = weights.reduce((sum, w, i) => sum + w * reflectance[i]!, 0) / white;
    return t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29;
  };
  const [x, y, z] = [f(WEIGHTS_D50.x), f(WEIGHTS_D50.y), f(WEIGHTS_D50.z)];
  return { mode: 'lab65', l: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

const deltaE = differenceCiede2000();

/** A colour maker for a stack: the films of some pulls, first down first, on the paper. */
export function printColours(pulls: readonly Pull[], studio: Studio) {
  const films = pulls.map((pull) => {
    const ink = studio.inks.find(({ id }) => id === pull.ink)!;
    const mesh = studio.screens.find(({ id }) => id === pull.screen)!.mesh;
    const thickness = filmFactor(ink, mesh, pull.strokes, studio.strokeGain);
    return { kx: ink.kx.map((k) => k * thickness), sx: ink.sx.map((s) => s * thickness) };
  });
  const known = new Map<string, ReturnType<typeof lab>>();
  const apart = new Map<string, number>();
  const colour = (down: readonly number[]): ReturnType<typeof lab> => {
    const name = down.join();
    let found = known.get(name);
    if (found === undefined) {
      found = lab(
        studio.paper.reflectance.map((paper, band) =>
          down.reduce((r, at) => kubelka(r, films[at]!.kx[band]!, films[at]!.sx[band]!), paper),
        ),
      );
      known.set(name, found);
    }
    return found;
  };
  return (one: readonly number[], other: readonly number[]): number => {
    const key = `${one.join()} ${other.join()}`;
    let found = apart.get(key);
    if (found === undefined) apart.set(key, (found = deltaE(colour(one), colour(other))));
    return found;
  };
}
