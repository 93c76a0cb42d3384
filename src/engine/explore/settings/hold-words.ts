import type { Pull } from '../../stack/types.ts';
import type { Hold } from '../types.ts';

/**
 * A hold in words: 'pull 3 stays first'.
 * @param number of each pull on the bench, from 1
 * @param left pulls that may be there, first down first
 */
export function describeHold(hold: Hold, number: ReadonlyMap<string, number>, left: readonly Pick<Pull, 'id'>[]): string {
  const pull = `pull ${number.get(hold.pull)}`;
  switch (hold.kind) {
    case 'first':
      return `${pull} stays first`;
    case 'last':
      return `${pull} stays last`;
    case 'place':
      return `${pull} stays in its place (number ${left.findIndex((each) => each.id === hold.pull) + 1 || number.get(hold.pull)} down)`;
    case 'ink':
      return `${pull} keeps its ink`;
    case 'lies':
      return `${pull} lies as it does`;
    case 'out':
      return `${pull} is never there`;
    case 'before':
      return `${pull} stays under pull ${number.get(hold.other)}`;
  }
}
