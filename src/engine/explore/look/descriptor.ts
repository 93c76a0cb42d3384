import { defined, f64, u8 } from '../../base/at.ts';
import { setOklab } from '../../colour/oklab.ts';
import { colourCells, createCellColours } from '../../stack/appearance.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { stackLayers } from '../../stack/layers.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull, CellMap } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { composition, COMPOSITION_LENGTH } from './composition.ts';
import { fieldMeans } from './field-means.ts';
import { imageName } from './image-name.ts';

/** Areas in which lightness is compared, and coarser ones for colour: the eye sees colour less sharply. */
const LIGHT = { columns: 6, rows: 8 };
const COLOUR = { columns: 3, rows: 4 };
/** Kinds of colour whose areas are compared: middles in OKLab. */
const L_MIDDLES = Float64Array.of(0.25, 0.5, 0.75, 1);
const AB_MIDDLES = Float64Array.of(-0.12, 0, 0.12);
/** a and b count so much more than L, as they do in ΔE00 of printed colours (from memory). */
const CHROMA_WEIGHT = 2;
/** Other colours all over count as an OKLab difference of so much all over; a choice of ours. */
const AREA_WEIGHT = 0.1;
/** Steps of a descriptor to an OKLab difference of 1. */
const STEPS = 1024;

const LIGHTS = LIGHT.columns * LIGHT.rows;
const COLOURS = COLOUR.columns * COLOUR.rows;
const KINDS = L_MIDDLES.length * AB_MIDDLES.length ** 2;
/** Where the lightness of areas begins in a descriptor. */
export const LIGHTS_FROM = COLOURS * 2 + KINDS;
/** Length of a descriptor that does not see composition. */
export const DESCRIPTOR_LENGTH = LIGHTS_FROM + LIGHTS;
/** Rows of the map that a print is described from: a whole number to each row of areas. */
const MAP_ROWS = 64;
/** Rows at which images are told apart that are the same at MAP_ROWS. */
const FINE_ROWS = 1024;

/**
 * What a print looks like from across the room, as whole numbers 0–255 whose Euclidean distance ÷ 1024
 * says how different two prints look: the OKLab difference of their areas, root mean square, and how
 * much of the sheet is in other colours.
 *
 * Light of an area is averaged before it becomes a colour, since the eye that no longer sees the
 * shapes sees their mean light; so shapes that move a little change little, and the same colours
 * elsewhere change much. Areas of kinds of colour (square roots, hence Hellinger distance) tell new
 * colours in small places, which means drown. Whole numbers, so that every machine picks alike.
 */
export type Descriptor = Uint8Array;

/** What a print looks like: its descriptor, and a name for its image at MAP_ROWS rows (imageName). */
export interface Look {
  at: Descriptor;
  image: string;
}

/** A print whose pulls can be had again by its number. */
interface DrawnAnew {
  print: number;
  pullsOf(print: number): readonly Pull[];
}

/** The mean light of an area, then its colour. */
const mean = new Float64Array(3);

/** Describes the prints of one drawer. */
export class Describer {
  private readonly studio: Studio;
  /** How many numbers its descriptors have. */
  readonly length: number;
  private readonly composed: boolean;
  private readonly spans: SpanCache;
  private readonly builder = new CellMapBuilder();
  private readonly colours = createCellColours();
  private oklab = new Float64Array(0);
  /** By their image at MAP_ROWS: the one print that shows it, or the images at FINE_ROWS of several. */
  private readonly images = new Map<string, number | readonly Pull[] | Set<string>>();

  /**
   * @param composed whether descriptors also see how prints lie on their sheet: where screens may lie
   *   anywhere, the same colours elsewhere are another print. Without, walls stay as they always were.
   */
  constructor(studio: Studio, composed = false) {
    this.studio = studio;
    this.composed = composed;
    this.length = DESCRIPTOR_LENGTH + (composed ? COMPOSITION_LENGTH : 0);
    this.spans = new SpanCache(studio);
  }

