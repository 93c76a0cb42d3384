import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('the teacher', () => {
  it('should show the orders of four pulls, and merge pictures by moving a shape away', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#lesson`);
    await page.getByText('Pulls of this lesson').click();
    const chosen = page.getByRole('list', { name: /Pulls of the stack/ }).getByRole('checkbox', { checked: true });
    await expect.poll(() => chosen.count()).toBe(4);
    const headline = page.getByRole('heading', { name: /24 orders, \d+ different prints?/ });
    await expect.poll(() => headline.count(), { timeout: 30_000 }).toBe(1);
    const pictures = async (): Promise<number> => Number(/, (\d+) different/.exec((await headline.textContent())!)![1]);
    const before = await pictures();
    expect(before).toBeGreaterThan(4);

    // Far to the right, the shape meets no other any more.
    const shape = page.getByRole('group', { name: 'Shapes to move' }).getByRole('button').first();
    await shape.focus();
    const right = page.getByRole('spinbutton', { name: /right/i }).first();
    await right.fill('500');
    await right.press('Enter');
    await expect.poll(pictures, { timeout: 30_000 }).toBeLessThan(before);
    await page.getByRole('button', { name: 'Put back' }).click();
    await expect.poll(pictures, { timeout: 30_000 }).toBe(before);

    // The space bar lays one pull more; what lies on the sheet is said as well.
    const said = page.locator('ps-lesson-board').getByRole('status');
    const saysOf = async (words: RegExp): Promise<void> =>
      expect.poll(() => said.allTextContents().then((all) => all.join(' '))).toMatch(words);
    await page.getByRole('heading', { name: /Why they are/ }).click();
    await page.keyboard.press('Space');
    await saysOf(/Bare paper/);
    await page.keyboard.press('Space');
    await page.keyboard.press('Space');
    await saysOf(/2 of 4: Rope coil, Weed/);
    await page.keyboard.press('Space');
    await page.keyboard.press('Space');
    await saysOf(/Picture 1 of \d+/);

    // Another order by keys, and the two prints compared, with the place where they differ.
    await page
      .getByRole('list', { name: 'The pulls, last down first' })
      .getByRole('button', { name: /^1 ?Great rib/ })
      .focus();
    await page.keyboard.press('Alt+ArrowUp');
    await saysOf(/Picture [2-9]\d* of/);
    await page.getByRole('button', { name: 'Compare picture 1 with the one shown' }).click();
    await saysOf(/Where 1 and 2 lie: [\d,]+ mm², ΔE \d/);
    await page.getByRole('button', { name: 'Stop comparing' }).click();

    // Inks that only absorb fall together: with all inks made clear, no order shows.
    for (const name of ['Great rib', 'Rope coil', 'Fenders', 'Sounding leads']) {
      await page
        .getByRole('list', { name: 'The pulls, last down first' })
        .getByRole('button', { name: new RegExp(`^\\d ?${name}`) })
        .click();
      const slider = page.getByRole('slider', { name: /clearer to the left/ });
      await slider.focus();
      await page.keyboard.press('Home');
    }
    await expect.poll(() => page.getByRole('heading', { name: '24 orders, 1 different print' }).count(), { timeout: 30_000 }).toBe(1);
    await page.getByRole('button', { name: 'Put back' }).click();
    await expect.poll(pictures, { timeout: 30_000 }).toBe(before);

    // One pull fewer: three pulls have six orders.
    await chosen.first().uncheck();
    await expect.poll(() => page.getByRole('heading', { name: /6 orders, \d different prints?/ }).count(), { timeout: 30_000 }).toBe(1);

    // A level keeps its answer until someone asks, and is checked.
    await page.getByRole('button', { name: 'Levels' }).click();
    await page.getByRole('button', { name: /^6 Exactly three/ }).click();
    await page.getByText('The print is hidden until you look.').waitFor();
    expect(await page.getByRole('list', { name: 'All pictures' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Look', exact: true }).click();
    await page.getByText('Not yet: the orders print 5 pictures.').waitFor();
    await page.getByRole('button', { name: 'Show one way' }).click();
    await page.getByText('Yes: the orders print 3 pictures.').waitFor();

    // On a projector the print is whole at first sight, and no type is smaller than what is read at 8 m: a
    // capital of 16 minutes of arc (ISO 9241-303, from memory) on a picture 2 m wide, 0.73 of the type's size.
    await page.setViewportSize({ width: 1280, height: 720 });
    await page.getByRole('button', { name: 'Board', exact: true }).click();
    await page.getByRole('button', { name: 'Projector' }).click();
    await page.getByRole('button', { name: 'Leave' }).waitFor();
    const sheet = (await page.locator('ps-lesson-board ps-lesson-sheet').first().boundingBox())!;
    expect(sheet.y).toBeGreaterThanOrEqual(0);
    expect(sheet.y + sheet.height).toBeLessThanOrEqual(720);
    const leastPx = (8000 * Math.tan((16 / 60) * (Math.PI / 180))) / 0.73 / (2000 / 1280);
    const sizes = await page.locator('lesson-room').evaluate((room) => {
      const found: number[] = [];
      const walk = (root: ParentNode): void => {
        for (const element of root.querySelectorAll('*')) {
          const written = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent!.trim() !== '');
          if (written && element.tagName !== 'STYLE' && element.checkVisibility())
            found.push(parseFloat(getComputedStyle(element).fontSize));
          if (element.shadowRoot !== null) walk(element.shadowRoot);
        }
      };
      walk(room.shadowRoot!);
      return found;
    });
    expect(sizes.length).toBeGreaterThan(10);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(Math.floor(leastPx));
    await page.getByRole('button', { name: 'Leave' }).click();

    // A link carries the lesson to another browser, which keeps nothing of it.
    await page.getByRole('button', { name: 'Link…' }).click();
    const address = (await page.getByRole('link', { name: 'Open it here' }).getAttribute('href'))!;
    await page.getByRole('img', { name: 'Code of this lesson' }).waitFor();
    const student = await openPage(studio, { width: 390, height: 844 });
    await student.page.goto(address);
    await student.page.getByText(/^6 orders, \d different prints?$/).waitFor();
    const print = (await student.page.locator('ps-lesson-sheet').boundingBox())!;
    const answers = (await student.page.getByRole('list', { name: 'All pictures' }).boundingBox())!;
    expect(print.y).toBeGreaterThanOrEqual(0);
    expect(answers.y + answers.height).toBeLessThanOrEqual(844);
    expect(await student.page.evaluate(() => indexedDB.databases())).toEqual([]);
    await student.page.goto(`${studio.url}#lesson=abc`);
    await student.page.getByRole('alert').filter({ hasText: 'This address is cut off or was changed' }).waitFor();
    expect(student.errors).toEqual([]);
    await student.context.close();
    expect(errors).toEqual([]);
    await context.close();
  });
});
