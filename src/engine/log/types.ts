import type { Ink } from '../ink/types.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Pull } from '../stack/types.ts';
import type { SheetUse } from '../visit/visit-problem.ts';

export const LOG_FORMAT = 'pullstack-log';
export const LOG_VERSION = 1;

/** What a visit prints, as it was when its first order was made; an order planned later keeps it. */
export interface VisitHead {
  id: string;
  title: string;
  /** When the visit began, ms since 1970 UTC, by the clock of the device. */
  begunMs: number;
  /** Pulls whose order differs by less than this may change places, ΔE00; absent in logs from before it was kept. */
  minDeltaE?: number | undefined;
  recipes: Recipe[];
  /** All sheets, also those that are spoiled later. */
  sheets: LoggedSheet[];
  /** Number of the sheet on which each set-up is tried; absent = none, and in logs from before it had a number. */
  test?: number | undefined;
}

/** A numbered sheet and the recipe that it was to become. */
export interface LoggedSheet {
  /** From 1, as pencilled on the back. */
  number: number;
  /** Index into the visit's recipes. */
  recipe: number;
  /** Absent = a print that is wanted; so are all sheets of logs from before. */
  use?: SheetUse | undefined;
}

interface EventHead {
  /** Unique over all devices. */
  id: string;
  /** Ms since 1970 UTC, by the clock of the device. */
  atMs: number;
  /** Which browser wrote it. */
  device: string;
}

/** How a pull differs from its recipe. */
export interface Deviation {
  /** The ink that was really in the screen; absent when it was the recipe's. */
  ink?: Ink | undefined;
  /** What that ink is weighed from, where it is the drawer's; absent = a recipe of the visit prints it. */
  stocks?: Ink[] | undefined;
  /** Strokes really pulled; absent when as in the recipe. */
  strokes?: number | undefined;
  /** Off register by so much, mm, to the right and down. */
  dxMm: number;
  dyMm: number;
}

/** How a screen stood on the press, for its next set-up; what nobody said is absent. */
interface PressSetting {
  /** Between mesh and paper, mm. */
  snapOffMm?: number | undefined;
  /** Hardness of the squeegee, Shore A (ISO 48-4). */
  shoreA?: number | undefined;
  /** Profile of its edge: square, rounded, bevelled. */
  profile?: string | undefined;
  /** Between squeegee and mesh, degrees. */
  angleDeg?: number | undefined;
  /** How near to its place the print came to lie at the worst, mm. */
  registerMm?: number | undefined;
}

/** A screen, by the number and name on its frame. */
interface ScreenNamed {
  number: number;
  name: string;
}

/** What a sheet goes on with, in place of what was planned for it, and all that these pulls name. */
export interface GoingOn {
  more: Pull[];
  parts: Pick<Recipe, 'shapes' | 'screens' | 'inks'>;
}

/** One thing that happened to one sheet. Events are only ever added; 'undone' takes one back. */
export type LogEvent = EventHead & {
  /** By number; 0 for what is said of a set-up. */
  sheet: number;
} & (
    | { kind: 'pulled'; /** Ids of the recipe's pulls that were printed. */ pulls: string[] }
    | { kind: 'otherwise'; pulls: string[]; how: Deviation; note: string }
    | { kind: 'spoiled'; note: string }
    | { kind: 'replaced'; /** Number of the over that takes the place of this sheet, which is spoiled. */ by: number; note: string }
    | { kind: 'kept'; /** Why the sheet is kept as it came, though it is not as planned. */ note: string }
    | { kind: 'lucky'; /** As 'kept', in logs of before: read, never written. */ note: string }
    | { kind: 'placed'; /** Box or drawer in which the sheet lies. */ box: string }
    | { kind: 'tested'; /** Number of the sheet whose pull was tried on this one. */ of: number; /** Id of the pull. */ pull: string }
    | { kind: 'set-up'; screen: ScreenNamed; /** Its name. */ ink: string; how: PressSetting; note: string }
    | {
        kind: 'weighed';
        screen: ScreenNamed;
        ink: string;
        /** Taken out of the bucket, what stays in the screen included. */
        grams: number;
        /** What was pulled with it: number of the sheet and id of the pull. */
        on: [number, string][];
      }
    | ({ kind: 'goes-on' } & GoingOn)
    | ({
        kind: 'extra';
        /** Id of the first of `more`: it was pulled though nothing planned it, and what was planned follows. */ pulls: string[];
      } & GoingOn)
    | { kind: 'undone'; /** Id of the event that did not happen. */ event: string }
  );

type Unstamped<T> = T extends LogEvent ? Omit<T, 'id' | 'atMs' | 'device'> : never;

/** What happened, before it is stamped with when and where. */
export type Happening = Unstamped<LogEvent>;

/** A visit and all that happened in it. */
export interface VisitLog {
  format: typeof LOG_FORMAT;
  version: typeof LOG_VERSION;
  head: VisitHead;
  /** In any order; `inOrder` sorts them. */
  events: LogEvent[];
}
