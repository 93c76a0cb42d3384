import type { LineAction } from './wall-line.ts';
import type { RailAction } from './wall-rail.ts';

/** Actions that only keys lead to. */
type KeyAction = 'toggle-build' | 'save' | 'close';

/** What one does at the wall, by whichever way. */
export type WallAction = LineAction | RailAction | KeyAction;

const DEEDS: Readonly<Record<string, WallAction>> = {
  Enter: 'open',
  k: 'keep',
  b: 'toggle-build',
  ' ': 'select',
  h: 'pin',
  d: 'compare',
  f: 'filter',
  s: 'save',
  Escape: 'close',
  '+': 'closer',
  '=': 'closer',
  '-': 'further',
  '0': 'start',
};
const MOVES: readonly string[] = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown'];

/** The action of a key, small or capital letter; undefined when it has none. */
export function actionOf(key: string): WallAction | undefined {
  const name = key.length === 1 ? key.toLowerCase() : key;
  return Object.hasOwn(DEEDS, name) ? DEEDS[name] : undefined;
}

/** Whether a key leads from print to print. */
export function isMove(key: string): boolean {
  return MOVES.includes(key);
}

/** Whether keys ask for all prints: A with the key that commands have, which selects all nearly everywhere. */
export function isForAll({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): boolean {
  return ctrlKey !== metaKey && !altKey && !shiftKey && key.toLowerCase() === 'a';
}
