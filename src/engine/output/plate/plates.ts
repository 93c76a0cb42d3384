import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { roundTo } from '../../base/units.ts';
import { cutRings, normalise } from '../../geometry/booleans.ts';
import { grownRings } from '../../geometry/offset.ts';
import { ringParts } from '../../geometry/parts.ts';
import { mapRings, ringArea, shapeBounds } from '../../geometry/rings.ts';
import { WorkBudget } from '../../geometry/work.ts';
import { say } from '../../words/en/output/plate.ts';
import { filmImage } from '../film/film.ts';
import { boxRing } from '../film/page.ts';
import type { FilmScreen } from '../film/ways.ts';
import { thinPlaces } from '../thin/thin-places.ts';
import { withBridges } from './bridges.ts';
import { nest } from './nest.ts';
import type { CutSheet } from './plate-files.ts';

/** How plates are cut, mm. */
export interface PlateAsked {
  /** 'relief': the printed parts as pieces to glue on a block, mirrored; 'stencil': the sheet with openings cut out of it. */
  kind: 'relief' | 'stencil';
  /** Width that the cut takes away: all edges move by half of it, so that what is left has its size. */
  kerfMm: number;
  /** Whether pieces of several screens share sheets; else each screen has its own. */
  together?: boolean;
  /** What pieces are cut out of. */
  sheetWidthMm: number;
  sheetHeightMm: number;
  /** Free between pieces. */
  gapMm: number;
  /** Width of what holds islands in a stencil. */
  bridgeMm: number;
  /** What is narrower is counted. */
  leastMm: number;
}

/** Sheets to be cut, and what is to be known of them. */
export interface PlatesFound {
  sheets: CutSheet[];
  pieces: number;
  /** Loose parts of a stencil, and the bridges that hold them. */
  islands: number;
  bridges: number;
  /** Places narrower than asked, in what is left and in what is cut away. */
  narrow: number;
}

/** What may be asked, mm. Kerf 0.1 to 0.3, usually 0.2, features of 1 mm and more: guidelines for laser cutting; the rest from memory. */
export const PLATE_MM = {
  kerf: { least: 0, most: 5, usual: 0.2 },
  gap: { least: 0, most: 50, usual: 3 },
  bridge: { least: 0.5, most: 30, usual: 2 },
  least: { least: 0, most: 10, usual: 1 },
  side: { least: 50, most: 3000, usual: 600 },
} as const;

const MOST_PIECES = 1000;
/** Booleans of one plate, about half a minute of them. */
const STEPS = 4e8;

/**
 * The contours to cut of screens, inner ones before those around them.
 * @throws EngineError as `filmImage`, 'plate.large' for a piece that no sheet holds, 'plate.many', 'plate.kerf' when the
 *   kerf takes everything
 */
export function plates(films: readonly FilmScreen[], asked: PlateAsked): PlatesFound {
  const images = films.map((film): Image => ({ film, rings: filmImage(film, 0) }));
  const narrow = asked.leastMm > 0 ? images.reduce((sum, { rings }) => sum + narrowPlaces(rings, asked.leastMm), 0) : 0;
  const cuts = cutsOf(images, asked);
  const all = (count: 'pieces' | 'islands' | 'bridges'): number => cuts.reduce((sum, cut) => sum + cut[count], 0);
  return { sheets: cuts.flatMap(({ sheets }) => sheets), pieces: all('pieces'), islands: all('islands'), bridges: all('bridges'), narrow };
}

type Cut = Omit<PlatesFound, 'narrow'>;

/** A screen, and what it prints. */
interface Image {
  film: FilmScreen;
  rings: Float64Array[];
}

function cutsOf(images: readonly Image[], asked: PlateAsked): Cut[] {
  if (asked.kind === 'stencil') return images.map(({ film, rings }) => stencil(film, rings, asked));
  return asked.together === true && images.length > 1 ? [relief(images, asked)] : images.map((image) => relief([image], asked));
}

function narrowPlaces(rings: Float64Array[], leastMm: number): number {
  const { lines, gaps } = thinPlaces({ rings, fillRule: 'nonzero' }, { lineMm: leastMm, gapMm: leastMm });
  return lines + gaps;
}

