import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

interface Upload {
  name: string;
  mimeType: string;
  buffer: Buffer;
}

const svg = (name: string, content: string | Buffer): Upload => ({
  name,
  mimeType: 'image/svg+xml',
  buffer: Buffer.from(content),
});

const GOOD = svg(
  'plank.svg',
  '<svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="40mm" viewBox="0 0 120 40"><path d="M0 0h120v40H0z"/></svg>',
);

const BAD: Upload[] = [
  svg('empty.svg', ''),
  svg('cut.svg', '<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm"><path d="M0 0h1'),
  svg('binary.svg', Buffer.from(Array.from({ length: 4000 }, (_, i) => (i * 37) % 256))),
  svg(
    'bomb.svg',
    `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa">${Array.from({ length: 12 }, (_, i) => `<!ENTITY b${i} "${i === 0 ? '&a;&a;' : `&b${i - 1};&b${i - 1};&b${i - 1};&b${i - 1};`}">`).join('')}]><svg xmlns="http://www.w3.org/2000/svg"><text>&b11;</text></svg>`,
  ),
  svg('page.svg', '<html><body>not a drawing</body></html>'),
];

/** Files over this go through the page itself: the driver takes at most 50 MB. */
const HUGE = 51 * 1024 * 1024;

async function choose(page: Page, button: RegExp, files: Upload[]): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: button }).first().click();
  await (await chooser).setFiles(files);
}

describe('bad files', () => {
  it('should be told in a sentence each, and leave the drawer as it was', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#drawer`);
    const shapes = page.getByRole('list', { name: 'Shapes', exact: true }).getByRole('listitem');
    const names = (): Promise<string[]> => shapes.locator('.name').allTextContents();
    await expect.poll(() => shapes.count()).toBe(12);
    const before = await names();
    await choose(page, /Choose SVG files/, [...BAD, GOOD]);
    const report = page.getByRole('status', { name: 'What the files came to' });
    for (const { name } of BAD) {
      await expect.poll(() => report.getByText(name).count(), { message: name }).toBe(1);
    }
    // The good one among them came in.
    await expect.poll(() => shapes.count()).toBe(13);
    expect(await names()).toEqual([...before, 'plank']);

    // A huge file is refused by its size, before it is read.
    await page.evaluate((size) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(size)], 'huge.svg', { type: 'image/svg+xml' }));
      const room = document.querySelector('app-root')!.shadowRoot!.querySelector('drawer-room')!;
      const target = room.shadowRoot!.firstElementChild!;
      target.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, composed: true }));
    }, HUGE);
    await expect.poll(() => report.getByText('huge.svg').count()).toBe(1);
    expect(await names()).toEqual([...before, 'plank']);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should be told for recipes too, and leave the chest as it was', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#chest`);
    const json = (name: string, content: string): Upload => ({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
    for (const [name, content, sentence] of [
      ['none.json', '', /none\.json: the file is empty/],
      ['cut.json', '{"format":"pullstack-recipe","version":1', /cut\.json: the file is not whole JSON/],
      ['later.json', '{"format":"pullstack-recipe","version":7}', /later\.json: the field "version" is 7/],
      ['other.json', '{"a":1}', /other\.json: the field "format"/],
    ] as const) {
      await choose(page, /recipe files?/i, [json(name, content)]);
      await expect.poll(() => page.getByText(sentence).count(), { message: name }).toBeGreaterThan(0);
    }
    expect(await page.getByRole('button', { name: /Open on Bench/ }).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
