import type { WallScene } from '../../canvas/wall-scene.ts';

/** Prints that are compared beside each other at most. */
export const MOST_COMPARED = 6;

/** Room that the picture of a difference takes in a lower corner, px. */
const PICTURE = { width: 150, height: 240 };

interface Standing {
  focused: number;
  /** The print under the mouse; −1 for none. */
  over: number;
  selected: ReadonlySet<number>;
}

/**
 * The prints that are held against each other, by number: the one in focus and the one under the mouse, or two that
 * are selected, unless another is in focus, or one that is selected and the one in focus. Without a second one only
 * the first is there.
 */
export function heldPair({ focused, over, selected }: Standing): [number, number] {
  if (over >= 0 && over !== focused && focused >= 0) return [focused, over];
  const [one = -1, two = -1] = selected;
  if (selected.size === 2 && (focused < 0 || selected.has(focused))) return [one, two];
  if (selected.size === 1 && focused >= 0 && one !== focused) return [one, focused];
  return [focused, -1];
}

/** The lower corner in which the picture of their difference covers neither of two prints; left where both do. */
export function freeSide(scene: WallScene | null, prints: readonly number[]): 'left' | 'right' {
  if (scene === null) return 'left';
  const { width, height } = scene.size;
  const frames = prints.filter((index) => scene.planned.hangs(index)).map((index) => scene.frameOf(index));
  const low = frames.filter((frame) => frame.top + frame.height > height - PICTURE.height);
  const covers = {
    left: low.some(({ left }) => left < PICTURE.width),
    right: low.some((frame) => frame.left + frame.width > width - PICTURE.width),
  };
  return covers.left && !covers.right ? 'right' : 'left';
}
