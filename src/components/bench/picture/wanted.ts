import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Region } from './region.ts';

/** A picture that is asked for. */
export interface Wanted {
  pulls: readonly Pull[];
  drawer: Studio;
  relative: boolean;
  marked: boolean;
  region: Region;
  /** Frames wait for the exact picture of a stack; moves show the old one meanwhile. */
  draft: boolean;
  editedAt: number | null;
}

/** What it shows, apart from where one looks. */
export function contentOf(wanted: Pick<Wanted, 'pulls' | 'drawer' | 'relative' | 'marked'>): readonly unknown[] {
  return [wanted.pulls, wanted.drawer, wanted.relative, wanted.marked];
}

/** Whether two pictures show the same. */
export function same(one: readonly unknown[], other: readonly unknown[]): boolean {
  return one.length === other.length && one.every((entry, i) => entry === other[i]);
}