  /**
   * @param pulls first down first
   * @returns a new array of `length`
   * @throws EngineError as stackLayers, when a pull names what is not in the drawer
   */
  describe(pulls: readonly Pull[]): Descriptor {
    return this.look(pulls).at;
  }

  /** The same, with a name for the image. */
  look(pulls: readonly Pull[]): Look {
    const [map, linear, packed] = this.coloured(pulls, MAP_ROWS);
    return { at: describeCells(map, linear, this.oklabOf(map.cells, linear), this.composed), image: imageName(map, packed) };
  }

  /**
   * False when a print asked of before shows the same image: offsets may differ only where other films
   * or the sheet's edge hide them.
   * @param drawn a number for the print, and the pulls of such a number at any time: a search that can draw them anew need
   *   not keep them
   */
  isNew(pulls: readonly Pull[], { image }: Look, drawn?: DrawnAnew): boolean {
    const known = this.images.get(image);
    if (known === undefined) {
      this.images.set(image, drawn?.print ?? pulls);
      return true;
    }
    const names =
      known instanceof Set ? known : new Set([this.fineName(typeof known === 'number' ? defined(drawn).pullsOf(known) : known)]);
    this.images.set(image, names);
    const fine = this.fineName(pulls);
    if (names.has(fine)) return false;
    names.add(fine);
    return true;
  }

  private fineName(pulls: readonly Pull[]): string {
    const [map, , packed] = this.coloured(pulls, FINE_ROWS);
    return imageName(map, packed);
  }

  private oklabOf(cells: number, linear: Float64Array): Float64Array {
    if (this.oklab.length < cells * 3) this.oklab = new Float64Array(cells * 6);
    const { oklab } = this;
    for (let at = 0; at < cells * 3; at += 3) setOklab(oklab, at, linear);
    return oklab;
  }

  private coloured(pulls: readonly Pull[], rows: number): [CellMap, Float64Array, Uint32Array] {
    const { widthMm, heightMm, reflectance } = this.studio.paper;
    const grid = { widthMm, heightMm, rows };
    const map = this.builder.build(this.spans.place({ pulls }, grid), grid);
    // Clipped: walls of a seed are told apart as they always were.
    const { linear, packed } = colourCells(map, stackLayers({ pulls }, this.studio), reflectance, this.colours, true, true);
    return [map, linear, packed];
  }
}

/**
 * The descriptor of a print whose cells are coloured.
 * @param linear cells × 3, linear sRGB 0–1; exact from the map's runs
 * @param oklab the same colours
 */
function describeCells(map: CellMap, linear: Float64Array, oklab: Float64Array, composed: boolean): Descriptor {
  const out = new Uint8Array(DESCRIPTOR_LENGTH + (composed ? COMPOSITION_LENGTH : 0));
  const lights = fieldMeans(map, LIGHT, linear, 3);
  if (composed) out.set(composition(map, oklab).map(step), DESCRIPTOR_LENGTH);
  const scale = Math.sqrt(1 / COLOURS) * CHROMA_WEIGHT;
  const [perColumn, perRow] = [LIGHT.columns / COLOUR.columns, LIGHT.rows / COLOUR.rows];
  for (let area = 0; area < COLOURS; area++) {
    mean.fill(0);
    const [column, row] = [area % COLOUR.columns, Math.floor(area / COLOUR.columns)];
    for (let y = 0; y < perRow; y++) {
      for (let x = 0; x < perColumn; x++) {
        const at = ((row * perRow + y) * LIGHT.columns + column * perColumn + x) * 3;
        for (let i = 0; i < 3; i++) mean[i] = f64(mean, i) + f64(lights, at + i) / (perColumn * perRow);
      }
    }
    setOklab(mean, 0, mean);
    out[area * 2] = step(f64(mean, 1) * scale + 128 / STEPS);
    out[area * 2 + 1] = step(f64(mean, 2) * scale + 128 / STEPS);
  }
  const kinds = kindAreas(map, oklab);
  for (let kind = 0; kind < KINDS; kind++) out[COLOURS * 2 + kind] = step(Math.sqrt(f64(kinds, kind)) * AREA_WEIGHT);
  for (let area = 0; area < LIGHTS; area++) {
    setOklab(lights, area * 3, lights);
    out[LIGHTS_FROM + area] = step(f64(lights, area * 3) / Math.sqrt(LIGHTS));
  }
  return out;
}

