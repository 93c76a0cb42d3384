import type { ShapeSource } from '../../shapes/place/placed.ts';
import type { Screen } from '../../shapes/types.ts';
import type { SheetCuts } from './sections.ts';
import type { Tile } from './tiles.ts';

/** A screen that a film positive is to be made of, and the sheet that it prints on. */
export interface FilmScreen {
  /** What the frame is called: its number, or '7 b' where two stencils have the number. */
  key: string;
  screen: Pick<Screen, 'number' | 'name' | 'placed' | 'mesh'>;
  shapes: ShapeSource;
  paper: { widthMm: number; heightMm: number };
  /** The frame inside, mm; absent where none is named. */
  frame?: { widthMm: number; heightMm: number } | undefined;
}

/** How films are made. */
export interface FilmWays {
  /** On every film, besides its own words. */
  title: string;
  /** How far all edges move out, mm; below 0 they move in. */
  spreadMm: number;
  /** Whether the film is turned over: read from behind its printed side. */
  wrongReading: boolean;
  registerMarks: boolean;
  lays: boolean;
  /** Where the sheet is cut into sections. */
  cuts: SheetCuts;
  /** Pages of a smaller printer, or null for one page a film. */
  tile: Tile | null;
}
