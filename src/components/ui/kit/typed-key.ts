/** Where keys are typed or have a meaning of their own. */
const BUSY = 'textarea, select, dialog[open], input:not([type=radio], [type=checkbox])';

/** Whether a key is typed into a field or belongs to a dialog, so that no room may take it. */
export function isTyped(event: KeyboardEvent): boolean {
  return event.composedPath().some((target) => target instanceof Element && target.matches(BUSY));
}
