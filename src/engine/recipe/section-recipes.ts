import { defined, num } from '../base/at.ts';
import { cutText } from '../base/bounds.ts';
import { EngineError } from '../base/error.ts';
import { LONGEST_NAME, LONGEST_NOTE, PAPER_PROPORTION } from '../base/limits.ts';
import { roundTo, toOffsetGrid } from '../base/units.ts';
import { cutRings, normalise } from '../geometry/booleans.ts';
import { mapRings, ringArea, shapeBounds } from '../geometry/rings.ts';
import type { Box } from '../geometry/types.ts';
import { WorkBudget } from '../geometry/work.ts';
import { boxRing } from '../output/film/page.ts';
import { outerBox, type Section, sectionsOf, type SheetCuts } from '../output/film/sections.ts';
import { screenOutline, screenRings, type ScreenOffset } from '../shapes/place/placed.ts';
import type { Screen, Shape } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import { say } from '../words/en/recipe/recipe.ts';
import type { Recipe } from './types.ts';

/** Pulls farther apart than this have stencils of their own, so that no film reaches far beyond its section, mm. */
const SHARED_MM = 40;
/** Finer than what the clipper keeps of an outline, mm. */
const DIGITS = 4;
/** Less of a pull on a section is no reason for a stencil, mm². */
const DUST_MM2 = 0.01;
const WELL_IN_MM = 0.2;

/** How a pull lies from where its stencil was drawn, mm. */
interface Move {
  dxMm: number;
  dyMm: number;
}

/** A stencil as some pulls of its screen lay it: what is drawn on it already turned and moved as `base` says. */
interface Lay {
  screen: Screen;
  base: ScreenOffset;
}

interface LaidPull extends Move {
  pull: Pull;
  lay: Lay;
}

/** The lays of a recipe in the order in which they are first pulled, and for each pull which it is of and how it lies. */
interface Laid {
  lays: Lay[];
  pulls: LaidPull[];
}

/** A section, of how many, and what of the whole its stencils are cut from. */
interface Cutting {
  section: Section;
  of: number;
  overlapMm: number;
  laid: Laid;
  drawn: ReadonlyMap<Lay, Float64Array[]>;
  id: string;
}

/**
 * A print cut along lines: each section a print of its own, on its own sheet and with stencils of its own, so
 * that it has its own films, set-ups and pull order. Laid edge on edge, or joint on joint where they overlap, the
 * sections show what the whole shows.
 * A pull that prints nothing on a section is not in it, and a section that nothing prints on is left out.
 * A turn is about the middle of the whole sheet, so turned stencils are drawn as they lie.
 * @param idOf gives the id of a section's recipe
 * @yields the share that is done, 0–1
 * @throws EngineError as `sectionsOf`, 'section.long' for a strip that no recipe can have, 'section.one' without a cut,
 *   'geometry.too-much-work'
 */
export function* sectionRecipes(recipe: Recipe, cuts: SheetCuts, idOf: (section: number) => string): Generator<number, Recipe[]> {
  const sections = sectionsOf(recipe.paper, cuts);
  if (sections.length === 1) {
    throw new EngineError('section.one', say.withoutCutPrintIs);
  }
  const long = sections.find(({ box }) => Math.max(box.widthMm, box.heightMm) > PAPER_PROPORTION * Math.min(box.widthMm, box.heightMm));
  if (long !== undefined) {
    throw new EngineError(
      'section.long',
      say.sectionWouldBeMm(long.number, roundTo(long.box.widthMm, 1), roundTo(long.box.heightMm, 1), PAPER_PROPORTION),
    );
  }
  const laid = laysOf(recipe);
  const drawn = new Map<Lay, Float64Array[]>();
  const steps = laid.pulls.length + laid.lays.length;
  const all = laid.lays.length + sections.length * steps;
  for (const lay of laid.lays) {
    drawn.set(lay, drawnOn(lay, recipe));
    yield drawn.size / all;
  }
  const found: Recipe[] = [];
  for (const [i, section] of sections.entries()) {
    let done = laid.lays.length + i * steps;
    const { overlapMm = 0 } = cuts;
    const cutting = sectionRecipe(recipe, { section, of: sections.length, overlapMm, laid, drawn, id: idOf(section.number) });
    let step = cutting.next();
    for (; step.done !== true; step = cutting.next()) yield ++done / all;
    if (step.value !== null) found.push(step.value);
  }
  return found;
}

