import { PLACE_MM, within } from '../base/limits.ts';
import { BANDS } from '../colour/weights.ts';
import { shapeBounds } from '../geometry/rings.ts';
import { CARD_BLACK, CARD_WHITE } from '../ink/characterise/card.ts';
import { coloursOn } from '../ink/characterise/characterise.ts';
import type { Ink } from '../ink/types.ts';
import type { Screen, Shape } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { type GivenLesson, inkId } from './packed-lesson.ts';
import { MOST_CORNERS, type PackedLesson, PAPER_STEPS } from './packed-schema.ts';
import { stepsOf, sums, unpackCurve } from './packed-steps.ts';

/** An ink says neither how it dries nor what it weighs in a lesson; common practice, no source. */
const REST = { dryMinutes: 30, densityGPerCm3: 1.15 };

/**
 * The lesson that was packed.
 * @returns null where its numbers are no lesson: a pull of a screen or ink that is not there, an outline, paper
 *   or curve beyond all bounds
 */
export function unpackLesson(packed: PackedLesson): GivenLesson | null {
  const { limits } = packed;
  const named = packed.pulls.every(([screen, ink]) => screen < packed.screens.length && ink < packed.inks.length);
  if (!named) return null;
  const studio = unpackStudio(packed);
  if (studio === null) return null;
  const inks = packed.inks.flatMap(({ opacity = 0 }, at) => (opacity === 0 ? [] : [{ ink: inkId(at), opacity }]));
  const [minDeltaE, minAreaMm2] = limits;
  const sheet = { title: packed.title, studio, pulls: packed.pulls.map(unpackPull), inks, limits: { minDeltaE, minAreaMm2 } };
  return { sheet, goal: packed.goal };
}

function unpackPull([screen, ink, dx, dy, turnDeg, strokes]: PackedLesson['pulls'][number], at: number): Pull {
  return { id: `p${at + 1}`, screen: screenId(screen), ink: inkId(ink), dxMm: dx / 10, dyMm: dy / 10, turnDeg, strokes };
}

const screenId = (at: number): string => `screen${at + 1}`;

function unpackStudio({ paper, grid, inks, screens }: PackedLesson): Studio | null {
  const [widthMm, heightMm] = paper.size;
  const { surface, trapping, strokeGain } = paper;
  const reflectance = sums(stepsOf(paper.reflectance) ?? []).map((step) => step / PAPER_STEPS);
  const curves = inks.map(({ kx, sx }) => ({ kx: unpackCurve(kx) ?? [], sx: unpackCurve(sx) ?? [] }));
  const outlines = screens.map(({ rings }) => rings.map((ring) => sums(stepsOf(ring) ?? [], 2).map((step) => step * grid)));
  const lit = reflectance.length === BANDS && reflectance.every((r) => r > 0 && r <= 1.2);
  if (!lit || !curves.every(({ kx, sx }) => isCurve(kx) && isCurve(sx)) || !areOutlines(outlines)) return null;
  return {
    shapes: screens.map(({ name, rule }, at) => shapeOf(outlines[at] ?? [], { id: screenId(at), name, fillRule: rule })),
    screens: screens.map((screen, at): Screen => {
      const box = shapeBounds(outlines[at] ?? []);
      const place = { xMm: box.xMm + box.widthMm / 2, yMm: box.yMm + box.heightMm / 2, turnDeg: 0, scale: 1 };
      return { id: screenId(at), number: screen.number, name: screen.name, placed: [{ shape: screenId(at), ...place }], mesh: screen.mesh };
    }),
    inks: inks.map(({ name, basis, mesh }, at): Ink => {
      const { kx, sx } = curves[at] ?? { kx: [], sx: [] };
      const colours = coloursOn({ kx, sx }, CARD_WHITE, CARD_BLACK, surface);
      return { id: inkId(at), name, basis, kx, sx, ...colours, ...REST, ...(mesh === undefined ? {} : { mesh }) };
    }),
    paper: { name: '', widthMm, heightMm, printable: { xMm: 0, yMm: 0, widthMm, heightMm }, reflectance },
    strokeGain,
    ...(surface === undefined ? {} : { surface }),
    ...(trapping === undefined ? {} : { trapping }),
  };
}

function isCurve(values: readonly number[]): boolean {
  return values.length === BANDS && values.every((value) => value >= 0 && value <= 1e6);
}

function areOutlines(screens: readonly (readonly (readonly number[])[])[]): boolean {
  const rings = screens.flat();
  const numbers = rings.reduce((sum, ring) => sum + ring.length, 0);
  if (numbers > 2 * MOST_CORNERS) return false;
  return rings.every((ring) => ring.length >= 6 && ring.length % 2 === 0 && ring.every((mm) => within(PLACE_MM, mm)));
}

function shapeOf(rings: number[][], named: Pick<Shape, 'id' | 'name' | 'fillRule'>): Shape {
  const { widthMm, heightMm } = shapeBounds(rings);
  return { ...named, rings, widthMm, heightMm };
}
