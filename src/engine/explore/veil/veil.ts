import { defined, entryAt, f64, i32, num, u32 } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { deltaE2000Values } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import { filmFactor } from '../../ink/film/film-factor.ts';
import { cellLab } from '../../stack/appearance.ts';
import { buildCellMap } from '../../stack/cell-map.ts';
import { stackLayers } from '../../stack/layers.ts';
import { placedSpans } from '../../stack/screen-spans.ts';
import type { CellMap, Pull, RowGrid, Stack } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { edgeMeasure } from '../measure/edges.ts';
import { colourAreas, measureVariant, SAME_COLOUR_DELTA_E } from '../measure/measures.ts';
import { pullSwatches } from '../measure/overprint-colours.ts';
import { freeId, veilAreas, type VeilArea } from './veil-areas.ts';
import { isTranslucent, veilInks, type VeilInk } from './veil-inks.ts';
import type { VeilOptions, VeilProposal, VeilResult } from './veil-types.ts';

/** Colours that differ by less in L have no lightness order to keep. */
const ORDERED_L = 2;
/** A lightness order is kept when so much of a difference in L is left, just visible. */
const KEPT_L = 1;
/** A veil softens when it takes away at least this share of the contrast of edges. */
const LEAST_SOFTER = 0.01;
/** Proposals differ from each other by this ΔE00 in the mean over the sheet, or by less when too few do. */
const APART_DELTA_E = [4, 2, 1, 0.5];
/** Small areas change the mean little, so one area takes at most this share while others have veils. */
const MOST_OF_AREA = 0.5;
/** Points at which pictures are compared. */
const POINTS = { across: 24, down: 32 };

interface Candidate {
  area: number;
  ink: VeilInk;
  pulls: Pull[];
  at: number;
  edgeContrast: number;
  lab: Float64Array;
}

/** An area with the map of the stack and it, and what the stack shows there without a veil. */
interface Ground extends VeilArea {
  studio: Studio;
  map: CellMap;
  mapStack: Stack;
  veil: Pull;
  /** The large colour of each cell, −1 for none. */
  colourOf: Int32Array;
  /** Cell at each of the points. */
  points: Uint32Array;
}

/**
 * Translucent pulls that soften a print: of every ink let down, over every area, those that lower
 * the contrast of edges (edge length × ΔE00) most while the largest colours keep their lightness order, each
 * with at least ΔL 1 left between two that differed by ΔL 2.
 * @param stack the pulls, first down first, at least one
 * @yields the share of the work that is done, a few milliseconds apart
 * @returns proposals that differ to the eye, softest first; none when no veil softens the print
 * @throws EngineError 'veil.empty-stack', 'veil.unknown-ink', 'veil.unknown-screen', 'veil.letdown',
 *   'veil.option', and what stackLayers and placedSpans throw
 */
export function* veils(stack: Stack, studio: Studio, options: VeilOptions = {}): Generator<number, VeilResult> {
  const { count = 6, largest = 6, rows = 256, places = 'end' } = options;
  for (const [what, value] of [
    ['proposals', count],
    ['colours', largest],
    ['rows', rows],
  ] as const) {
    if (!(Number.isInteger(value) && value >= 1 && value <= 4096)) {
      throw new EngineError('veil.option', `The number of ${what} is ${value}; give a whole number of 1 or more.`);
    }
  }
  if (stack.pulls.length === 0) {
    throw new EngineError('veil.empty-stack', 'The stack has no pulls to lay a veil over; put one on the Bench first.');
  }
  const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows };
  const paper = studio.paper.reflectance;
  const map = buildCellMap(placedSpans(stack, studio, grid), grid);
  const lab = cellLab(map, stackLayers(stack, studio), paper);
  const before = measureVariant(map, lab, swatches(stack, studio));
  const colours = colourAreas(map, lab).slice(0, largest);

  const inks = veilInks(studio, options);
  const areas = veilAreas(studio, options);
  const slots = places === 'any' ? stack.pulls.map((_, i) => i).concat(stack.pulls.length) : [stack.pulls.length];
  const total = areas.length * inks.length * slots.length;
  const grounds: Ground[] = [];
  const found: Candidate[] = [];
  let tried = 0;
  let seen = 0;
  for (const [area, each] of areas.entries()) {
    const ground = groundOf(each, { stack, studio, inks, grid, colours });
    grounds.push(ground);
    for (const ink of inks) {
      seen += slots.length;
      if (!isTranslucent(ink.ink, filmFactor(ink.ink, each.screen.mesh))) continue;
      for (const at of slots) {
        const veil = { ...ground.veil, ink: ink.ink.id };
        const pulls = [...stack.pulls.slice(0, at), veil, ...stack.pulls.slice(at)];
        const shown = cellLab(ground.map, stackLayers({ pulls }, ground.studio, ground.mapStack), paper);
        tried++;
        yield (seen - slots.length + at / stack.pulls.length) / total;
        if (!keepsOrder(ground, shown, colours)) continue;
        const edgeContrast = edgeMeasure(ground.map, shown).contrast / (grid.widthMm * grid.heightMm);
        if (edgeContrast > before.edgeContrast * (1 - LEAST_SOFTER)) continue;
        found.push({ area, ink, pulls, at, edgeContrast, lab: pointLab(ground, shown) });
      }
    }
  }
  found.sort((a, b) => a.edgeContrast - b.edgeContrast);
  const proposals = spread(found, count).map((candidate) => proposalOf(candidate, entryAt(grounds, candidate.area), before.edgeContrast));
  return { before, proposals, tried, kept: found.length };
}

