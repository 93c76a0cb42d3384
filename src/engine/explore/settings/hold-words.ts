import type { Pull } from '../../stack/types.ts';
import type { Hold } from '../types.ts';

/**
 * A hold in words: 'pull 3 is held first down'.
 * @param number of each pull on the bench, from 1
 * @param left pulls that are not held out, first down first
 */
export function describeHold(hold: Hold, number: ReadonlyMap<string, number>, left: readonly Pick<Pull, 'id'>[]): string {
  const pull = `pull ${number.get(hold.pull)}`;
  switch (hold.kind) {
    case 'first':
      return `${pull} is held first down`;
    case 'last':
      return `${pull} is held last down`;
    case 'place':
      return `${pull} is held in its place (number ${left.findIndex((each) => each.id === hold.pull) + 1 || number.get(hold.pull)} down)`;
    case 'ink':
      return `${pull} is held in its ink`;
    case 'out':
      return `${pull} is held out`;
    case 'before':
      return `${pull} is held before pull ${number.get(hold.other)}`;
  }
}
