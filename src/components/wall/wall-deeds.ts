import type { LineDeed } from './wall-line.ts';
import type { RailDeed } from './wall-rail.ts';

/** Deeds that only keys lead to. */
type KeyDeed = 'toggle-build' | 'save' | 'put-away';

/** What one does at the wall, by whichever way. */
export type WallDeed = LineDeed | RailDeed | KeyDeed;

const DEEDS: Readonly<Record<string, WallDeed>> = {
  Enter: 'open',
  k: 'keep',
  b: 'toggle-build',
  m: 'mark',
  p: 'pin',
  c: 'compare',
  f: 'filter',
  s: 'save',
  '?': 'keys',
  Escape: 'put-away',
  '+': 'closer',
  '=': 'closer',
  '-': 'further',
  '0': 'start',
};
const MOVES: readonly string[] = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown'];

/** The deed of a key, small or capital letter; undefined when it has none. */
export function deedOf(key: string): WallDeed | undefined {
  const name = key.length === 1 ? key.toLowerCase() : key;
  return Object.hasOwn(DEEDS, name) ? DEEDS[name] : undefined;
}

/** Whether a key leads from print to print. */
export function isMove(key: string): boolean {
  return MOVES.includes(key);
}
