import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bare, putRecord, records, retitle, titleOf } from './databases.ts';
import { itInChromium, openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const TITLE = 'Two thousand pounds';
const sections = (page: Page) => records(page, 'pullstack', 'sections');

interface Kept {
  kind: string;
  reason: string;
}

async function kept(page: Page, kind: string): Promise<{ head: Kept; body: unknown }[]> {
  const [heads, bodies] = [await records(page, 'pullstack-kept', 'heads'), await records(page, 'pullstack-kept', 'bodies')];
  return Object.entries(heads as Record<string, Kept>).flatMap(([id, head]) => (head.kind === kind ? [{ head, body: bodies[id] }] : []));
}

/** A profile with a saved project of the user's own. */
async function withProject(): Promise<{ page: Page; saved: Record<string, unknown> }> {
  const { page } = await openPage(studio);
  await page.goto(`${studio.url}#chest`);
  await retitle(page, TITLE);
  await expect.poll(async () => (await sections(page))['title']).toBe(TITLE);
  return { page, saved: await sections(page) };
}

describe('a saved project', () => {
  it('should lose to a junk record that record alone, which is put aside and told', async () => {
    const { page, saved } = await withProject();
    // Every section and more junk: tests/engine/project/read-sections.test.ts.
    for (const section of ['title', 'drawer', 'bench', 'press', 'format']) {
      for (const value of section === 'drawer' ? ['junk', null] : [{ a: 1 }]) {
        await bare(page, studio);
        for (const [key, each] of Object.entries(saved))
          await putRecord(page, { database: 'pullstack', store: 'sections', key, value: each });
        await putRecord(page, { database: 'pullstack', store: 'sections', key: section, value });
        const before = (await kept(page, 'unreadable')).length;
        await page.goto(`${studio.url}#chest`);
        await page.getByText(/could not be read and (was|were) put aside, not deleted/).waitFor();
        if (section !== 'title') expect(await titleOf(page)).toBe(TITLE);
        const now = await sections(page);
        const leans: Record<string, string[]> = { drawer: ['bench', 'lesson', 'explore', 'pins', 'target'], bench: ['explore'] };
        for (const [key, each] of Object.entries(saved)) {
          if (key !== section && leans[section]?.includes(key) !== true) expect(now[key], `${key} when ${section} is junk`).toEqual(each);
        }
        const aside = await kept(page, 'unreadable');
        expect(aside.length).toBe(before + 1);
        expect(
          aside.some(
            ({ head, body }) =>
              head.reason.includes(section) && JSON.stringify((body as Record<string, unknown>)[section]) === JSON.stringify(value),
          ),
        ).toBe(true);
      }
    }
    await page.context().close();
  }, 240_000);

  itInChromium('should open what was put aside from the project menu, and save it as a file', async () => {
    const { page } = await withProject();
    await bare(page, studio);
    await putRecord(page, { database: 'pullstack', store: 'sections', key: 'lesson', value: 'junk' });
    await page.goto(`${studio.url}#chest`);
    await page.getByText(/could not be read and was put aside/).waitFor();
    await page.locator('project-menu button.open').click();
    const dialog = page.getByRole('dialog', { name: 'Project' });
    await dialog.getByText('Earlier copies, the bin, and what was put aside').click();
    const download = page.waitForEvent('download');
    await dialog.getByRole('button', { name: /^Save as a file: Two thousand pounds/ }).click();
    const stream = await (await download).createReadStream();
    const text = (await stream.toArray()).map(String).join('');
    expect((JSON.parse(text) as { lesson: unknown }).lesson).toBe('junk');
    await dialog.getByRole('button', { name: /^Open Two thousand pounds/ }).click();
    await page.getByText(/Two thousand pounds, .* is open\. Two thousand pounds is in the list of projects/).waitFor();
    expect((await kept(page, 'project')).length).toBe(1);
    await page.context().close();
  });

  it('should be kept as a copy before the first change of a day', async () => {
    const { page } = await withProject();
    await expect.poll(async () => (await kept(page, 'copy')).length).toBe(1);
    await page.context().close();
  });

  it('should stand in a list with others, and open, be copied, renamed and binned from there', async () => {
    const { page } = await withProject();
    const menu = page.getByRole('dialog', { name: 'Project' });
    const list = page.locator('project-list');
    const show = () => page.locator('project-menu button.open').click();
    const titles = () => list.locator('li strong').allTextContents();
    await show();
    await menu.getByRole('button', { name: 'New, empty' }).click();
    await expect.poll(() => titleOf(page)).toBe('Untitled');
    await page.getByRole('button', { name: 'Bring back' }).click();
    await expect.poll(() => titleOf(page)).toBe(TITLE);
    await expect.poll(async () => (await sections(page))['title']).toBe(TITLE);
    // It left the list when it was saved in its place; the empty one went there.
    await expect.poll(async () => (await kept(page, 'project')).map(({ body }) => (body as { title: string }).title)).toEqual(['Untitled']);

    await show();
    await list.getByRole('button', { name: 'Rename Untitled' }).click();
    await list.getByRole('textbox', { name: 'New title of Untitled' }).fill('Plates');
    await list.getByRole('textbox').press('Enter');
    await expect.poll(titles).toEqual(['Plates']);
    await menu.getByRole('button', { name: 'Duplicate this one' }).click();
    await expect.poll(titles).toEqual([`${TITLE}, copy`, 'Plates']);
    await list.getByRole('button', { name: `Put ${TITLE}, copy into the bin` }).click();
    await expect.poll(titles).toEqual(['Plates']);
    await menu.getByText('Earlier copies, the bin, and what was put aside').click();
    await menu.getByRole('button', { name: new RegExp(`^Put ${TITLE}, copy, .* back into the list$`) }).click();
    await expect.poll(titles).toEqual([`${TITLE}, copy`, 'Plates']);

    await list.getByRole('button', { name: 'Open Plates' }).click();
    await expect.poll(() => titleOf(page)).toBe('Plates');
    await expect.poll(async () => (await sections(page))['title']).toBe('Plates');
    await page.reload();
    await expect.poll(() => titleOf(page)).toBe('Plates');
    await show();
    expect((await titles()).sort()).toEqual([TITLE, `${TITLE}, copy`]);
    await page.context().close();
  });

  it('should be saved where the user chose before, and open from a file that is dropped on any room', async () => {
    const { page } = await withProject();
    await page.evaluate(() => {
      const written: Blob[] = [];
      const place = {
        name: 'pounds.zip',
        createWritable: async () => ({ write: async (blob: Blob) => written.push(blob), close: async () => undefined }),
      };
      Object.assign(window, {
        written,
        asked: 0,
        showSaveFilePicker: async () => ((window as unknown as { asked: number }).asked++, place),
      });
    });
    await page.locator('project-menu button.open').click();
    const menu = page.getByRole('dialog', { name: 'Project' });
    await menu.getByRole('button', { name: 'Save as a file' }).click();
    await menu.getByRole('button', { name: 'Save in pounds.zip' }).click();
    await expect.poll(() => page.evaluate(() => (window as unknown as { written: Blob[] }).written.length)).toBe(2);
    expect(await page.evaluate(() => (window as unknown as { asked: number }).asked)).toBe(1);
    await menu.getByText(/A project was last saved as a file on/).waitFor();
    await menu.getByRole('button', { name: 'Close' }).click();
    await retitle(page, 'Changed since');
    await page.evaluate(() => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([(window as unknown as { written: Blob[] }).written[1]!], 'pounds.zip'));
      document
        .querySelector('app-root')!
        .shadowRoot!.querySelector('chest-room')!
        .dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, composed: true, cancelable: true }));
    });
    await expect.poll(() => titleOf(page)).toBe(TITLE);
    await page.getByText('pounds.zip is open. Changed since is in the list of projects.').waitFor();
    await page.context().close();
  });
});

