import type { Clash } from '../../../engine/explore/search/clash.ts';
import type { SeenPrint } from '../../../engine/explore/search/explorer.ts';
import type { ExploreSettings } from '../../../engine/explore/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';
import type { DerivedAsk } from './derived-ask.ts';

/** What a wall is found from. */
export interface WallInputs {
  studio: Studio;
  bench: readonly Pull[];
  explore: ExploreSettings;
  /** Whether the prints are shown with the paper as white. */
  relative: boolean;
}

/** What a search for prints starts from. */
export interface WallAsk {
  inputs: WallInputs;
  /** Prints in the place of the base stack; null for the stack itself. */
  derived: DerivedAsk | null;
  /** Prints that the wall keeps away from. */
  seen: readonly SeenPrint[];
}

/** One search for the prints of a wall, and how it stands. */
export interface WallSearch extends WallAsk {
  /** Height of its maps, rows. */
  readonly rows: number;
  state: 'running' | 'done' | 'stopped' | 'failed';
  found: number;
  asked: number;
  /** Candidates that are drawn for the first print; null where that is not known. */
  candidates: NonNullable<WallBatch['candidates']> | null;
  /** Why it ended with fewer than asked, or why it failed. */
  reason: string;
  /** Conditions that clash, when no print came; 'looking' while they are looked for. */
  clash: Clash | 'looking' | null;
}

/** Whether two plain values are alike. */
export function sameValue(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** Whether the same wall would come of both. */
export function sameInputs(a: WallInputs, b: WallInputs): boolean {
  return a.studio === b.studio && a.relative === b.relative && sameValue(a.bench, b.bench) && sameValue(a.explore, b.explore);
}

/** Walls up to so many prints have maps of so many rows: the larger the wall, the less of each print can be seen at once. */
const FINENESS: readonly { upTo: number; rows: number }[] = [
  { upTo: 800, rows: 256 },
  { upTo: 2500, rows: 160 },
  { upTo: 5000, rows: 96 },
  { upTo: Infinity, rows: 64 },
];

function rowsFor(count: number): number {
  return FINENESS.find(({ upTo }) => count <= upTo)?.rows ?? 64;
}

/** A search that has just begun. */
export function newSearch(ask: WallAsk): WallSearch {
  const { derived, inputs } = ask;
  // A way between two prints shows its two ends as well.
  const asked = derived === null ? inputs.explore.count : derived.request.count + (derived.request.kind === 'between' ? 2 : 0);
  return { ...ask, rows: rowsFor(asked), state: 'running', found: 0, asked, candidates: null, reason: '', clash: null };
}

/** Whether the prints of a wall can stay for another: that has the same prints and more, as finely drawn. */
export function goesOn(hung: WallSearch, next: WallSearch): boolean {
  if (hung.derived !== null || next.derived !== null || hung.rows !== next.rows) return false;
  const { explore } = hung.inputs;
  const { count } = next.inputs.explore;
  return count > explore.count && sameInputs({ ...hung.inputs, explore: { ...explore, count } }, next.inputs);
}
