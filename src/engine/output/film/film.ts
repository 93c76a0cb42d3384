import { EngineError } from '../../base/error.ts';
import { roundTo } from '../../base/units.ts';
import { cutRings, normalise } from '../../geometry/booleans.ts';
import { grownRings } from '../../geometry/offset.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import type { Box } from '../../geometry/types.ts';
import { WorkBudget } from '../../geometry/work.ts';
import { screenRings } from '../../shapes/place/placed.ts';
import { say } from '../../words/en/output/film.ts';
import { MOST_SPREAD_MM } from './film-limits.ts';
import { filmLabel, LABEL_ROOM_MM } from './label.ts';
import { layLines, MARKS_ROOM_MM, registerMarks, trimMarks } from './marks.ts';
import { BAR_MM, boxRing, type Drawn, mirroredDrawn, movedDrawn, type OutPage } from './page.ts';
import { outerBox, type Section, sectionsOf } from './sections.ts';
import { tilesOf } from './tiles.ts';
import { type FilmScreen, type FilmWays, readsWrong } from './ways.ts';

/** What is printed beyond the sheet moves the marks out in such steps, mm. */
const REACH_STEP_MM = 10;
/** No page can be larger, mm: a PDF's pages end at 14,400 points. Source: ISO 32000-1, annex C. */
const MOST_PAGE_MM = 5080;
const LEAST_PAGE_MM = BAR_MM + 70;

/**
 * How far screens print beyond their sheet, in whole steps: marks stand outside it, at one place on all films.
 * @returns mm; 0 when nothing does
 * @throws EngineError as `screenRings`
 */
export function reachBeyondSheet(films: readonly FilmScreen[]): number {
  let reach = 0;
  for (const { screen, shapes, paper } of films) {
    const { rings } = screenRings(screen, shapes);
    if (rings.length === 0) continue;
    const box = shapeBounds(rings);
    reach = Math.max(reach, -box.xMm, -box.yMm, box.xMm + box.widthMm - paper.widthMm, box.yMm + box.heightMm - paper.heightMm);
  }
  return REACH_STEP_MM * Math.ceil(roundTo(reach, 3) / REACH_STEP_MM);
}

/**
 * What the emulsion of a screen is exposed through, mm on its sheet, spread or choked.
 * @throws EngineError 'film.empty' for a screen with nothing on it, 'film.spread', 'film.choked' when nothing is left,
 *   'film.too-much-work'
 */
export function filmImage(film: FilmScreen, spreadMm: number): Float64Array[] {
  const { key, screen, shapes } = film;
  const who = say.screen(key, screen.name);
  if (!(Math.abs(spreadMm) <= MOST_SPREAD_MM)) {
    throw new EngineError('film.spread', say.spreadOfMmCannot(spreadMm, -MOST_SPREAD_MM, MOST_SPREAD_MM));
  }
  const drawn = screenRings(screen, shapes);
  const rings = rightlyCounted(who, () => normalise(drawn));
  if (rings.length === 0) throw new EngineError('film.empty', say.thereIsNothingOn(who));
  if (spreadMm === 0) return rings;
  const moved = rightlyCounted(who, () => grownRings(rings, spreadMm, new WorkBudget()));
  if (moved.length > 0) return moved;
  throw new EngineError('film.choked', say.chokeOfMmLeaves(-spreadMm, who, roundTo(-2 * spreadMm, 2)));
}

function rightlyCounted<T>(who: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof EngineError && error.code === 'geometry.too-much-work')) throw error;
    throw new EngineError('film.too-much-work', say.outlinesOnHaveToo(who));
  }
}

/**
 * The pages of a screen's film positive, at their size: one, one a section of the sheet, or as many as a
 * smaller printer needs. A section on which nothing lies has no film.
 * @param reachMm as `reachBeyondSheet` gives it for all screens that are to register
 * @throws EngineError as `filmImage`, `sectionsOf` and `tilesOf`, 'film.page' for a page larger than a PDF can have
 */
export function filmPages(film: FilmScreen, ways: FilmWays, reachMm: number): OutPage[] {
  const sections = sectionsOf(film.paper, ways.cuts);
  const image = filmImage(film, ways.spreadMm);
  const pages: OutPage[] = [];
  for (const section of sections) {
    const beyond = outerBox(section.box, film.paper, reachMm + MOST_SPREAD_MM);
    const inside = sections.length === 1 ? image : cutRings(image, [boxRing(beyond)], new WorkBudget());
    if (inside.length === 0) continue;
    const page = filmPage(film, ways, { image: inside, section, reachMm });
    const named = { ...page, name: `screen ${film.key} ${film.screen.name}${sections.length === 1 ? '' : ` section ${section.number}`}` };
    pages.push(...(ways.tile === null ? [named] : tilesOf(named, ways.tile)));
  }
  return pages;
}

/** One page: the image of a section with its marks, and below them what it is and the bar. */
function filmPage(
  film: FilmScreen,
  ways: FilmWays,
  { image, section: { box, words, joints }, reachMm }: { image: Float64Array[]; section: Section; reachMm: number },
): Omit<OutPage, 'name'> {
  const edge = reachMm + MARKS_ROOM_MM;
  const widthMm = Math.max(box.widthMm + 2 * edge, LEAST_PAGE_MM);
  const heightMm = box.heightMm + 2 * edge + LABEL_ROOM_MM;
  if (Math.max(widthMm, heightMm) > MOST_PAGE_MM) {
    throw new EngineError('film.page', say.filmOfScreenWould(film.key, Math.ceil(widthMm), Math.ceil(heightMm), MOST_PAGE_MM));
  }
  const left = (widthMm - box.widthMm) / 2;
  const sheet: Box = { ...box, xMm: left, yMm: edge };
  const lays = ways.lays ? layLines(sheet, reachMm) : { lines: [], texts: [] };
  const trim = trimMarks(sheet, words === '' ? (film.joints ?? joints) : joints, reachMm);
  const label = filmLabel(film, ways, { section: words, xMm: edge, yMm: edge + box.heightMm + edge, mostMm: widthMm - 2 * edge });
  const drawn: Drawn = {
    filled: [...movedDrawn({ filled: image, lines: [], texts: [] }, left - box.xMm, edge - box.yMm).filled, ...label.filled],
    lines: [...(ways.registerMarks ? registerMarks(sheet, reachMm) : []), ...trim.lines, ...lays.lines, ...label.lines],
    texts: [...trim.texts, ...lays.texts, ...label.texts],
  };
  return { widthMm, heightMm, parts: [{ drawn: readsWrong(ways) ? mirroredDrawn(drawn, widthMm) : drawn }] };
}
