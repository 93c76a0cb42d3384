import { createCanvas } from '@napi-rs/canvas';
import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MadePlan } from '../../../src/components/output/made-plan.ts';
import { benchBlocks } from '../../../src/components/output/papers/bench-blocks.ts';
import { cardsOf } from '../../../src/components/output/papers/card-blocks.ts';
import { coverBlocks } from '../../../src/components/output/papers/cover-blocks.ts';
import { type PaperAsked, pictureRows } from '../../../src/components/output/papers/paper-choice.ts';
import { stencilBlocks, USUAL_STOCK } from '../../../src/components/output/papers/stencil-blocks.ts';
import { pullSheetPdf } from '../../../src/components/output/pull-sheet-pdf.ts';
import { framesTold } from '../../../src/components/press/plan/screen-made.ts';
import { ScreenStates } from '../../../src/components/press/plan/screen-states.ts';
import { visitFilms } from '../../../src/components/ui/films/film-offers.ts';
import { gramsText, wallClock } from '../../../src/components/words/plan-words.ts';
import { rangesText } from '../../../src/engine/base/words.ts';
import { withFilms } from '../../../src/engine/explore/prepare/frames.ts';
import type { SheetAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { recipeOf, studioOfRecipe } from '../../../src/engine/recipe/write.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { setUpInk } from '../../../src/engine/visit/quantities/set-up-ink.ts';
import { stencilsOf } from '../../../src/engine/visit/stencils/stencil-list.ts';
import { planVisit, type PressPlan, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { StudioPictures } from '../../../src/workers/jobs/pictures.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { popplerPages, popplerSizes, popplerText } from '../../helpers/poppler.ts';
import { jobVisit } from '../../helpers/printer-cases.ts';
import { smallProject } from '../../helpers/small-project.ts';

function planned(input: VisitInput, budgetMs: number): MadePlan {
  let plan: PressPlan | null = null;
  for (const step of planVisit(input, budgetMs)) plan = step;
  return { plan: plan!, input, recipes: input.runs.map(({ recipe }) => recipe) };
}

/** Draws states as the app does; Skia writes the PNG. */
function drawer({ recipes }: MadePlan): (recipe: number, pulls: readonly Pull[]) => Promise<Uint8Array> {
  const studios = recipes.map((recipe) => new StudioPictures(studioOfRecipe(recipe)));
  return (recipe, pulls) => {
    const picture = studios[recipe]!.thumbnail({ pulls, heightPx: pictureRows(ALL), relative: true });
    const canvas = createCanvas(picture.widthPx, picture.heightPx);
    const context = canvas.getContext('2d');
    const data = context.createImageData(picture.widthPx, picture.heightPx);
    data.data.set(picture.pixels);
    context.putImageData(data, 0, 0);
    return Promise.resolve(new Uint8Array(canvas.toBuffer('image/png')));
  };
}

const ALL: PaperAsked = { what: 'visit', cards: false, day: 1, setUp: 0 };
/** Friday 27 November 2026, as days since 1970. */
const FRIDAY = Date.parse('2026-11-27T00:00:00Z') / 86_400_000;
const VISITS = ['Ebb day 1 of 1 7', 'Flood day 1 of 1 7'].map((title, at) => ({
  title,
  firstDay: FRIDAY + 3 * at,
  days: [{ day: 1, bed: 0, fromMinute: 570, toMinute: 930, setUps: 7 }],
}));
const NO_PICTURE = (): Promise<null> => Promise.resolve(null);

function pdfOf(
  made: MadePlan,
  asked: PaperAsked,
  size: 'A4' | 'Letter' = 'A4',
  picture: ReturnType<typeof drawer> | typeof NO_PICTURE = NO_PICTURE,
) {
  return pullSheetPdf(made, { size, asked, heading: 'Slack tide', outOfDate: false, stock: USUAL_STOCK, visits: VISITS, fonts, picture });
}

const flat = (pages: readonly string[]): string => pages.join(' ').replaceAll(/\s+/g, ' ');

const jobs: Record<'A' | 'B', MadePlan> = {} as never;

const wholes = new Map<'A' | 'B', Uint8Array>();

/** All papers of a job on A4, made once. */
async function wholeOf(job: 'A' | 'B'): Promise<Uint8Array> {
  const bytes = wholes.get(job) ?? (await pdfOf(jobs[job], ALL)).bytes;
  wholes.set(job, bytes);
  return bytes;
}

beforeAll(() => {
  for (const job of ['A', 'B'] as const) jobs[job] = planned(jobVisit(job), 100);
}, 300_000);

describe('the papers of a visit', () => {
  it.each([
    ['A', 'A4', 20, 5],
    ['A', 'Letter', 20, 5],
    ['B', 'A4', 40, 5],
    ['B', 'Letter', 40, 5],
  ] as const)('should be few and light: job %s on %s under %i pages and %i MB', async (job, size, pages, megabytes) => {
    const made = jobs[job];
    const { bytes, missing } = await pdfOf(made, ALL, size, drawer(made));
    expect(missing).toEqual([]);
    expect(popplerPages(bytes)).toBeLessThan(pages);
    expect(bytes.length).toBeLessThan(1e6 * megabytes);
    for (const page of (await PDFDocument.load(bytes)).getPages()) {
      // ISO 216: A4 is 210 × 297 mm; ANSI/ASME Y14.1: letter is 8.5 × 11 in; some pages lie on their long side.
      const sides = [page.getWidth() / 72, page.getHeight() / 72].sort((a, b) => a - b);
      expect(sides[0]).toBeCloseTo(size === 'A4' ? 210 / 25.4 : 8.5, 3);
      expect(sides[1]).toBeCloseTo(size === 'A4' ? 297 / 25.4 : 11, 3);
    }
  });

  it('should tell of each set-up on the sheet of its day when, what, how much, how and on which sheets', async () => {
    const { plan, recipes, input } = jobs.A;
    const inks = setUpInk(plan, recipes, input.press);
    for (let day = 1; day <= plan.daysNeeded; day++) {
      const pages = popplerText((await pdfOf(jobs.A, { ...ALL, what: 'day', day })).bytes);
      // A day of up to twenty set-ups stands on one page.
      const own = plan.cards.filter((_, at) => plan.times[at]!.day === day);
      if (own.length <= 20) expect(pages).toHaveLength(1);
      for (const page of pages) expect(page).toMatch(new RegExp(`Bench sheet, day ${day}: [\\s\\S]*Time +Set-up +Screen +Ink, grams`));
      const text = flat(pages);
      for (const card of own) {
        const at = card.number - 1;
        const { startMinute, endMinute } = plan.times[at]!;
        expect(text).toMatch(new RegExp(`${wallClock(plan, startMinute)} ${card.number} ${card.screen.key} ${card.screen.name} `));
        for (const words of [`to ${wallClock(plan, endMinute)}`, `${gramsText(inks[at]!.grams)} g`]) expect(text).toContain(words);
        // A long list of sheets wraps within its column.
        for (const part of rangesText(card.sheets).split(', ')) expect(text).toContain(part);
        for (const { sheets, strokes } of card.instructions!.filter((each) => each.strokes !== card.strokes)) {
          expect(text).toContain(`${rangesText(sheets)}: ${strokes} stroke`);
        }
      }
      expect(text).toMatch(/safety data sheets/);
    }
  });

  it('should give the week on one page', async () => {
    const pages = popplerText((await pdfOf(jobs.A, { ...ALL, what: 'week' })).bytes);
    expect(pages).toHaveLength(1);
    for (const words of ['Fri 27 Nov 9:30 to 15:30 Ebb day 1 of 1 7', 'Mon 30 Nov 9:30 to 15:30 Flood day 1 of 1 7'])
      expect(flat(pages)).toContain(words);
  });

  it('should give a card for one set-up alone, or four of them to a page', async () => {
    const one = popplerText((await pdfOf(jobs.A, { ...ALL, what: 'set-up', setUp: 4 })).bytes);
    expect(one).toHaveLength(1);
    expect(flat(one)).toMatch(/Set-up 5 /);
    const day = await pdfOf(jobs.A, { ...ALL, what: 'day', cards: true });
    const own = jobs.A.plan.times.filter((time) => time.day === 1).length;
    const cards = popplerText(day.bytes).slice(1);
    expect(flat(cards).match(/Set-up \d+(?!, continued)\b/g)!.length).toBeGreaterThanOrEqual(own);
    expect(cards.length).toBeLessThan(own);
    for (const { number, sheets } of jobs.A.plan.cards.filter((_, at) => jobs.A.plan.times[at]!.day === 1)) {
      expect(flat(cards)).toContain(`Set-up ${number} `);
      for (const sheet of sheets) expect(flat(cards)).toMatch(new RegExp(`\\b${sheet}\\b`));
    }
  });

  it('should put four passports of twenty set-ups on a page', async () => {
    const pages = popplerText(await wholeOf('B'));
    const passports = pages.map((page) => page.match(/, each \d+ set-ups/g)?.length ?? 0).filter((count) => count > 0);
    expect(passports.reduce((sum, count) => sum + count, 0)).toBe(30);
    expect(Math.max(...passports)).toBe(4);
    expect(passports.length).toBeLessThanOrEqual(9);
  });

  it('should have no type below 6 pt, and none below 9 pt where it is read at arm’s length', async () => {
    expect(Math.min(...popplerSizes(await wholeOf('B')))).toBeGreaterThanOrEqual(6);
    expect(Math.min(...popplerSizes((await pdfOf(jobs.A, { ...ALL, what: 'day' })).bytes))).toBeGreaterThanOrEqual(9);
  });

  it('should show every sheet and every count of strokes in the grid, with its heads on each page', async () => {
    const { plan } = jobs.A;
    const pages = popplerText(await wholeOf('A')).filter((page) => page.startsWith('Set-up grid'));
    const rows = pages.join('\n').split('\n');
    for (const { number } of plan.sheets) for (const page of pages) expect(page).toMatch(new RegExp(`(^|\\s)${number}(\\s|$)`, 'm'));
    for (const card of plan.cards) {
      const twice = card.states
        .filter(({ after, prints }) => after.slice(-prints.length).reduce((sum, pull) => sum + pull.strokes, 0) === 2)
        .reduce((sum, { sheets }) => sum + sheets.length, 0);
      const row = rows.find((line) => new RegExp(`^\\s*${card.number} +${card.screen.key} `).test(line))!;
      // Behind the ink and its offset there are numerals alone.
      expect(/[\s\d]*$/.exec(row)![0].match(/2/g)?.length ?? 0, row).toBe(twice);
    }
  });

  it('should list stencils with frames, exposure, paper to cut and cautions that defer', async () => {
    const text = flat(popplerText(await wholeOf('A')));
    for (const words of [
      /Stencils: \d+ screens to make, by mesh/,
      /cm² open/,
      /Frames: \d+ frames?/,
      /Exposure/,
      /Cut list: out of 700 × 1000 mm, grain along 1000/,
    ])
      expect(text).toMatch(words);
    expect(text).toMatch(/do not use dichromates/);
    expect(text).toMatch(/local codes and trained staff/);
  });

  it('should say which stencils are made and which are on the list to make', () => {
    const made = jobs.A;
    const [first, second] = [...new Set(made.plan.cards.map(({ screen }) => screen.key))];
    const states = new Map([
      [first!, 'made' as const],
      [second!, 'to make' as const],
    ]);
    const [table, frames] = stencilBlocks({ ...made, screenStates: states }, USUAL_STOCK);
    if (table?.kind !== 'table' || frames?.kind !== 'table') throw new Error('no table');
    const all = table.rows.length;
    expect(table.title).toBe(`Stencils: ${all} screens, 1 of them made, ${all - 1} to make, by mesh`);
    const small = (key: string) =>
      table.rows.map(({ cells }) => cells[1]!.lines).find(([name]) => name!.text.startsWith(`${key} `))![1]!.text;
    expect(small(first!)).toMatch(/^made, mounted/);
    expect(small(second!)).toMatch(/^to make, mounted/);
    expect(table.rows.filter(({ cells }) => cells[0]!.box === 'ticked')).toHaveLength(1);
    // Of what is not said to be made films are made: those on no list too.
    const films = visitFilms({ ...made, screenStates: states });
    expect(films.filter(({ state }) => state === 'to make')).toHaveLength(all - 1);
    expect(visitFilms(made).every(({ state }) => state === 'drawn')).toBe(true);
    // A screen that is made has its frame: none is washed out for it, nor it for another.
    expect(frames.title).toMatch(/^Frames for the screens to make: /);
    const on = frames.rows.map(({ cells }) => cells[3]!.lines[0]!.text).join('; ');
    expect(on).toContain(`${second!} `);
    expect(on.split('; ').some((name) => name.replace('reclaim, then ', '').startsWith(`${first!} `))).toBe(false);
    const every = new Map(made.plan.cards.map(({ screen }) => [screen.key, 'made' as const]));
    const heads = stencilBlocks({ ...made, screenStates: every }, USUAL_STOCK).flatMap((block) =>
      block.kind === 'table' ? [block.title] : [],
    );
    expect(heads.filter((title) => /Frames|Exposure/.test(title ?? ''))).toEqual([]);
  });

  it('should say on the cover, the card and the bench sheet which screens are not made, but not of one that was pulled', () => {
    const { press, bench, drawer: studio } = smallProject();
    const recipe = recipeOf(bench, studio, { id: 'a', title: 'A' });
    const made = planned({ runs: [{ recipe, sheets: 2 }], minDeltaE: 1, press, seed: 'x' }, 20);
    const textOf = (of: MadePlan): string =>
      JSON.stringify([coverBlocks(of, 'A', false), cardsOf(of, [...of.plan.cards.keys()]), benchBlocks(of, null)]);
    const states = new ScreenStates();
    const nothingSaid = states.made(made, { drawer: studio });
    expect(textOf(nothingSaid)).not.toMatch(/not made/);
    expect([...nothingSaid.drawerScreens!.values()].sort()).toEqual(studio.screens.map(({ id }) => id).sort());
    const frames = framesTold(undefined, { keys: ['1'], made: true }, nothingSaid.drawerScreens);
    const said = states.made(made, { drawer: studio, frames: withFilms(frames, ['s1', 's2']) });
    const text = textOf(said);
    expect(text).toMatch(/Screens [23] and [23] of this order are not made yet; the first is needed for set-up \d+\./);
    // On its card and on the bench sheet.
    expect(text.match(/Screen 2 is not made yet: film made\./g)).toHaveLength(2);
    expect(text.match(/Screen 3 is not made yet\./g)).toHaveLength(2);
    expect(text).not.toMatch(/Screen 1 is not/);
    const [, second] = recipe.pulls;
    const pulled = states.made(
      said,
      { drawer: studio, frames },
      { recipes: [recipe], sheets: [{ recipe: 0, done: [recipe.pulls.indexOf(second!)] } as SheetAsPulled] },
    );
    expect(pulled.screenStates!.get('2')).toBe('made');
    expect(pulled.drawerScreens!.has('2')).toBe(false);
  });

  it('should name on the films of a visit the frame said in the Drawer, or the least that its image wants', () => {
    const { press, bench, drawer: studio } = smallProject();
    const made = planned(
      { runs: [{ recipe: recipeOf(bench, studio, { id: 'a', title: 'A' }), sheets: 2 }], minDeltaE: 1, press, seed: 'x' },
      20,
    );
    const [first] = made.recipes[0]!.screens;
    const said = studio.screens.find(({ number }) => number === first!.number)!;
    const inside = { [said.id]: { widthMm: 900, heightMm: 700 } };
    const films = visitFilms(new ScreenStates().made(made, { drawer: studio, frames: { made: [], toMake: [], inside } }));
    expect(films.find(({ key }) => key === String(first!.number))!.frame).toEqual(inside[said.id]);
    for (const { key, frame, screen } of films.filter((film) => film.key !== String(first!.number))) {
      const { imageWidthMm } = stencilsOf(made.plan, made.recipes).find((stencil) => stencil.screen.key === key)!;
      expect(frame).toMatchObject({ least: true });
      // 120 mm on each side of the largest image on it; common practice, no source.
      expect(frame!.widthMm).toBeGreaterThanOrEqual(imageWidthMm + 240);
      expect(screen.name).not.toBe('');
    }
    expect(films.length).toBeGreaterThan(1);
  });

  it('should say what to do as well where a set-up waits, when the visit ends, and names in full', async () => {
    const { press, bench, drawer: studio } = smallProject();
    const title = 'Ebb → “flood” Żółw Ωλ, a name so long that it takes more than one line of its column';
    const recipe = recipeOf(bench, studio, { id: 'a', title });
    const made = planned({ runs: [{ recipe, sheets: 3 }], minDeltaE: 1, press, seed: 'x' }, 50);
    const times = made.plan.times.map((time) => ({ ...time, waitMinutes: 12, waitFor: ['Rust'] }));
    const { bytes, missing } = await pdfOf({ ...made, plan: { ...made.plan, times } }, ALL);
    expect(missing).toEqual([]);
    expect((await PDFDocument.load(bytes)).getTitle()).toBe('Pull sheet: Slack tide');
    const pages = popplerText(bytes);
    // Once on the bench sheet and once in the grid.
    expect(flat(pages).match(/Wait 12 min: Rust dries/g)).toHaveLength(2 * made.plan.cards.length);
    expect(flat(pages)).toMatch(/It ends on day \d+ at \d+:\d\d/);
    const supplies = flat(pages.filter((page) => /^\s*Ink\b/.test(page)));
    for (const word of title.split(' ')) expect(supplies).toContain(word);
    expect(flat(pages)).not.toContain('…');
  });
});
