import { preview, type PreviewServer } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { records, retitle, titleOf } from '../databases.ts';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** What browsers give to secure contexts only (W3C Secure Contexts; the specifications of each). */
function deleteSecureFeatures(): void {
  delete (Crypto.prototype as Partial<Crypto>).randomUUID;
  for (const name of ['locks', 'clipboard', 'wakeLock', 'storage', 'serviceWorker', 'mediaDevices'] as const) {
    delete (Navigator.prototype as Partial<Navigator>)[name];
  }
}

describe('a page over plain http', () => {
  it('should open, save, make things and say what is missing', async () => {
    const { page, context, errors } = await openPage(studio);
    await context.addInitScript(deleteSecureFeatures);
    await page.goto(`${studio.url}#chest`);
    expect(await page.evaluate(() => 'locks' in navigator || 'randomUUID' in crypto)).toBe(false);
    await page.locator('project-menu button.open').click();
    const dialog = page.getByRole('dialog', { name: 'Project' });
    for (const sentence of [/Two tabs are not guarded/, /screen cannot be kept awake/, /cannot be asked to keep the project/]) {
      await dialog.getByText(sentence).waitFor();
    }
    await dialog.getByRole('button', { name: 'Close' }).click();
    await retitle(page, 'At the press');
    await expect.poll(async () => (await records(page, 'pullstack', 'sections'))['title']).toBe('At the press');
    // An id is made for each shape that comes in.
    await enter(page, 'Drawer');
    const chooser = page.waitForEvent('filechooser');
    await page
      .getByRole('button', { name: /Choose SVG files/ })
      .first()
      .click();
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="40mm" viewBox="0 0 120 40"><path d="M0 0h120v40H0z"/></svg>';
    await (await chooser).setFiles([{ name: 'plank.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(svg) }]);
    await expect.poll(() => page.getByText('13', { exact: true }).count()).toBeGreaterThan(0);
    await enter(page, 'Wall');
    await expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.reload();
    await expect.poll(() => titleOf(page)).toBe('At the press');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should open from an address of the local network, where the browser takes those features away', async () => {
    const server: PreviewServer = await preview({
      root: new URL('../../..', import.meta.url).pathname,
      logLevel: 'error',
      preview: { port: 0, host: '0.0.0.0', open: false },
    });
    const address = server.resolvedUrls?.network[0];
    if (address === undefined) throw new Error('this machine has no address but its own; the test needs one');
    const context = await studio.browser.newContext();
    const page = await context.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    await page.goto(`${address}#chest`);
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    await retitle(page, 'On the tablet');
    await expect.poll(async () => (await records(page, 'pullstack', 'sections'))['title']).toBe('On the tablet');
    expect(errors).toEqual([]);
    await context.close();
    await server.close();
  });
});