function step(value: number): number {
  return Math.max(0, Math.min(255, Math.round(value * STEPS)));
}

/** Share of the sheet in each kind of colour; a colour between kinds counts to its neighbours. */
function kindAreas(map: CellMap, oklab: Float64Array): Float64Array {
  const out = new Float64Array(KINDS);
  const sheet = map.widthMm * map.heightMm;
  for (let cell = 0; cell < map.cells; cell++) {
    const share = f64(map.areaMm2, cell) / sheet;
    if (!(share > 0)) continue;
    const lAt = placeAmong(L_MIDDLES, f64(oklab, cell * 3));
    const aAt = placeAmong(AB_MIDDLES, f64(oklab, cell * 3 + 1));
    const bAt = placeAmong(AB_MIDDLES, f64(oklab, cell * 3 + 2));
    const l = Math.min(L_MIDDLES.length - 2, Math.floor(lAt));
    const a = Math.min(AB_MIDDLES.length - 2, Math.floor(aAt));
    const b = Math.min(AB_MIDDLES.length - 2, Math.floor(bAt));
    for (let corner = 0; corner < 8; corner++) {
      const dl = corner & 1;
      const da = (corner >> 1) & 1;
      const db = corner >> 2;
      const part = (dl ? lAt - l : 1 - (lAt - l)) * (da ? aAt - a : 1 - (aAt - a)) * (db ? bAt - b : 1 - (bAt - b));
      if (part > 0) {
        const kind = ((l + dl) * AB_MIDDLES.length + a + da) * AB_MIDDLES.length + b + db;
        out[kind] = f64(out, kind) + share * part;
      }
    }
  }
  return out;
}

/** Where a value lies among the middles: 1.5 between the second and the third. */
function placeAmong(middles: Float64Array, value: number): number {
  const step = f64(middles, 1) - f64(middles, 0);
  return Math.max(0, Math.min(middles.length - 1, (value - f64(middles, 0)) / step));
}

/** How different two prints look: 0 for the same, about 0.02 where one has to look twice; both of one describer. */
export function descriptorDistance(a: Descriptor, b: Descriptor): number {
  return Math.sqrt(squaredSteps(a, b, Infinity)) / STEPS;
}

/**
 * Square of the distance in steps, a whole number.
 * @param enough once the sum is at least this, it need not be finished
 */
export function squaredSteps(a: Descriptor, b: Descriptor, enough: number): number {
  let sum = 0;
  const { length } = a;
  for (let i = 0; i < length;) {
    // Whether it is enough is asked now and then: asking costs as much as a term.
    const until = Math.min(i + 12, length);
    for (; i < until; i++) {
      const off = u8(a, i) - u8(b, i);
      sum += off * off;
    }
    if (sum >= enough) return sum;
  }
  return sum;
}

/** A descriptor as text, two hex digits a number. */
export function descriptorText(descriptor: Descriptor): string {
  let text = '';
  for (const value of descriptor) text += value.toString(16).padStart(2, '0');
  return text;
}

/** The descriptor of a text, or null when it is none (another version's, or broken). */
export function descriptorOfText(text: string): Descriptor | null {
  const known = [DESCRIPTOR_LENGTH, DESCRIPTOR_LENGTH + COMPOSITION_LENGTH].includes(text.length / 2);
  if (!known || !/^[0-9a-f]*$/.test(text)) return null;
  return Uint8Array.from({ length: text.length / 2 }, (_, i) => Number.parseInt(text.slice(i * 2, i * 2 + 2), 16));
}