function laysOf({ pulls, screens }: Recipe): Laid {
  const laid: Laid = { lays: [], pulls: [] };
  for (const pull of pulls) {
    const screen = screens.find(({ id }) => id === pull.screen);
    if (screen === undefined) continue;
    let lay = laid.lays.find((each) => each.screen === screen && near(each.base, pull));
    if (lay === undefined) {
      const still = { dxMm: 0, dyMm: 0, turnDeg: 0 };
      const { dxMm, dyMm, turnDeg } = pull;
      lay = { screen, base: near(still, pull) ? still : { dxMm, dyMm, turnDeg } };
      laid.lays.push(lay);
    }
    laid.pulls.push({ pull, lay, dxMm: toOffsetGrid(pull.dxMm - lay.base.dxMm), dyMm: toOffsetGrid(pull.dyMm - lay.base.dyMm) });
  }
  return laid;
}

function near(base: ScreenOffset, pull: ScreenOffset): boolean {
  return base.turnDeg === pull.turnDeg && Math.max(Math.abs(pull.dxMm - base.dxMm), Math.abs(pull.dyMm - base.dyMm)) <= SHARED_MM;
}

/** What a lay's stencil carries, mm on the whole sheet. */
function drawnOn({ screen, base }: Lay, { shapes, paper }: Recipe): Float64Array[] {
  return normalise(screenOutline(screenRings(screen, shapes), base, paper));
}

/** The recipe of a section, null where nothing prints; a step for each pull that is looked at and each stencil that is cut. */
function* sectionRecipe(recipe: Recipe, cutting: Cutting): Generator<void, Recipe | null> {
  const { section, laid, drawn } = cutting;
  const printed: LaidPull[] = [];
  for (const each of laid.pulls) {
    if (prints(drawn.get(each.lay) ?? [], movedBack(section.box, each))) printed.push(each);
    yield;
  }
  if (printed.length === 0) return null;
  const stencils = new Map<Lay, { screen: Screen; shape: Shape }>();
  for (const lay of new Set(printed.map((each) => each.lay))) {
    const moves = printed.filter((each) => each.lay === lay);
    const shape = cutShape(drawn.get(lay) ?? [], moves, recipe, section);
    stencils.set(lay, stencilOf(lay, { shape, at: stencils.size + 1, cutting }));
    yield;
  }
  const pulls = printed.map(({ pull, lay, dxMm, dyMm }): Pull => {
    const { screen } = defined(stencils.get(lay));
    return { ...pull, screen: screen.id, dxMm, dyMm, turnDeg: 0 };
  });
  return { ...headOf(recipe, cutting, pulls), pulls, ...stencilsOf([...stencils.values()]) };
}

function stencilsOf(all: readonly { screen: Screen; shape: Shape }[]): Pick<Recipe, 'shapes' | 'screens'> {
  return { shapes: all.map(({ shape }) => shape), screens: all.map(({ screen }) => screen) };
}

/** All of a section's recipe but its stack and stencils. */
function headOf(recipe: Recipe, { section, of, overlapMm, id }: Cutting, pulls: readonly Pull[]): Omit<Recipe, 'shapes' | 'screens'> {
  const inked = new Set(pulls.map(({ ink }) => ink));
  const weighed = new Set(recipe.inks.flatMap((ink) => (inked.has(ink.id) ? (ink.mix ?? []).map((part) => part.ink) : [])));
  const { lineage: _, joints: __, ...rest } = recipe;
  return {
    ...rest,
    id,
    title: cutText(say.sectionOf(recipe.title, section.number, of), LONGEST_NAME),
    note: cutText([placeWords(section, recipe, overlapMm), recipe.note].filter((part) => part !== '').join('\n'), LONGEST_NOTE),
    seed: '',
    index: -1,
    parent: recipe.id,
    paper: sectionPaper(recipe.paper, section.box),
    ...jointsOf(section, overlapMm, recipe.joints),
    inks: recipe.inks.filter((ink) => inked.has(ink.id) || weighed.has(ink.id)),
  };
}

/** What a pull that lies so brings into a box. */
function movedBack(box: Box, { dxMm, dyMm }: Move): Box {
  return { ...box, xMm: box.xMm - dxMm, yMm: box.yMm - dyMm };
}

/** Whether more than dust of some outlines lies in a box. */
function prints(rings: Float64Array[], box: Box): boolean {
  if (rings.length === 0) return false;
  // A corner well inside says so at once: clipping every pull of a long stack for every section takes seconds.
  if (rings.some((ring) => hasCornerIn(ring, box))) return true;
  const inside = cutRings(rings, [boxRing(box)], new WorkBudget());
  return Math.abs(inside.reduce((area, ring) => area + ringArea(ring), 0)) >= DUST_MM2;
}

function hasCornerIn(ring: Float64Array, { xMm, yMm, widthMm, heightMm }: Box): boolean {
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const [x, y] = [num(ring, i) - xMm, num(ring, i + 1) - yMm];
    if (x >= WELL_IN_MM && y >= WELL_IN_MM && x <= widthMm - WELL_IN_MM && y <= heightMm - WELL_IN_MM) return true;
  }
  return false;
}

