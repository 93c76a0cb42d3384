import { entryAt } from '../../base/at.ts';
import { cutRings, normalise, subtractRings, unionOutlines } from '../../geometry/booleans.ts';
import { grownRings } from '../../geometry/offset.ts';
import { boxHolds, ringParts } from '../../geometry/parts.ts';
import { ringArea, shapeBounds } from '../../geometry/rings.ts';
import type { Box, Outline } from '../../geometry/types.ts';
import { WorkBudget } from '../../geometry/work.ts';

/** A part of a screen that is narrower than is asked. */
export interface ThinPlace {
  /** 'line' is open to ink, 'gap' is stencil between such parts. */
  kind: 'line' | 'gap';
  /** Its outline, sheet mm. */
  rings: Float64Array[];
  box: Box;
  /** Where it is widest, mm: the largest disc that fits in. */
  widthMm: number;
}

/** What is looked for, mm. */
export interface ThinAsked {
  lineMm: number;
  gapMm: number;
}

/** Thin places of a screen, the longest first. */
export interface ThinFound {
  places: ThinPlace[];
  /** How many there are in all. */
  lines: number;
  gaps: number;
}

/**
 * Corners lose their tips too. A part counts where it reaches farther from what stays than so many halves of the width:
 * any that joins two places or stands alone (spares corners of 84° and more), or one that hangs on one place (39°).
 */
const TIP = { joining: 0.5, alone: 2 } as const;
/** Edges that were moved there and back lie so near where they were, mm; such hairs would join places that lie apart. */
const HAIR_MM = 0.004;
/** Places told apart; more make a list that nobody reads. */
const MOST_PLACES = 200;
/** How finely the width of a place is told, as a share of what is asked. */
const HALVINGS = 6;

/**
 * Where a screen is narrower than a least width: what no disc of that diameter reaches inside the outlines (their
 * morphological opening), and between them (closing). Exact on the boolean grid, the same every time.
 * @throws EngineError 'geometry.too-much-work' when the outlines have too many corners for it
 * Source: Serra (1982), Image Analysis and Mathematical Morphology, ch. II (opening and closing), from memory.
 */
export function thinPlaces(outline: Outline, { lineMm, gapMm }: ThinAsked): ThinFound {
  const budget = new WorkBudget(4e8);
  const rings = normalise(outline, budget);
  const lines = lineMm > 0 ? thinParts(rings, lineMm / 2, budget) : [];
  const gaps = gapMm > 0 ? thinParts(between(rings, gapMm / 2, budget), gapMm / 2, budget) : [];
  const long = ({ widthMm, heightMm }: Box): number => Math.hypot(widthMm, heightMm);
  const all = [...lines.map((part) => ({ kind: 'line' as const, part })), ...gaps.map((part) => ({ kind: 'gap' as const, part }))]
    .map(({ kind, part }) => ({ kind, rings: part, box: shapeBounds(part) }))
    .sort((a, b) => long(b.box) - long(a.box) || a.box.yMm - b.box.yMm || a.box.xMm - b.box.xMm);
  const places = all
    .slice(0, MOST_PLACES)
    .map((place) => ({ ...place, widthMm: widest(place.rings, place.kind === 'line' ? lineMm : gapMm, budget) }));
  return { places, lines: lines.length, gaps: gaps.length };
}

/** Parts of an area that a disc does not reach, but for the tips of corners. */
function thinParts(area: Float64Array[], half: number, budget: WorkBudget): Float64Array[][] {
  const stays = grownRings(grownRings(area, -half, budget), half, budget);
  const lost = ringParts(subtractRings(area, grownRings(stays, HAIR_MM, budget), budget));
  const beyond = (tip: number): Float64Array[] => subtractRings(lost.flat(), grownRings(stays, tip * half, budget), budget);
  const long = partsWith(lost, beyond(TIP.alone), budget);
  const short = partsWith(lost, beyond(TIP.joining), budget).filter((part) => !long.includes(part));
  // What joins two places is a bridge, what touches none a speck, however short; a tip touches one.
  const contacts = contactsOf(short, stays, budget);
  return [...long, ...short.filter((_, i) => contacts[i] !== 1)];
}

/** At how many places each part touches an area beside it. */
function contactsOf(parts: Float64Array[][], area: Float64Array[], budget: WorkBudget): number[] {
  const about = parts.map((part) => grownRings(part, 4 * HAIR_MM, budget));
  const boxes = about.map((rings) => shapeBounds(rings));
  const counts = parts.map(() => 0);
  // All at once: one cut of a large area for each part would take minutes.
  for (const contact of cutRings(unionOutlines([{ rings: about.flat(), fillRule: 'nonzero' }], budget), area, budget)) {
    if (ringArea(contact) <= 0) continue;
    const at = holderOf(contact, about, boxes, budget);
    if (at !== undefined) counts[at] = (counts[at] ?? 0) + 1;
  }
  return counts;
}

/** Index of the part that a ring lies in. */
function holderOf(ring: Float64Array, parts: readonly Float64Array[][], boxes: readonly Box[], budget: WorkBudget): number | undefined {
  const box = shapeBounds([ring]);
  const near = boxes.flatMap((other, i) => (boxHolds(other, box) ? [i] : []));
  return near.length === 1 ? near[0] : near.find((i) => cutRings([ring], entryAt(parts, i), budget).length > 0);
}

/** What lies between rings, with room about them in which nothing is narrow. */
function between(rings: Float64Array[], half: number, budget: WorkBudget): Float64Array[] {
  if (rings.length === 0) return [];
  const { xMm, yMm, widthMm, heightMm } = shapeBounds(rings);
  const room = 8 * half + 1;
  const box = [
    xMm - room,
    yMm - room,
    xMm + widthMm + room,
    yMm - room,
    xMm + widthMm + room,
    yMm + heightMm + room,
    xMm - room,
    yMm + heightMm + room,
  ];
  return subtractRings([box], rings, budget);
}

/** Those parts that hold some of an area that lies within them. */
function partsWith(parts: Float64Array[][], marks: Float64Array[], budget: WorkBudget): Float64Array[][] {
  const boxes = parts.map((part) => shapeBounds(part));
  const kept = new Set<number>();
  for (const mark of marks) {
    if (ringArea(mark) <= 0) continue;
    const found = holderOf(mark, parts, boxes, budget);
    if (found !== undefined) kept.add(found);
  }
  return parts.filter((_, i) => kept.has(i));
}

/** Diameter of the largest disc that fits in, by halving, mm; less than `mostMm`. */
function widest(part: Float64Array[], mostMm: number, budget: WorkBudget): number {
  let [least, most] = [0, mostMm];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (least + most) / 2;
    if (grownRings(part, -middle / 2, budget).length > 0) least = middle;
    else most = middle;
  }
  return (least + most) / 2;
}
