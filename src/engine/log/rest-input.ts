import type { Recipe } from '../recipe/types.ts';
import type { VisitInput } from '../visit/visit.ts';
import type { SheetAsPulled } from './as-pulled.ts';
import type { TestSheet } from './test-sheet.ts';

/** The moment at which what is left is planned. */
export interface VisitNow {
  /** Ms since 1970 UTC. */
  atMs: number;
  /** Which day of the visit it is, from 1. */
  day: number;
  /** By the clock on the wall, minutes after midnight. */
  minuteOfDay: number;
}

/** A sheet of a visit of which something is done; without its events it is taken as dry. */
export type RestSheet = Pick<SheetAsPulled, 'number' | 'recipe' | 'pulls' | 'done' | 'spoiled'> &
  Partial<Pick<SheetAsPulled, 'events' | 'use'>>;

/** A visit of which something is done. */
export interface RestInput extends VisitInput {
  rest: {
    /** Of `recipesAsPulled`. */
    recipes: readonly Recipe[];
    sheets: readonly RestSheet[];
    /** The test sheet and what was tried on it; absent = none yet. */
    test?: TestSheet | undefined;
    /** Set-ups that are done, as `setUpsBehind` counts them: those that are left are numbered behind them; absent = none. */
    setUpsBefore?: number;
    /** When it is planned; absent = on the first morning, with everything dry. */
    now?: VisitNow;
  };
}
