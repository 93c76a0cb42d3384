import { chromium } from 'playwright-core';
import { preview } from 'vite';
const server = await preview({ root: '/tmp/wt/n-lesson', logLevel: 'error', preview: { port: 0, host: '127.0.0.1', open: false } });
const url = `http://127.0.0.1:${server.httpServer.address().port}/`;
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
for (const [w, h, mobile] of [
  [1440, 900, false],
  [390, 844, true],
]) {
  const ctx = await browser.newContext({ viewport: { width: w, height: h }, hasTouch: mobile, isMobile: mobile });
  const page = await ctx.newPage();
  page.on('console', (m) => m.type() === 'error' && console.log(m.text()));
  page.on('pageerror', (e) => console.log('ERR', String(e)));
  await page.goto(url);
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: 'Lesson', exact: true }).click();
  await page
    .getByRole('heading', { name: /24 orders, \d+ different/ })
    .waitFor({ timeout: 30000 })
    .catch((e) => console.log('no heading'));
  await page.waitForTimeout(800);
  await page.screenshot({ path: `/tmp/lesson-${w}.png`, fullPage: true });
  console.log(w, await page.locator('lesson-room h2').first().textContent());
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: 'Drawer', exact: true }).click();
  await page.waitForTimeout(500);
  await page.screenshot({ path: `/tmp/drawer-${w}.png` });
  if (!mobile) {
    await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: 'Lesson', exact: true }).click();
    const boxes = page.getByRole('list', { name: /Pulls of the stack/ }).getByRole('checkbox');
    for (let i = 0; i < 12; i++) {
      const b = boxes.nth(i);
      if (!(await b.isChecked()) && !(await b.isDisabled())) await b.check();
    }
    const t = Date.now();
    await page
      .getByRole('heading', { name: /720 orders, \d+ different/ })
      .waitFor({ timeout: 60000 })
      .catch((e) => console.log('no heading 720'));
    console.log('six', Date.now() - t, 'ms', await page.locator('#count').textContent());
    await page.waitForTimeout(500);
    await page.screenshot({ path: `/tmp/lesson6-${w}.png` });
  }
  await ctx.close();
}
await browser.close();
await server.close();