describe('a database that cannot be used', () => {
  const CASES: [string, number, string[]][] = [['is of a later version', 1000, ['sections', 'aside']]];
  itInChromium.each(CASES)('should be told in the frame when it %s, and nothing of it touched', async (_, version, stores) => {
    const { page } = await openPage(studio);
    await bare(page, studio);
    await page.evaluate(
      ([number, names]) =>
        new Promise<void>((resolve) => {
          const request = indexedDB.open('pullstack', number as number);
          request.onupgradeneeded = () => (names as string[]).forEach((name) => request.result.createObjectStore(name));
          request.onsuccess = () => {
            request.result.close();
            resolve();
          };
        }),
      [version, stores],
    );
    await page.goto(`${studio.url}#chest`);
    const strip = page.getByRole('status', { name: 'Saving' });
    await strip.getByText(/^Nothing is saved in this browser: what it keeps could not be opened/).waitFor();
    await retitle(page, 'In memory');
    expect(await titleOf(page)).toBe('In memory');
    expect(await records(page, 'pullstack', 'sections')).toEqual({});
    const download = page.waitForEvent('download');
    await strip.getByRole('button', { name: 'Save as a file' }).click();
    expect((await download).suggestedFilename()).toBe('in-memory.pullstack.json');
    await page.context().close();
  });

  it('should be made again when it has lost its stores, which is told, and save from then on', async () => {
    const { page } = await withProject();
    await bare(page, studio);
    await page.evaluate(async () => {
      for (const name of ['pullstack', 'pullstack-log', 'pullstack-press']) {
        await new Promise<void>((resolve, reject) => {
          const request = indexedDB.deleteDatabase(name);
          request.addEventListener('success', () => resolve());
          request.addEventListener('error', () => reject(request.error));
        });
        await new Promise<void>((resolve) => {
          const request = indexedDB.open(name, 1);
          request.onsuccess = () => {
            request.result.close();
            resolve();
          };
        });
      }
    });
    await page.goto(`${studio.url}#chest`);
    await page
      .getByText(/This browser had lost what it kept of the log of visits, the pull order, the project; the place for it was made again/)
      .waitFor();
    await retitle(page, 'After the loss');
    await expect.poll(async () => (await sections(page))['title']).toBe('After the loss');
    await page.reload();
    await expect.poll(() => titleOf(page)).toBe('After the loss');
    expect(await page.getByText(/had lost what it kept/).count()).toBe(0);
    await page.context().close();
  });

  it('should be told in the frame where the browser refuses to keep anything, as in some private windows', async () => {
    const { page, errors } = await openPage(studio);
    await page.route('**/storage.worker*', async (route) => {
      const answer = await route.fetch();
      const body = `Object.defineProperty(self, 'indexedDB', { value: undefined });\n${await answer.text()}`;
      await route.fulfill({ response: answer, body });
    });
    await page.goto(`${studio.url}#wall`);
    const strip = page.getByRole('status', { name: 'Saving' });
    await strip.getByText(/^Nothing is saved in this browser: what it keeps could not be opened/).waitFor();
    await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await retitle(page, 'In memory');
    expect(await titleOf(page)).toBe('In memory');
    expect(errors).toEqual([]);
    await page.context().close();
  });

  itInChromium('should be told when the disk is full, and no longer when there is room again', async () => {
    const { page } = await withProject();
    const worker = page.workers().find((each) => each.url().includes('storage.worker'))!;
    await worker.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('the disk is full', 'QuotaExceededError');
      };
      Object.assign(self, { makeRoom: () => (IDBObjectStore.prototype.put = put) });
    });
    await retitle(page, 'Too much');
    const strip = page.getByRole('status', { name: 'Saving' });
    await strip.getByText(/^Not saved \(the disk is full\)\. It is tried again every 10 seconds/).waitFor();
    await worker.evaluate(() => (self as unknown as { makeRoom(): void }).makeRoom());
    await expect.poll(async () => (await sections(page))['title'], { timeout: 30_000 }).toBe('Too much');
    await expect.poll(() => strip.count()).toBe(0);
    await page.context().close();
  });

  it('should not be written over by an older program', async () => {
    const { page, saved } = await withProject();
    await bare(page, studio);
    await putRecord(page, { database: 'pullstack', store: 'sections', key: 'version', value: 2 });
    await page.goto(`${studio.url}#chest`);
    const strip = page.getByRole('status', { name: 'Saving' });
    await strip.getByText(/the project saved here is of a later version of this program, and stays as it is/).waitFor();
    await retitle(page, 'Not to be kept');
    expect(await sections(page)).toEqual({ ...saved, version: 2 });
    await page.context().close();
  });
});

