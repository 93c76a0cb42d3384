import type { Project } from '../../engine/project/types.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/keep/room.ts';
import { orderOnly } from './order-parts.ts';
import { isUntouchedDemo } from './untouched-demo.ts';

/** The section of a project beside the open one in which its pull order stands, as the press kept it. */
export const ORDER_SECTION = 'pullOrder';

/** What comes with a project that is opened, and what becomes of it afterwards. */
interface Opening {
  /** Keeps its pull order and log, before it is opened. */
  bring?: (() => Promise<void>) | undefined;
  /** How the project before comes back by its id in the list of projects; as it was when left out. */
  back?: ((id: string) => Promise<unknown>) | undefined;
}

/**
 * Opens a project in place of the open one, which goes into the list of projects first with its pull order;
 * the notice brings both back. What was logged stays where it is: a log is only ever added to.
 * @param news what is open now: 'spring.json is open'
 * @returns whether it was opened: when the open one cannot be kept, the user is asked
 */
export async function replaceProject(store: AppStore, next: Project, news: string, { bring, back }: Opening = {}): Promise<boolean> {
  const before = store.project;
  let order: Record<string, unknown> = {};
  let shelved: string | undefined;
  try {
    order = orderOnly((await store.saver.openPress?.()) ?? {});
    const hasOrder = (order['made'] ?? null) !== null;
    // A demo that comes again at a press of a button would only stand in the way.
    if (hasOrder || !(await isUntouchedDemo(before)))
      shelved = await store.saver.shelve?.(before, hasOrder ? { [ORDER_SECTION]: order } : {});
  } catch (error) {
    if (!confirm(say.openProjectCouldNot(sentenceOf(error)))) return false;
  }
  try {
    await bring?.();
  } catch (error) {
    store.tell(say.visitCouldNotBe(sentenceOf(error)));
    return false;
  }
  store.open(next, bring !== undefined);
  store.tell(`${news}. ${shelved === undefined ? '' : say.isInListOf(before.title)}`.trim(), 'news', {
    label: say.bringBack,
    act: () =>
      shelved !== undefined && back !== undefined
        ? void back(shelved)
        : void replaceProject(store, before, say.isOpenAgain(before.title), { bring: bringing(store, order), back }),
  });
  return true;
}

/** Brings a pull order as the press kept it; undefined where there is none. */
export function bringing(store: AppStore, order: unknown): (() => Promise<void>) | undefined {
  if (typeof order !== 'object' || order === null || !('made' in order) || order.made === null) return undefined;
  return async () => store.saver.savePress?.(orderOnly(order as Record<string, unknown>));
}
