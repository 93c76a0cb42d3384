import { num } from '../base/at.ts';
import { roundTo } from '../base/units.ts';
import { simplifyRing } from '../geometry/simplify.ts';
import type { Ink } from '../ink/types.ts';
import { screenRings } from '../shapes/place/placed.ts';
import type { Screen } from '../shapes/types.ts';
import type { Studio } from '../studio/studio.ts';
import type { GoalKind } from './goal-kinds.ts';
import type { LessonSheet } from './lesson-sheet.ts';
import { type PackedLesson, PAPER_STEPS } from './packed-schema.ts';
import { deltas, lettersOf, packCurve } from './packed-steps.ts';

/** A lesson as it is given to others: the sheet, and what is to be done on it. */
export interface GivenLesson {
  sheet: LessonSheet;
  goal: GoalKind | null;
}

/**
 * A lesson in few signs.
 * @param toleranceMm how far an outline may stray from its own
 * @throws EngineError as screenRings
 */
export function packLesson({ sheet, goal }: GivenLesson, toleranceMm: number): PackedLesson {
  const { studio, pulls, limits } = sheet;
  const screens = used(studio.screens, pulls.map(({ screen }) => screen)); // oxfmt-ignore
  const inks = used(studio.inks, pulls.map(({ ink }) => ink)); // oxfmt-ignore
  const grid = Math.max(0.05, roundTo(toleranceMm / 2, 2));
  const { paper, surface, strokeGain } = studio;
  const trapping = trappingOf(studio, inks);
  return {
    version: 1,
    title: sheet.title,
    goal,
    limits: [limits.minDeltaE, limits.minAreaMm2],
    grid,
    paper: {
      size: [paper.widthMm, paper.heightMm],
      reflectance: lettersOf(deltas(paper.reflectance.map((r) => Math.round(r * PAPER_STEPS)))),
      strokeGain,
      ...(surface === undefined ? {} : { surface }),
      ...(trapping === undefined ? {} : { trapping }),
    },
    inks: inks.map((ink) => {
      const opacity = sheet.inks.find((change) => change.ink === ink.id)?.opacity ?? 0;
      const packed = { name: ink.name, basis: ink.basis, kx: packCurve(ink.kx), sx: packCurve(ink.sx) };
      return { ...packed, ...(ink.mesh === undefined ? {} : { mesh: ink.mesh }), ...(opacity === 0 ? {} : { opacity }) };
    }),
    screens: screens.map((screen) => packScreen(screen, studio, toleranceMm, grid)),
    pulls: pulls.map(({ screen, ink, dxMm, dyMm, turnDeg, strokes }) => [
      screens.findIndex(({ id }) => id === screen),
      inks.findIndex(({ id }) => id === ink),
      Math.round(dxMm * 10),
      Math.round(dyMm * 10),
      turnDeg,
      strokes,
    ]),
  };
}

function used<T extends { id: string }>(all: readonly T[], ids: readonly string[]): T[] {
  return all.filter(({ id }) => ids.includes(id));
}

/** Pairs of inks with a trapping of their own, those of the lesson by their new names. */
function trappingOf({ trapping }: Studio, inks: readonly Ink[]): Studio['trapping'] {
  if (trapping?.pairs === undefined) return trapping;
  const at = (id: string): number => inks.findIndex((ink) => ink.id === id);
  const pairs = trapping.pairs
    .filter(({ under, over }) => at(under) >= 0 && at(over) >= 0)
    .map(({ under, over, factor }) => ({ under: inkId(at(under)), over: inkId(at(over)), factor }));
  return { factor: trapping.factor, ...(pairs.length === 0 ? {} : { pairs }) };
}

function packScreen(screen: Screen, { shapes }: Studio, toleranceMm: number, grid: number): PackedLesson['screens'][number] {
  const outline = screenRings(screen, shapes);
  const rings = outline.rings
    .map((ring) => simplifyRing(ring, toleranceMm / 2).map((mm) => Math.round(mm / grid)))
    .filter((ring) => ring.length >= 6)
    .map((ring) => lettersOf(ring.map((value, i) => value - (i < 2 ? 0 : num(ring, i - 2)))));
  return { number: screen.number, name: screen.name, mesh: screen.mesh, rule: outline.fillRule, rings };
}

/** What a lesson that was given calls its inks. */
export function inkId(at: number): string {
  return `ink${at + 1}`;
}