/** What is cut to print a screen from, and the screen. */
function piecesOf({ film, rings }: Image, kerfMm: number, budget: WorkBudget): { film: FilmScreen; piece: Float64Array[] }[] {
  // A plate prints its mirror image.
  const mirrored = normalise({ rings: mapRings(rings, [-1, 0, 0, 1, 0, 0]), fillRule: 'nonzero' }, budget);
  return ringParts(mirrored).map((part) => ({ film, piece: grownRings(part, kerfMm / 2, budget) }));
}

function relief(images: readonly Image[], asked: PlateAsked): Cut {
  const budget = new WorkBudget(STEPS * images.length);
  const owned = images.flatMap((image) => piecesOf(image, asked.kerfMm, budget));
  const pieces = owned.map(({ piece }) => piece);
  const name = images.length === 1 ? images.map(({ film }) => say.screen(film.key, film.screen.name)).join() : say.screens(images.length);
  if (pieces.length > MOST_PIECES) {
    throw new EngineError(
      'plate.many',
      say.thereArePiecesOn(
        pieces.length,
        images.length === 1 ? images.map(({ film }) => whoOf(film)).join() : name,
        MOST_PIECES,
        images.length,
      ),
    );
  }
  const sheet = { widthMm: asked.sheetWidthMm, heightMm: asked.sheetHeightMm, gapMm: Math.max(asked.gapMm, asked.kerfMm) };
  const { nested, misfits } = nest(pieces, sheet, budget);
  const [large] = misfits;
  if (large !== undefined) {
    const { widthMm, heightMm } = shapeBounds(pieces[large] ?? []);
    throw new EngineError(
      'plate.large',
      say.pieceOfIsMm({
        whoOf: whoOf(entryAt(owned, large).film),
        roundTo: roundTo(widthMm, 0),
        roundTo2: roundTo(heightMm, 0),
        widthMm: sheet.widthMm,
        heightMm: sheet.heightMm,
        gapMm: sheet.gapMm,
      }),
    );
  }
  const count = Math.max(...nested.map((piece) => piece.sheet)) + 1;
  const sheets = Array.from({ length: count }, (_, at): CutSheet => {
    const cut = nested
      .filter((piece) => piece.sheet === at)
      .flatMap(({ piece, rings }) => inwardFirst(rings).map((ring) => ({ ring, key: entryAt(owned, piece).film.key })));
    // Pieces may lie in the holes of others: all that is inside is cut first.
    const ordered = cut.toSorted((a, b) => Math.abs(ringArea(a.ring)) - Math.abs(ringArea(b.ring)));
    return {
      name: count === 1 ? say.plate(name) : say.plateOf(name, at + 1, count),
      widthMm: sheet.widthMm,
      heightMm: sheet.heightMm,
      rings: ordered.map(({ ring }) => ring),
      ...(images.length > 1 ? { screens: ordered.map(({ key }) => key) } : {}),
    };
  });
  return { sheets, pieces: pieces.length, islands: 0, bridges: 0 };
}

function whoOf({ key, screen }: FilmScreen): string {
  return say.screenKey(key, screen.name);
}

function stencil(film: FilmScreen, image: Float64Array[], { kerfMm, bridgeMm }: PlateAsked): Cut {
  const { widthMm, heightMm } = film.paper;
  const budget = new WorkBudget(STEPS);
  const sheet = boxRing({ xMm: 0, yMm: 0, widthMm, heightMm });
  const { rings, islands, bridges } = withBridges(cutRings(image, [sheet], budget), bridgeMm, budget);
  const cut = grownRings(rings, -kerfMm / 2, budget);
  if (cut.length === 0) {
    throw new EngineError('plate.kerf', say.kerfOfMmWith(kerfMm, bridgeMm, film.key, film.screen.name));
  }
  const half = kerfMm / 2;
  const edge = Float64Array.from(boxRing({ xMm: 0, yMm: 0, widthMm: widthMm + kerfMm, heightMm: heightMm + kerfMm }));
  const moved = mapRings(cut, [1, 0, 0, 1, half, half]);
  const name = `screen ${film.key} ${film.screen.name} stencil`;
  return {
    sheets: [{ name, widthMm: widthMm + kerfMm, heightMm: heightMm + kerfMm, rings: [...inwardFirst(moved), edge] }],
    pieces: ringParts(cut).length,
    islands,
    bridges,
  };
}

/** What lies within another contour is cut before it comes loose. */
function inwardFirst(rings: readonly Float64Array[]): Float64Array[] {
  return rings.toSorted((a, b) => Math.abs(ringArea(a)) - Math.abs(ringArea(b)));
}
