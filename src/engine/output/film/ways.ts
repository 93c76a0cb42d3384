import type { ShapeSource } from '../../shapes/place/placed.ts';
import type { Screen } from '../../shapes/types.ts';
import type { Joints, SheetCuts } from './sections.ts';
import type { Tile } from './tiles.ts';

/** A screen that a film positive is to be made of, and the sheet that it prints on. */
export interface FilmScreen {
  /** What the frame is called: its number, or '7 b' where two stencils have the number. */
  key: string;
  screen: Pick<Screen, 'number' | 'name' | 'placed' | 'mesh'>;
  shapes: ShapeSource;
  paper: { widthMm: number; heightMm: number };
  /** Where its sheet is trimmed to meet others, when it is itself a section. */
  joints?: Joints | undefined;
  /** The frame inside, mm: the one that was named, or the least that will do; absent where neither is known. */
  frame?: { widthMm: number; heightMm: number; least?: true } | undefined;
}

/** How a film lies on its screen while that is exposed. */
export interface FilmLie {
  /** The side of the screen that it lies on: the one that touches the paper, or the squeegee's. */
  side: 'paper' | 'squeegee';
  /** Whether its printed side (its own emulsion) lies against the screen's emulsion or away from it. */
  printed: 'against' | 'away';
}

/** As films are usually laid; common practice, from memory. */
export const USUAL_LIE: FilmLie = { side: 'paper', printed: 'against' };

/**
 * Whether a film reads wrong when one looks at its printed side.
 * A stencil reads right from the squeegee's side, as the print does. A film on the paper's side with its printed side
 * against the screen shows that side to the squeegee, so it reads right. On the other side of the screen, or the other
 * way up, it shows it to the paper and reads wrong; with both it reads right again.
 */
export function readsWrong({ side, printed }: FilmLie): boolean {
  return (side === 'paper') !== (printed === 'against');
}

/** How films are made. */
export interface FilmWays extends FilmLie {
  /** On every film, besides its own words. */
  title: string;
  /** How far all edges move out, mm; below 0 they move in. */
  spreadMm: number;
  registerMarks: boolean;
  lays: boolean;
  /** Where the sheet is cut into sections. */
  cuts: SheetCuts;
  /** Pages of a smaller printer, or null for one page a film. */
  tile: Tile | null;
}