describe('the worker that saves', () => {
  itInChromium('should be replaced at once when it dies without a word, and lose nothing', async () => {
    const { page } = await withProject();
    const worker = page.workers().find((each) => each.url().includes('storage.worker'))!;
    await worker.evaluate(() => self.close());
    await retitle(page, 'After its death');
    await expect.poll(async () => (await sections(page))['title'], { timeout: 30_000 }).toBe('After its death');
    await retitle(page, 'And on');
    await expect.poll(async () => (await sections(page))['title']).toBe('And on');
    await page.context().close();
  });

  itInChromium('should be replaced when it hangs, the frame saying so meanwhile, and lose nothing', async () => {
    const { page } = await withProject();
    const worker = page.workers().find((each) => each.url().includes('storage.worker'))!;
    await worker.evaluate(() => {
      setTimeout(() => {
        for (;;);
      });
    });
    await retitle(page, 'After its hanging');
    const strip = page.getByRole('status', { name: 'Saving' });
    await strip.getByText('Saving takes longer than it should. Keep this tab open.').waitFor({ timeout: 15_000 });
    await expect.poll(async () => (await sections(page))['title'], { timeout: 30_000 }).toBe('After its hanging');
    await page.getByText('The part of the app that saves had stopped and was started anew; nothing was lost.').waitFor();
    await expect.poll(() => strip.count()).toBe(0);
    await page.context().close();
  });

  itInChromium('should be replaced at once when it throws', async () => {
    const { page } = await withProject();
    const worker = page.workers().find((each) => each.url().includes('storage.worker'))!;
    await worker.evaluate(() => {
      setTimeout(() => {
        throw new Error('broken');
      });
    });
    await retitle(page, 'After its fault');
    await expect.poll(async () => (await sections(page))['title'], { timeout: 3000 }).toBe('After its fault');
    expect(page.workers().some((each) => each === worker)).toBe(false);
    await page.context().close();
  });
});

