import type { LitElement } from 'lit';
import { say } from '../../words/en/ui/kit.ts';

/** Why something is not there that is fetched when it is first asked for. @param what 'Help', 'This room' */
export function notFetched(what: string): string {
  return say.couldNotBeFetched(what);
}

/** Code that nothing needs before it is asked for. */
interface Late<Element> {
  /** Imports the element. */
  load: () => Promise<unknown>;
  /** The element, once its code has come; it may stand on the page before, unless it needs its store when it is connected. */
  element: () => Element | Promise<Element>;
  /** Hears why the code did not come, in a sentence. */
  failed: (sentence: string) => void;
}

/** Fetches code for what stands empty on the page until it has come. */
export function fetchPart(load: () => Promise<unknown>, failed: (sentence: string) => void): void {
  load().catch(() => failed(notFetched(say.thisPartOfApp)));
}

/** Fetches an element's code, and does something with it once it stands; while one waits the page goes on. */
export async function late<Element extends LitElement>(
  { load, element, failed }: Late<Element>,
  act: (element: Element) => void,
): Promise<void> {
  try {
    await load();
  } catch {
    failed(notFetched(say.thisPartOfApp));
    return;
  }
  const ready = await element();
  await ready.updateComplete;
  act(ready);
}