/** All of a stencil that some of its pulls bring onto a section or over the sheet's own edge there, mm from the section's corner. */
function cutShape(rings: Float64Array[], moves: readonly Move[], { paper }: Recipe, { box }: Section): Omit<Shape, 'id' | 'name'> {
  const all = shapeBounds(rings);
  const beyond = Math.max(all.widthMm, all.heightMm) + Math.max(Math.abs(all.xMm), Math.abs(all.yMm)) + SHARED_MM;
  const outer = outerBox(box, paper, beyond);
  const windows = moves.map((move) => boxRing(movedBack(outer, move)));
  const cut = mapRings(cutRings(rings, windows, new WorkBudget()), [1, 0, 0, 1, -box.xMm, -box.yMm]);
  const { widthMm, heightMm } = shapeBounds(cut);
  return {
    rings: cut.map((ring) => Array.from(ring, (mm) => roundTo(mm, DIGITS))),
    fillRule: 'nonzero',
    widthMm: roundTo(widthMm, DIGITS),
    heightMm: roundTo(heightMm, DIGITS),
  };
}

/** Where a section is trimmed: at its own joints, and at those of a whole that was itself a section. */
function jointsOf({ box, joints }: Section, overlapMm: number, whole: Recipe['joints']): Pick<Recipe, 'joints'> {
  const inside = (all: readonly number[], from: number, side: number): number[] =>
    all.map((mm) => mm - from).filter((mm) => mm > 0 && mm < side);
  const acrossMm = [...joints.acrossMm, ...inside(whole?.acrossMm ?? [], box.xMm, box.widthMm)];
  const downMm = [...joints.downMm, ...inside(whole?.downMm ?? [], box.yMm, box.heightMm)];
  return overlapMm === 0 && whole === undefined ? {} : { joints: { acrossMm, downMm } };
}

function stencilOf(
  lay: Lay,
  { shape, at, cutting: { section, of, laid } }: { shape: Omit<Shape, 'id' | 'name'>; at: number; cutting: Cutting },
): { screen: Screen; shape: Shape } {
  const { screen } = lay;
  const id = `section-${section.number}-stencil-${at}`;
  const { xMm, yMm, widthMm, heightMm } = shapeBounds(shape.rings);
  // With the number of the whole's screen it says which of them this is a part of.
  const name = cutText(say.sectionOf([screen.name, ...layWords(lay, laid)].join(', '), section.number, of), LONGEST_NAME);
  return {
    shape: { id, name, ...shape },
    screen: {
      id,
      number: screen.number,
      name,
      placed: [{ shape: id, xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2, turnDeg: 0, scale: 1 }],
      mesh: screen.mesh,
    },
  };
}

/** That a stencil is turned, and, among several turned alike, how far it was moved. */
function layWords({ screen, base }: Lay, { lays }: Laid): string[] {
  const { dxMm, dyMm, turnDeg } = base;
  const alike = lays.filter((other) => other.screen === screen && other.base.turnDeg === turnDeg);
  const turned = turnDeg === 0 ? [] : [say.turned(roundTo(turnDeg, 1))];
  if (alike.length < 2 || (dxMm === 0 && dyMm === 0)) return turned;
  return [...turned, say.moved(roundTo(dxMm, 1), roundTo(dyMm, 1))];
}

function placeWords({ box, words }: Section, { title }: Recipe, overlapMm: number): string {
  const [x, y] = [roundTo(box.xMm, 1), roundTo(box.yMm, 1)];
  const place = say.toMmFromIts(x, roundTo(box.xMm + box.widthMm, 1), y, roundTo(box.yMm + box.heightMm, 1));
  const joint = overlapMm === 0 ? '' : ` ${say.sharesWithEachNeighbour(roundTo(overlapMm, 2))}`;
  return `${say.cutOf(cutText(title), words, place)}${joint}`;
}

/** The paper of a section; where all of it lies in the margin of the whole, as printable as any. */
function sectionPaper(paper: Recipe['paper'], box: Box): Recipe['paper'] {
  const { printable } = paper;
  const left = Math.max(0, printable.xMm - box.xMm);
  const top = Math.max(0, printable.yMm - box.yMm);
  const widthMm = Math.min(box.widthMm, printable.xMm + printable.widthMm - box.xMm) - left;
  const heightMm = Math.min(box.heightMm, printable.yMm + printable.heightMm - box.yMm) - top;
  const sides = { widthMm: box.widthMm, heightMm: box.heightMm };
  const inside = widthMm >= 1 && heightMm >= 1 ? { xMm: left, yMm: top, widthMm, heightMm } : { xMm: 0, yMm: 0, ...sides };
  return { ...paper, ...sides, printable: inside };
}