describe('the workers that find prints', () => {
  itInChromium('should be known for dead when one ends without a word, and the wall found when asked once more', async () => {
    const { page } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.getByRole('button', { name: 'Another wall' }).click();
    await expect.poll(() => wall.getAttribute('data-state')).toBe('running');
    for (const worker of page.workers().filter((each) => each.url().includes('engine.worker')))
      void worker.evaluate(() => self.close()).catch(() => undefined);
    // Long before a silent worker would count as dead.
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 10_000 }).toBe('failed');
    await page
      .getByText(/The part of the app that works this out stopped \(it ended by itself\)/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.context().close();
  });

  itInChromium('should be replaced when one dies at work, the wall told in a sentence and found anew when asked', async () => {
    const { page } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.getByRole('button', { name: 'Another wall' }).click();
    await expect.poll(() => wall.getAttribute('data-state')).toBe('running');
    for (const worker of page.workers().filter((each) => each.url().includes('engine.worker'))) {
      void worker
        .evaluate(() => {
          setTimeout(() => {
            throw new Error('out of memory');
          });
        })
        .catch(() => undefined);
    }
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('failed');
    await page
      .getByText(/The part of the app that works this out stopped \(.*out of memory\); it was started anew/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Another wall' }).click();
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.context().close();
  });
});
