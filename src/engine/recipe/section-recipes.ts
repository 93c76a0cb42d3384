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

/** The lays of a recipe in the order in which they are first pulled, and for each pull which it is of and how it lies. */
interface Laid {
  lays: Lay[];
  pulls: (Move & { pull: Pull; lay: Lay })[];
}

/**
 * A print cut along lines: each section a print of its own, on its own sheet and with stencils of its own, so
 * that it has its own films, set-ups and pull order. Laid edge on edge the sections show what the whole shows.
 * A pull that prints nothing on a section is not in it, and a section that nothing prints on is left out.
 * A turn is about the middle of the whole sheet, so turned stencils are drawn as they lie.
 * @param idOf gives the id of a section's recipe
 * @throws EngineError as `sectionsOf`, 'section.long' for a strip that no recipe can have, 'section.one' without a cut,
 *   'geometry.too-much-work'
 */
export function sectionRecipes(recipe: Recipe, cuts: SheetCuts, idOf: (section: number) => string): Recipe[] {
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
  const drawn = new Map(laid.lays.map((lay) => [lay, drawnOn(lay, recipe)]));
  return sections.flatMap(
    (section) => sectionRecipe(recipe, { section, of: sections.length, laid, drawn, id: idOf(section.number) }) ?? [],
  );
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

function sectionRecipe(
  recipe: Recipe,
  { section, of, laid, drawn, id }: { section: Section; of: number; laid: Laid; drawn: ReadonlyMap<Lay, Float64Array[]>; id: string },
): Recipe | null {
  const printed = laid.pulls.filter(({ lay, ...move }) => prints(drawn.get(lay) ?? [], movedBack(section.box, move)));
  const stencils = new Map<Lay, { screen: Screen; shape: Shape }>();
  let free = Math.max(...recipe.screens.map(({ number }) => number)) + 1;
  for (const lay of new Set(printed.map((each) => each.lay))) {
    const moves = printed.filter((each) => each.lay === lay);
    const shape = cutShape(drawn.get(lay) ?? [], moves, recipe, section);
    const again = [...stencils.keys()].some(({ screen }) => screen === lay.screen);
    stencils.set(lay, stencilOf(lay, { shape, number: again ? free++ : lay.screen.number, at: stencils.size + 1, section }));
  }
  const pulls = printed.map(({ pull, lay, dxMm, dyMm }): Pull => {
    const { screen } = defined(stencils.get(lay));
    return { ...pull, screen: screen.id, dxMm, dyMm, turnDeg: 0 };
  });
  if (pulls.length === 0) return null;
  const inked = new Set(pulls.map(({ ink }) => ink));
  const weighed = new Set(recipe.inks.flatMap((ink) => (inked.has(ink.id) ? (ink.mix ?? []).map((part) => part.ink) : [])));
  const { lineage: _, ...rest } = recipe;
  return {
    ...rest,
    id,
    title: cutText(say.sectionOf(recipe.title, section.number, of), LONGEST_NAME),
    note: cutText([placeWords(section, recipe), recipe.note].filter((part) => part !== '').join('\n'), LONGEST_NOTE),
    seed: '',
    index: -1,
    parent: recipe.id,
    paper: sectionPaper(recipe.paper, section.box),
    shapes: [...stencils.values()].map(({ shape }) => shape),
    screens: [...stencils.values()].map(({ screen }) => screen),
    inks: recipe.inks.filter((ink) => inked.has(ink.id) || weighed.has(ink.id)),
    pulls,
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

function stencilOf(
  { screen, base }: Lay,
  { shape, number, at, section }: { shape: Omit<Shape, 'id' | 'name'>; number: number; at: number; section: Section },
): { screen: Screen; shape: Shape } {
  const id = `section-${section.number}-stencil-${at}`;
  const { xMm, yMm, widthMm, heightMm } = shapeBounds(shape.rings);
  const turned = base.turnDeg === 0 ? '' : say.turned(roundTo(base.turnDeg, 1));
  const name = cutText(say.section(screen.name, turned, section.number), LONGEST_NAME);
  return {
    shape: { id, name, ...shape },
    screen: {
      id,
      number,
      name,
      placed: [{ shape: id, xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2, turnDeg: 0, scale: 1 }],
      mesh: screen.mesh,
    },
  };
}

function placeWords({ box, words }: Section, { title }: Recipe): string {
  const [x, y] = [roundTo(box.xMm, 1), roundTo(box.yMm, 1)];
  const place = say.toMmFromIts(x, roundTo(box.xMm + box.widthMm, 1), y, roundTo(box.yMm + box.heightMm, 1));
  return say.cutOf(cutText(title), words, place);
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
