import type { Project } from '../../engine/project/types.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import { orderOnly } from './order-parts.ts';

/** The section of a project that was put aside in which its pull order stands, as the press kept it. */
export const ORDER_SECTION = 'pullOrder';

/**
 * Opens a project in place of the open one, which is put aside first with its pull order; the notice brings
 * both back. What was logged stays where it is: a log is only ever added to.
 * @param news what is open now: 'spring.json is open'
 * @param bring keeps what comes with it, its pull order and log, before it is opened
 * @returns whether it was opened: when the open one cannot be put aside, the user is asked
 */
export async function replaceProject(store: AppStore, next: Project, news: string, bring?: () => Promise<void>): Promise<boolean> {
  const before = store.project;
  let order: Record<string, unknown> = {};
  try {
    order = orderOnly((await store.saver.openPress?.()) ?? {});
    const aside = (order['made'] ?? null) === null ? {} : { [ORDER_SECTION]: order };
    await store.saver.keepReplaced?.(before, `${news} in its place.`, aside);
  } catch (error) {
    if (!confirm(`The open project could not be put aside (${sentenceOf(error)}). Replace it all the same?`)) return false;
  }
  try {
    await bring?.();
  } catch (error) {
    store.tell(`The visit could not be kept in this browser (${sentenceOf(error)}), so it was not opened; nothing was changed.`);
    return false;
  }
  store.open(next, bring !== undefined);
  store.tell(`${news}. ${before.title} was put aside.`, 'news', {
    label: 'Bring back',
    act: () => void replaceProject(store, before, `${before.title} is open again`, bringing(store, order)),
  });
  return true;
}

/** Brings a pull order as the press kept it; undefined where there is none. */
export function bringing(store: AppStore, order: unknown): (() => Promise<void>) | undefined {
  if (typeof order !== 'object' || order === null || !('made' in order) || order.made === null) return undefined;
  return async () => store.saver.savePress?.(orderOnly(order as Record<string, unknown>));
}
