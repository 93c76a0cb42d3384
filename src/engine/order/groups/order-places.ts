import { entryAt, f64, num, u32 } from '../../base/at.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { type Lab, labD50 } from '../../colour/lab.ts';
import { overFilm } from '../../ink/film/film.ts';
import { filmOn, type LaidFilm } from '../../ink/film/laid-film.ts';
import { buildCellMap } from '../../stack/cell-map.ts';
import { stackLayers } from '../../stack/layers.ts';
import { placedSpans } from '../../stack/screen-spans.ts';
import type { Stack } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';

/** Rows are this high, mm, as fine as offsets, unless the sheet would have too many of them. */
const ROW_MM = 0.1;
const MOST_ROWS = 12_000;
/** Colours nearer than this count as one, Lab. */
const SAME_LAB = 1e-7;

/** The part of the sheet that one set of pulls covers, and its colour in every order of the stack. */
export interface OrderPlace {
  /** Positions in the stack, ascending; two or more. */
  pulls: number[];
  areaMm2: number;
  /** Number of the colour that each order gives. */
  colourOf: Uint16Array;
  colours: Lab[];
  /** ΔE00 between colours, [one · colours + other]. */
  deltaE: Float64Array;
}

/**
 * The places of a sheet where the order of a few pulls can show, with their colours in every order.
 * @param orders all orders, as positions in the stack, first down first
 * @param meets whether two pulls meet; a place is left out where two lie that only touch
 * @returns one place for each set of two or more pulls that covers a part of the sheet
 * @throws EngineError as stackLayers and placedSpans
 * Cost: a scan of the screens at rows of 0.1 mm, and the colours: at most 1,956 films and 720² / 2 ΔE00
 * in the place where six pulls lie.
 */
export function orderPlaces(
  stack: Stack,
  studio: Studio,
  orders: readonly (readonly number[])[],
  meets: (a: number, b: number) => boolean,
): OrderPlace[] {
  const { widthMm, heightMm, reflectance } = studio.paper;
  const grid = { widthMm, heightMm, rows: Math.max(1, Math.min(MOST_ROWS, Math.round(heightMm / ROW_MM))) };
  const map = buildCellMap(placedSpans(stack, studio, grid), grid);
  const films = stackLayers(stack, studio).map(({ laid }) => laid);
  const places: OrderPlace[] = [];
  for (let cell = 1; cell < map.cells; cell++) {
    const cover = u32(map.cover, cell * map.words);
    const pulls = films.map((_, pull) => pull).filter((pull) => (cover & (1 << pull)) !== 0);
    const areaMm2 = f64(map.areaMm2, cell);
    const real = pulls.every((a, i) => pulls.slice(i + 1).every((b) => meets(a, b)));
    if (pulls.length >= 2 && areaMm2 > 0 && real) places.push({ pulls, areaMm2, ...coloursOf(pulls, films, reflectance, orders) });
  }
  return places.sort((a, b) => b.areaMm2 - a.areaMm2);
}

function coloursOf(
  pulls: readonly number[],
  films: readonly LaidFilm[],
  paper: readonly number[],
  orders: readonly (readonly number[])[],
): Omit<OrderPlace, 'pulls' | 'areaMm2'> {
  const numberOf = new Map<string, number>();
  const colours: Lab[] = [];
  const grounds = new Map<string, Float64Array>([['', Float64Array.from(paper)]]);
  const here = new Set(pulls);
  const known = new Map<string, number>();
  const colourOf = Uint16Array.from(orders, (order) => {
    const down = order.filter((pull) => here.has(pull));
    const name = down.join();
    let number = known.get(name);
    if (number === undefined) {
      const lab = labD50(reflectanceOf(down, films, grounds));
      const key = lab.map((value) => Math.round(value / SAME_LAB)).join();
      number = numberOf.get(key) ?? colours.push(lab) - 1;
      numberOf.set(key, number);
      known.set(name, number);
    }
    return number;
  });
  return { colourOf, colours, deltaE: deltaEs(colours) };
}

/** Reflectance of films in an order; beginnings of orders are kept, so that each is laid once. */
function reflectanceOf(down: readonly number[], films: readonly LaidFilm[], grounds: Map<string, Float64Array>): Float64Array {
  const name = down.join();
  let found = grounds.get(name);
  if (found === undefined) {
    const ground = reflectanceOf(down.slice(0, -1), films, grounds);
    const under = down.length < 2 ? null : entryAt(films, num(down, down.length - 2));
    const film = filmOn(entryAt(films, num(down, down.length - 1)), under);
    found = overFilm(film, ground, new Float64Array(ground.length));
    grounds.set(name, found);
  }
  return found;
}

function deltaEs(colours: readonly Lab[]): Float64Array {
  const n = colours.length;
  const out = new Float64Array(n * n);
  for (let a = 0; a < n; a++) {
    for (let b = 0; b < a; b++) out[a * n + b] = out[b * n + a] = deltaE2000(entryAt(colours, a), entryAt(colours, b));
  }
  return out;
}