/** The print that veils are tried on. */
interface Bare {
  stack: Stack;
  studio: Studio;
  inks: readonly VeilInk[];
  grid: RowGrid;
  /** Its largest colours. */
  colours: readonly { lab: readonly number[] }[];
}

function groundOf(area: VeilArea, { stack, studio, inks, grid, colours }: Bare): Ground {
  const extended: Studio = {
    ...studio,
    shapes: area.newShape === null ? studio.shapes : [...studio.shapes, area.newShape],
    screens: studio.screens.includes(area.screen) ? studio.screens : [...studio.screens, area.screen],
    inks: [...studio.inks, ...inks.flatMap(({ newInks }) => newInks)],
  };
  const veil: Pull = {
    id: freeId('veil', stack.pulls),
    screen: area.screen.id,
    ink: inks[0]?.ink.id ?? '',
    dxMm: 0,
    dyMm: 0,
    turnDeg: 0,
    strokes: 1,
  };
  const mapStack = { pulls: [...stack.pulls, veil] };
  const map = buildCellMap(placedSpans(mapStack, extended, grid), grid);
  const bare = cellLab(map, stackLayers(stack, extended, mapStack), studio.paper.reflectance);
  const isColour = (cell: number, [l = 0, a = 0, b = 0]: readonly number[]): boolean =>
    deltaE2000Values(f64(bare, cell * 3), f64(bare, cell * 3 + 1), f64(bare, cell * 3 + 2), l, a, b) <= SAME_COLOUR_DELTA_E;
  const colourOf = Int32Array.from({ length: map.cells }, (_, cell) => colours.findIndex(({ lab }) => isColour(cell, lab)));
  return { ...area, studio: extended, map, mapStack, veil, colourOf, points: pointCells(map) };
}

/** Whether the large colours, each in the mean over all that it took before the veil, keep their order of L. */
function keepsOrder(ground: Ground, lab: Float64Array, colours: readonly { lab: readonly number[] }[]): boolean {
  const area = new Float64Array(colours.length);
  const sum = new Float64Array(colours.length);
  const { map, colourOf } = ground;
  for (let cell = 0; cell < map.cells; cell++) {
    const colour = i32(colourOf, cell);
    if (colour < 0) continue;
    area[colour] = f64(area, colour) + f64(map.areaMm2, cell);
    sum[colour] = f64(sum, colour) + f64(map.areaMm2, cell) * f64(lab, cell * 3);
  }
  for (let a = 0; a < colours.length; a++) {
    for (let b = 0; b < colours.length; b++) {
      if (!(num(entryAt(colours, a).lab, 0) - num(entryAt(colours, b).lab, 0) >= ORDERED_L)) continue;
      if (f64(area, a) > 0 && f64(area, b) > 0 && f64(sum, a) / f64(area, a) - f64(sum, b) / f64(area, b) < KEPT_L) return false;
    }
  }
  return true;
}

/** The softest that differ from each other to the eye and in area, as far as there are enough. */
function spread(sorted: readonly Candidate[], count: number): Candidate[] {
  const chosen: Candidate[] = [];
  const take = (apart: number, mostOfArea: number): void => {
    for (const candidate of sorted) {
      if (chosen.length >= count) return;
      if (chosen.filter(({ area }) => area === candidate.area).length >= mostOfArea) continue;
      if (chosen.every((other) => meanDifference(other.lab, candidate.lab) >= apart)) chosen.push(candidate);
    }
  };
  for (const apart of APART_DELTA_E) take(apart, Math.ceil(count * MOST_OF_AREA));
  take(defined(APART_DELTA_E.at(-1)), count);
  return chosen.sort((a, b) => a.edgeContrast - b.edgeContrast);
}

function proposalOf(candidate: Candidate, ground: Ground, edgeContrast: number): VeilProposal {
  const { ink, pulls, at } = candidate;
  const stack = { pulls };
  const shown = cellLab(ground.map, stackLayers(stack, ground.studio, ground.mapStack), ground.studio.paper.reflectance);
  const after = measureVariant(ground.map, shown, swatches(stack, ground.studio));
  return {
    pulls,
    veil: entryAt(pulls, at),
    at,
    ink: ink.ink,
    from: ink.from,
    parts: ink.parts,
    newInks: ink.newInks,
    newShape: ground.newShape,
    newScreen: ground.newShape === null ? null : ground.screen,
    after,
    softens: 1 - after.edgeContrast / edgeContrast,
  };
}

/** Lab of the paper and of each pull alone on it. */
function swatches(stack: Stack, studio: Studio): Lab[] {
  return pullSwatches(
    stackLayers(stack, studio).map(({ film }) => film),
    studio.paper.reflectance,
  );
}

function pointCells(map: CellMap): Uint32Array {
  const cells = new Uint32Array(POINTS.across * POINTS.down);
  for (let y = 0; y < POINTS.down; y++) {
    let run = u32(map.rowStart, Math.floor(((y + 0.5) * map.rows) / POINTS.down));
    for (let x = 0; x < POINTS.across; x++) {
      while (f64(map.runEndMm, run) < ((x + 0.5) * map.widthMm) / POINTS.across) run++;
      cells[y * POINTS.across + x] = u32(map.runCell, run);
    }
  }
  return cells;
}

function pointLab(ground: Ground, lab: Float64Array): Float64Array {
  const out = new Float64Array(ground.points.length * 3);
  ground.points.forEach((cell, i) => out.set(lab.subarray(cell * 3, cell * 3 + 3), i * 3));
  return out;
}

function meanDifference(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at += 3) {
    sum += deltaE2000Values(f64(a, at), f64(a, at + 1), f64(a, at + 2), f64(b, at), f64(b, at + 1), f64(b, at + 2));
  }
  return sum / (a.length / 3);
}
