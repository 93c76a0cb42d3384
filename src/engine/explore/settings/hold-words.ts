import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/explore/settings.ts';
import type { Hold } from '../types.ts';

/**
 * A hold in words: 'pull 3 stays first'.
 * @param number of each pull on the bench, from 1
 * @param left pulls that may be there, first down first
 */
export function describeHold(hold: Hold, number: ReadonlyMap<string, number>, left: readonly Pick<Pull, 'id'>[]): string {
  const pull = say.pull(number.get(hold.pull) ?? '');
  switch (hold.kind) {
    case 'first':
      return say.staysFirst(pull);
    case 'last':
      return say.staysLast(pull);
    case 'place':
      return say.staysInItsPlace(pull, (left.findIndex((each) => each.id === hold.pull) + 1 || number.get(hold.pull)) ?? '');
    case 'ink':
      return say.keepsItsInk(pull);
    case 'lies':
      return say.liesAsItDoes(pull);
    case 'out':
      return say.isNeverThere(pull);
    case 'before':
      return say.staysUnderPull(pull, number.get(hold.other) ?? '');
  }
}
