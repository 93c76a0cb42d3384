import { readFileSync } from 'node:fs';
import { PDFDocument } from 'pdf-lib';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pdfPages } from '../helpers/pdf-text.ts';
import { putRecord, records } from './databases.ts';
import { enter, openPage, openStudio, type Studio, watch } from './harness.ts';
import { orderFound, planSmallVisit } from './visit/small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('the log at the press', () => {
  it('should lose no tick that it has shown when the tab is killed', async () => {
    const { page, context, errors } = await openPage(studio, { width: 1024, height: 768 });
    await planSmallVisit(page, studio, 4);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled', checked: true }).waitFor();
    await press.getByRole('checkbox', { name: 'Sheet 3 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 3 pulled', checked: true }).waitFor();
    // No goodbye: the renderer dies between two ticks.
    await press.getByRole('checkbox', { name: 'Sheet 4 pulled' }).click({ noWaitAfter: true });
    const died = page.waitForEvent('crash');
    const session = await context.newCDPSession(page);
    void session.send('Page.crash').catch(() => undefined);
    await died;
    await page.close();

    const again = await context.newPage();
    watch(again, studio, errors);
    await again.goto(`${studio.url}#press`);
    await again.getByRole('button', { name: 'At the press' }).click();
    const back = again.getByRole('dialog', { name: 'At the press' });
    await back.getByRole('checkbox', { name: 'Sheet 1 pulled', checked: true }).waitFor();
    expect(await back.getByRole('checkbox', { name: 'Sheet 3 pulled' }).getAttribute('aria-checked')).toBe('true');
    expect(await back.getByRole('checkbox', { name: 'Sheet 2 pulled' }).getAttribute('aria-checked')).toBe('false');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should leave bad entries aside, say so, and keep the ticks in reach', async () => {
    const { page, context, errors } = await openPage(studio, { width: 1024, height: 768 });
    await planSmallVisit(page, studio, 3);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled', checked: true }).waitFor();
    const [visit] = Object.keys(await records(page, 'pullstack-log', 'visits'));
    for (const [i, value] of [
      null,
      { kind: 'pulled' },
      { id: 'x', atMs: 'soon', device: 'd', sheet: 1, kind: 'pulled', pulls: 7 },
    ].entries()) {
      await putRecord(page, { database: 'pullstack-log', store: 'events', key: [visit!, `bad ${i}`], value });
    }
    await page.reload();
    await enter(page, 'Press');
    await page.getByText(/3 of 4 entries of this visit's log cannot be read and were left aside, not deleted/).waitFor();
    await page.getByRole('button', { name: 'At the press' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled', checked: true }).waitFor();
    await press.getByRole('checkbox', { name: 'Sheet 3 pulled' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 3 pulled', checked: true }).waitFor();
    expect(Object.keys(await records(page, 'pullstack-log', 'events'))).toHaveLength(5);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should note what was pulled differently and undo it', async () => {
    const { page, context, errors } = await openPage(studio, { width: 1024, height: 768 });
    await planSmallVisit(page, studio, 3);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('button', { name: 'Pulled differently, sheet 2' }).click();
    const sheet = page.getByRole('dialog', { name: 'Sheet 2' });
    await sheet.getByLabel('Strokes').fill('3');
    // Every ink of the project can be in the screen, also one that no recipe of the visit prints.
    await sheet.getByLabel('Ink').selectOption('Shoal');
    await sheet.getByLabel('Off to the right, mm').fill('1.5');
    await sheet.getByLabel('Worth keeping as it came').check();
    await sheet.getByRole('button', { name: 'Pulled like this' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled', checked: true }).waitFor();
    await press.getByText(/Sheet 2 must look like this now: 1 of \d+ pulls?, kept as it came/).waitFor();
    await press.getByRole('img', { name: 'Sheet 2 as it must look now', exact: true }).waitFor();

    await press.getByRole('button', { name: 'Snap-off, squeegee, ink used…' }).click();
    const notes = page.getByRole('dialog', { name: 'Set-up 1', exact: true });
    const shoal = notes.getByRole('group', { name: /^Shoal used in this set-up/ });
    await shoal.getByLabel('or used, g').fill('40');
    await notes.getByRole('button', { name: 'Keep in the log' }).click();
    const grams = async () =>
      Object.values(await records(page, 'pullstack-log', 'events')).filter((event) => (event as { kind: string }).kind === 'weighed');
    await expect.poll(grams).toMatchObject([{ ink: 'Shoal', grams: 40, on: [[2, expect.any(String)]] }]);

    // A fault is mostly seen after the tick: it is said of the same pull, which counts once.
    await press.getByRole('checkbox', { name: 'Sheet 1 pulled' }).click();
    await press.getByText(/Print over sheets? 1.* from \d+:\d\d, stack from \d+:\d\d/).waitFor();
    await press.getByRole('button', { name: 'Pulled differently, sheet 1' }).click();
    const one = page.getByRole('dialog', { name: 'Sheet 1' });
    await one.getByLabel('Off downwards, mm').fill('2');
    await one.getByRole('button', { name: 'Pulled like this' }).click();
    await press.getByText(/Sheet 1 must look like this now: 1 of \d+ pulls?, pulled differently from its recipe/).waitFor();

    await press.getByRole('button', { name: 'Pulled differently, sheet 3' }).click();
    await page.getByRole('dialog', { name: 'Sheet 3' }).getByRole('button', { name: 'Spoiled', exact: true }).click();
    await expect.poll(() => press.getByRole('checkbox', { name: 'Sheet 3 pulled' }).isDisabled()).toBe(true);

    await press.getByRole('button', { name: 'Pulled differently, sheet 2' }).click();
    const happened = sheet.getByRole('list', { name: 'What happened to sheet 2' });
    expect(await happened.getByRole('listitem').first().textContent()).toMatch(/differently: in Shoal, 3 strokes, 1\.5 mm right/);
    await happened.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(() => happened.getByRole('listitem').count()).toBe(1);
    await sheet.getByRole('button', { name: 'Close' }).click();
    await press.getByRole('checkbox', { name: 'Sheet 2 pulled', checked: false }).waitFor();
    // Nothing reaches over the edge of a tablet or a phone.
    for (const width of [1024, 390]) {
      await page.setViewportSize({ width, height: 780 });
      expect(await press.evaluate((element) => element.scrollWidth <= element.clientWidth)).toBe(true);
    }
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('what is left of a visit', () => {
  it('should be planned anew, and a sheet as pulled be kept', async () => {
    const { page, context, errors } = await openPage(studio);
    await planSmallVisit(page, studio, 3);
    const headline = page
      .getByRole('status')
      .filter({ hasText: /set-ups/ })
      .first();
    const before = Number(/(\d+) set-ups/.exec((await headline.textContent())!)![1]);
    const boxes = page.getByRole('checkbox', { name: /^Sheet \d+ pulled/ });
    // Three prints, a proof and an over.
    for (const at of [0, 1, 2, 3, 4]) {
      await boxes.nth(at).click();
      await expect.poll(() => boxes.nth(at).isChecked()).toBe(true);
    }
    await page.getByRole('button', { name: 'Plan the rest around what is done' }).click();
    await expect
      .poll(async () => Number(/(\d+) set-ups/.exec((await headline.textContent().catch(() => '')) ?? '')?.[1]), { timeout: 60_000 })
      .toBe(before - 1);
    await orderFound(page);

    const sheets = page.getByRole('list', { name: 'Sheets as pulled' });
    await page.getByRole('textbox', { name: 'Where sheet 2 lies' }).fill('Box 4');
    await page.getByRole('textbox', { name: 'Where sheet 2 lies' }).press('Tab');
    await page.getByRole('button', { name: 'Keep sheet 2 as a recipe' }).click();

    // The rest and the log are still there after a reload, and the recipe in the Chest.
    await page.reload();
    await expect
      .poll(
        () =>
          sheets
            .getByText(/1 of \d+ pulls/)
            .count()
            .catch(() => 0),
        { timeout: 30_000 },
      )
      .toBe(5);
    expect(await page.getByRole('textbox', { name: 'Where sheet 2 lies' }).inputValue()).toBe('Box 4');
    expect(Number(/(\d+) set-ups/.exec((await headline.textContent())!)![1])).toBe(before - 1);

    // The log goes out as a file and comes back without doubling anything.
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save the log as a file' }).click(),
    ]);
    const path = await saved.path();
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Bring in another device’s log…' }).click(),
    ]);
    await chooser.setFiles({ name: 'tablet.log.json', mimeType: 'application/json', buffer: readFileSync(path) });
    await page.getByText('tablet.log.json: nothing new.').waitFor();

    // What cannot be true is told, and mended there: no set-up has such a sheet.
    const log = JSON.parse(readFileSync(path, 'utf8')) as { events: { sheet: number; kind: string; id: string }[] };
    log.events = log.events
      .filter((event) => event.kind === 'pulled')
      .slice(0, 1)
      .map((event) => ({ ...event, sheet: 99, id: 'other' }));
    const [again] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Bring in another device’s log…' }).click(),
    ]);
    await again.setFiles({ name: 'phone.log.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(log)) });
    const contradiction = page.getByText(/Sheet 99 is in the log, but the visit has no sheet of that number/);
    await contradiction.waitFor();
    await page.getByRole('button', { name: 'Undo the entry of sheet 99' }).click();
    await contradiction.waitFor({ state: 'detached' });

    await enter(page, 'Chest');
    await page.getByRole('listitem', { name: /sheet 2 as pulled/ }).waitFor();
    // The visit lies in the Chest with its sheets; following the print opens it.
    const visits = page.getByRole('region', { name: 'Visits' });
    await visits.getByLabel('Sheets of').selectOption({ index: 1 });
    await expect.poll(() => visits.getByRole('listitem', { name: /^Sheet \d/ }).count(), { timeout: 20_000 }).toBe(5);
    expect(await visits.getByRole('textbox', { name: 'Where sheet 2 lies' }).inputValue()).toBe('Box 4');
    await visits.getByRole('img', { name: 'Sheet 2 as pulled', exact: true }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

/** Pulls all that is left in the press mode, set-up by set-up. */
async function pullAll(page: Page): Promise<void> {
  const press = page.getByRole('dialog', { name: 'At the press' });
  for (;;) {
    const left = press.locator('button.tick[aria-checked=false]:not([disabled])');
    while ((await left.count()) > 0) {
      const count = await left.count();
      await left.first().click();
      // Nobody waits here for films to dry.
      const asked = press.getByRole('button', { name: 'Pulled, and ask no more about drying' });
      const settled = async (): Promise<boolean> => (await left.count()) < count || (await asked.count()) > 0;
      await expect.poll(settled).toBe(true);
      if ((await asked.count()) > 0) await asked.click();
      await expect.poll(() => left.count()).toBeLessThan(count);
    }
    const ends = press.getByText(/(Set-up \d+ is|All set-ups are) done\./);
    await ends.waitFor();
    if ((await ends.innerText()).startsWith('All')) break;
    await press.getByRole('button', { name: /^To set-up/ }).click();
    await ends.waitFor({ state: 'detached' });
  }
  await press.getByRole('button', { name: 'To the sheets' }).click();
  await expect
    .poll(() =>
      page.getByRole('heading', { name: 'Sheets', exact: true }).evaluate((heading) => heading.getBoundingClientRect().top < innerHeight),
    )
    .toBe(true);
}

async function saved(page: Page, button: Locator): Promise<Buffer> {
  const [file] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), button.click()]);
  return readFileSync(await file.path());
}

/** The section of editions as the browser keeps it. */
function savedEditions(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const asked = indexedDB.open('pullstack');
        asked.onsuccess = () => {
          const got = asked.result.transaction('sections').objectStore('sections').get('editions');
          got.onsuccess = () => resolve(got.result === undefined ? 'none' : JSON.stringify(got.result));
          asked.result.close();
        };
      }),
  );
}

describe('logs of two devices', () => {
  it('should show a tick in the other tab at once, and contradictions when a file is brought in', async () => {
    const { page, context, errors } = await openPage(studio);
    await planSmallVisit(page, studio, 3);
    const first = page.getByRole('checkbox', { name: /^Sheet 1 pulled/ }).first();
    const other = await context.newPage();
    watch(other, studio, errors);
    await other.goto(`${studio.url}#press`);
    const there = other.getByRole('checkbox', { name: /^Sheet 1 pulled/ }).first();
    await there.waitFor();
    expect(await there.isChecked()).toBe(false);
    await first.click();
    await expect.poll(() => there.isChecked()).toBe(true);
    await other.close();

    // A tablet that lay beside the press ticked the same pull, and one that no sheet of the visit has.
    const log = JSON.parse((await saved(page, page.getByRole('button', { name: 'Save the log as a file' }))).toString()) as {
      events: { id: string; device: string; sheet: number }[];
    };
    expect(log.events).toHaveLength(1);
    const [event] = log.events;
    log.events = [
      { ...event!, id: 'tablet-1', device: 'tablet' },
      { ...event!, id: 'tablet-2', device: 'tablet', sheet: 77 },
    ];
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Bring in another device’s log…' }).click(),
    ]);
    await chooser.setFiles({ name: 'tablet.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(log)) });
    await page.getByText('tablet.json: 2 entries brought in; 2 contradictions, shown with the sheets.').waitFor();
    await page.getByText(/^Sheet 1: pull \d+ of .* is logged twice; look at the sheet and undo one/).waitFor();
    await page.getByText(/^Sheet 77 is in the log, but the visit has no sheet of that number/).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});

describe('an edition', () => {
  it('should come of a sheet that was pulled differently, be numbered by its sheets, and be documented', async () => {
    const { page, context, errors } = await openPage(studio);
    await planSmallVisit(page, studio, 2);
    await page.getByRole('button', { name: 'At the press' }).click();
    const press = page.getByRole('dialog', { name: 'At the press' });
    await press.getByRole('button', { name: 'Pulled differently, sheet 2' }).click();
    const talk = page.getByRole('dialog', { name: 'Sheet 2' });
    await talk.getByLabel('Strokes').fill('3');
    await talk.getByLabel('Worth keeping as it came').check();
    await talk.getByRole('button', { name: 'Pulled like this' }).click();
    await pullAll(page);
    await page.getByRole('button', { name: 'Keep sheet 2 as a recipe' }).click();

    await enter(page, 'Chest');
    const kept = page.getByRole('listitem', { name: /sheet 2 as pulled/ });
    await kept.getByText(/^Came from /).waitFor();
    await kept.getByRole('button', { name: 'Edition…' }).click();
    const dialog = page.getByRole('dialog', { name: /^Edition of/ });
    // What an undo took away stays away, also after a reload.
    await dialog.getByRole('textbox', { name: 'Artist', exact: true }).fill('nobody');
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => savedEditions(page)).toMatch(/nobody/);
    await page.getByRole('button', { name: 'Undo: change an edition' }).click();
    await expect.poll(() => savedEditions(page)).toBe('none');
    await page.reload();
    await kept.getByRole('button', { name: 'Edition…' }).click();
    expect(await dialog.getByRole('textbox', { name: 'Artist', exact: true }).inputValue()).toBe('');

    await dialog.getByLabel('Artist’s proofs (AP)').fill('9');
    await dialog.getByText(/9 artist’s proofs are 45 % of the edition/).waitFor();
    await dialog.getByLabel('Impressions').fill('3');
    await dialog.getByLabel('Artist’s proofs (AP)').fill('1');
    await dialog.getByLabel('Printer’s proofs (PP)').fill('0');
    expect(await dialog.getByLabel('Numbering').textContent()).toBe('1/3 · 2/3 · 3/3 · BAT · AP 1/1');
    await dialog.getByText('Nothing of this print was logged yet.', { exact: false }).waitFor();
    await dialog.getByLabel('Spare sheets').fill('1');
    await dialog.getByLabel('Spare sheets').press('Tab');
    await dialog.getByLabel(/^By itself/).waitFor();
    await dialog.getByRole('button', { name: 'Take 6 sheets to the Press' }).click();
    // The edition has a pull order of its own.
    await page.getByText('6 sheets in all').waitFor();
    await page
      .getByRole('button', { name: /^(Find the pull order|Plan again)$/ })
      .first()
      .click();
    const anew = page.getByRole('button', { name: 'Find anew' });
    if ((await anew.count()) > 0) await anew.click();
    await orderFound(page);
    await page.getByRole('button', { name: 'At the press' }).click();
    await press.getByRole('button', { name: 'Pulled differently, sheet 2' }).click();
    await talk.getByLabel('Note').fill('ink on the margin');
    await talk.getByRole('button', { name: 'Spoiled', exact: true }).click();
    await expect.poll(() => press.getByRole('checkbox', { name: 'Sheet 2 pulled' }).isDisabled()).toBe(true);
    await pullAll(page);
    await page.getByRole('button', { name: 'Numbers and documentation, in the Chest' }).click();

    await kept.getByRole('button', { name: 'Edition…' }).click();
    const marks = dialog.getByRole('list', { name: 'Marks of the sheets' });
    await expect.poll(() => marks.getByRole('listitem').count()).toBe(6);
    const chosen = (sheet: number): Promise<string | null> =>
      marks
        .getByLabel(`Mark of sheet ${sheet}`, { exact: true })
        .evaluate((select) => (select as HTMLSelectElement).selectedOptions[0]!.textContent);
    expect(await Promise.all([1, 3, 4, 5, 6].map(chosen))).toEqual(['1/3', '2/3', '3/3', 'BAT', 'AP 1/1']);
    expect(await marks.getByRole('listitem', { name: 'Sheet 2', exact: true }).textContent()).toMatch(/reject\s*ink on the margin/);
    await marks.getByLabel('Mark of sheet 1', { exact: true }).selectOption('BAT');
    await expect.poll(async () => (await Promise.all([1, 3, 4, 5, 6].map(chosen))).join()).toBe('BAT,1/3,2/3,3/3,AP 1/1');

    // What is typed outlives the window and the page.
    await dialog.getByRole('textbox', { name: 'Artist', exact: true }).fill('Łucja Žižková');
    await dialog.getByRole('textbox', { name: 'Workshop and printer' }).fill('Εργαστήριο Екатерина');
    await dialog
      .getByLabel(/^Fate of screen/)
      .first()
      .selectOption('cancelled');
    await dialog
      .getByLabel(/by whom$/)
      .first()
      .fill('M. Sand');
    await dialog
      .getByLabel(/by whom$/)
      .first()
      .press('Tab');
    await dialog.getByRole('button', { name: 'Close' }).click();
    await page.reload();
    await kept.getByRole('button', { name: 'Edition…' }).click();
    await expect.poll(() => dialog.getByRole('textbox', { name: 'Artist', exact: true }).inputValue()).toBe('Łucja Žižková');
    await expect.poll(async () => chosen(1)).toBe('BAT');

    for (const [size, width] of [
      ['A4', 210 / 25.4],
      ['Letter', 8.5],
    ] as const) {
      await dialog.getByLabel('Page size of the documentation').selectOption(size);
      const bytes = await saved(page, dialog.getByRole('button', { name: 'Save the documentation as PDF' }));
      expect((await PDFDocument.load(bytes)).getPage(0).getWidth() / 72).toBeCloseTo(width, 3);
      const text = (await pdfPages(bytes)).join('\n');
      for (const line of [
        'Łucja Žižková',
        'Εργαστήριο Екатерина',
        'cancelled, by M. Sand',
        '1 sheet spoiled and taken out:',
        'Signature of the artist',
      ])
        expect(text).toContain(line);
      expect(text).toMatch(/\nBAT\n1\n/);
      expect(text).toMatch(/\n1\/3\n3\n/);
      expect(text).toMatch(/spoiled: ink on the margin/);
      expect(text).toMatch(/\d+\/cm, thread \d+ µm/);
    }
    await dialog.getByRole('button', { name: 'Close' }).click();

    // The family is followed through both visits, with the marks of this one.
    const visits = page.getByRole('region', { name: 'Visits' });
    await visits.getByLabel('Sheets of').selectOption({ index: 1 });
    // Two prints with their proof and over, and the six of the edition, whose spare is its over.
    await expect.poll(() => visits.getByRole('listitem', { name: /^Sheet \d/ }).count(), { timeout: 20_000 }).toBe(10);
    await visits.getByText('AP 1/1').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  }, 240_000);
});
