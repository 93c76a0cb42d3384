import { isTyped } from '../../ui/kit/typed-key.ts';

/** Where the space bar has a meaning of its own. */
const OWN_SPACE = 'button, summary, a[href], input, [role=option], [role=slider]';

/** Whether the space bar was pressed where it does nothing else. */
export function isFreeSpace(event: KeyboardEvent): boolean {
  if (event.key !== ' ' || event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || isTyped(event)) return false;
  return !event.composedPath().some((target) => target instanceof Element && target.matches(OWN_SPACE));
}
