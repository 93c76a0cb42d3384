import type { Page } from 'playwright-core';
import type { Studio } from './harness.ts';

/** A page of the app's origin that runs nothing, so that its databases can be prepared. */
export async function bare(page: Page, studio: Studio): Promise<void> {
  await page.route('**/bare', (route) => route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>bare</title>' }));
  await page.goto(`${studio.url}bare`);
}

/** All records of an object store, by key. */
export function records(page: Page, database: string, store: string): Promise<Record<string, unknown>> {
  return page.evaluate(
    async ([name, from]) => {
      const done = <T>(request: IDBRequest<T>): Promise<T> =>
        new Promise((resolve, reject) => {
          request.addEventListener('success', () => resolve(request.result));
          request.addEventListener('error', () => reject(request.error));
        });
      const db = await done(indexedDB.open(name!));
      try {
        if (!db.objectStoreNames.contains(from!)) return {};
        const held = db.transaction(from!).objectStore(from!);
        const [keys, values] = [await done(held.getAllKeys()), await done(held.getAll())];
        return Object.fromEntries(keys.map((key, i) => [String(key), values[i] as unknown]));
      } finally {
        db.close();
      }
    },
    [database, store],
  );
}

/** Writes one record; a key of several parts as a list. */
export async function putRecord(
  page: Page,
  { database, store, key, value }: { database: string; store: string; key: IDBValidKey; value: unknown },
): Promise<void> {
  const to: { database: string; store: string; key: unknown; value: unknown } = { database, store, key, value };
  await page.evaluate(async (to) => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(to.database);
      request.addEventListener('success', () => resolve(request.result));
      request.addEventListener('error', () => reject(request.error));
    });
    await new Promise<void>((resolve, reject) => {
      const transaction = db.transaction(to.store, 'readwrite');
      transaction.objectStore(to.store).put(to.value, to.key as IDBValidKey);
      transaction.addEventListener('complete', () => resolve());
      transaction.addEventListener('error', () => reject(transaction.error));
    });
    db.close();
  }, to);
}

/** Gives the open project another title, as a user does. */
export async function retitle(page: Page, title: string): Promise<void> {
  await page.locator('project-menu button.open').click();
  const dialog = page.getByRole('dialog', { name: 'Project' });
  await dialog.getByLabel('Title').fill(title);
  await dialog.getByLabel('Title').press('Tab');
  await dialog.getByRole('button', { name: 'Close' }).click();
}

/** The title that the frame shows. */
export function titleOf(page: Page): Promise<string | null> {
  return page
    .locator('project-menu button.open')
    .textContent()
    .then((text) => text?.trim() ?? null);
}
