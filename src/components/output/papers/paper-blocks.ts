import type { Pull } from '../../../engine/stack/types.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';

/** One line of a cell or card. */
export interface PaperLine {
  text: string;
  /** Absent = the size in which tables are read. */
  size?: 'large' | 'small';
  bold?: boolean;
  soft?: boolean;
}

/** A cell of a table: lines below each other, a swatch before the first, or a box to tick, or that is ticked. */
export interface PaperCell {
  lines: PaperLine[];
  /** sRGB hex. */
  swatch?: string;
  box?: boolean | 'ticked';
}

interface PaperColumn {
  head: string;
  /** Share of the table's width; all come to 1. */
  share: number;
}

/** Its title and heads stand again on every page that it runs on to. */
export interface PaperTable {
  kind: 'table';
  title: string;
  columns: PaperColumn[];
  /** `over` runs across before the row, `under` behind it. */
  rows: { over?: string; cells: PaperCell[]; under?: string[] }[];
}

/** A sheet of a recipe with some pulls on it. */
export interface PaperState {
  recipe: number;
  pulls: readonly Pull[];
}

/** Recipes with what they become. */
interface PaperPrints {
  kind: 'prints';
  prints: { state: PaperState; title: string; below: string }[];
}

/** A row of the set-up grid. */
export interface GridRow {
  /** A line across before it: another day, a wait. */
  gap: string | null;
  number: string;
  hex: string;
  screen: string;
  /** Whether the screen is mounted for it. */
  mount: boolean;
  how: string;
  /** One for each column: null = no pull, '' = one stroke, else how many. */
  squares: (string | null)[];
  /** Whether a numeral on its ink must be light. */
  light: boolean;
}

/** The whole visit at a glance, as many sheets across as a page holds. */
export interface PaperGrid {
  kind: 'grid';
  title: string;
  note: string;
  /** Sheets from left to right: their numbers, the mark of a proof or an over, and the recipe's letter where another begins. */
  columns: { label: string; use: string; letter: string }[];
  rows: GridRow[];
}

/** What is printed on a set of sheets alike, on a card of a set-up. */
export interface CardPart {
  title: string;
  before: PaperState;
  after: PaperState;
  /** Numbers that share a box. */
  sheets: string[];
}

/** The card of one set-up. */
export interface PaperCard {
  kind: 'card';
  title: string;
  tags: string;
  screen: string;
  ink: string;
  /** sRGB hex. */
  hex: string;
  lines: PaperLine[];
  /** For the diagram of the stops. */
  card: SetUpCard;
  parts: CardPart[];
}

/** What one kind of sheet goes through. */
export interface PaperPassport {
  kind: 'passport';
  title: string;
  sheets: string;
  state: PaperState;
  rows: { number: string; screen: string; how: string }[];
}

export type PaperBlock =
  | { kind: 'page' }
  | { kind: 'cover'; over: string; title: string; lines: PaperLine[]; fill: string[] }
  | { kind: 'heading'; text: string }
  | ({ kind: 'text' } & PaperLine)
  /** Its title never stands without it. */
  | { kind: 'list'; title: string; items: string[] }
  | { kind: 'fill'; fill: string[] }
  | PaperTable
  | PaperPrints
  | PaperGrid
  /** A card over the whole width. */
  | PaperCard
  /** Two columns that fill up page by page; none is cut unless it is longer than a page. */
  | { kind: 'columns'; entries: (PaperCard | PaperPassport)[] };

/** A cell of one line. */
export function cell(text: string, style: Omit<PaperLine, 'text'> = {}): PaperCell {
  return { lines: [{ text, ...style }] };
}
