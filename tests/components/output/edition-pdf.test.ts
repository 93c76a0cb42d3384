import { describe, expect, it } from 'vitest';
import { editionPdf } from '../../../src/components/output/edition-pdf.ts';
import { countFacts, datesOf, markRows, rangeOf } from '../../../src/components/words/edition-words.ts';
import { editionRecord } from '../../../src/engine/log/edition/edition-sheets.ts';
import { type Edition, newEdition } from '../../../src/engine/log/edition/edition.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { pdfPages } from '../../helpers/pdf-text.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench, drawer } = smallProject();
const inks = drawer.inks.map((ink) =>
  ink.id === 'rust'
    ? {
        ...ink,
        mix: [
          { ink: 'tar', parts: 1 },
          { ink: 'clay', parts: 3 },
        ],
      }
    : ink,
);
const recipe = recipeOf(
  bench.map((pull, i) => (i === 1 ? { ...pull, dxMm: -1.5, strokes: 2 } : pull)),
  { ...drawer, inks },
  { id: 'a', title: 'Odpływ' },
);
const edition: Edition = {
  ...newEdition(recipe),
  counts: { impressions: 3, ap: 1, pp: 0, hc: 0, bat: true, variable: false },
  words: {
    artist: 'Łucja Žižková',
    title: 'Отлив',
    year: '2026',
    workshop: 'Εργαστήριο',
    dates: '',
    rejects: '',
    approved: 'M. Sand',
    other: '',
  },
  fates: [{ screen: 's2', fate: 'destroyed', by: 'M. Sand', when: '6 May' }],
};
const head: VisitHead = {
  id: 'v',
  title: 'May',
  begunMs: 0,
  recipes: [recipe],
  sheets: [1, 2, 3, 4, 5, 6].map((number) => ({ number, recipe: 0 })),
};
const DAY = 86_400_000;
const events: LogEvent[] = head.sheets.flatMap(({ number }) =>
  bench.map((pull, i): LogEvent => ({
    id: `${number}${pull.id}`,
    atMs: i * DAY + number,
    device: 'd',
    sheet: number,
    kind: 'pulled',
    pulls: [pull.id],
  })),
);
events.push({ id: 'x', atMs: 3 * DAY, device: 'd', sheet: 2, kind: 'spoiled', note: 'ink on the margin' });
events.push({ id: 'b', atMs: 3 * DAY, device: 'd', sheet: 4, kind: 'placed', box: 'Box 4' });
const dayOf = (atMs: number): string => `day ${Math.floor(atMs / DAY) + 1}`;
const record = editionRecord(edition, head, events);

async function textOf(visit: { title: string } | null, size: 'A4' | 'Letter' = 'A4'): Promise<string> {
  const made = await editionPdf(recipe, edition, {
    size,
    picture: null,
    fonts,
    visit: visit === null ? null : { ...visit, record },
    dayOf,
  });
  expect(made.missing).toEqual([]);
  return (await pdfPages(made.bytes)).join('\n');
}

describe('editionPdf', () => {
  it('should hold all that documents an edition, in whatever script it was typed', async () => {
    const lines = (await textOf(head)).split('\n');
    const after = (line: string, count: number): string[] => lines.slice(lines.indexOf(line) + 1, lines.indexOf(line) + 1 + count);
    for (const line of [
      'Отлив',
      'Łucja Žižková',
      'Εργαστήριο',
      'Screenprint',
      'Edition of 3, numbered 1/3 to 3/3',
      '1 approved standard, BAT',
      '1 artist’s proof, AP 1/1',
    ])
      expect(lines).toContain(line);
    expect(after('Paper', 1)[0]).toBe(`${recipe.paper.name}, ${recipe.paper.widthMm} × ${recipe.paper.heightMm} mm`);
    expect(after('Approved (BAT) by', 1)).toEqual(['M. Sand']);
    expect(after('Rust', 1)).toEqual(['1 Tar (25.0 %), 3 Clay (75.0 %)']);
    // Mesh, days on which it was printed, what became of it.
    expect(after('2 s2', 3)).toEqual(['90/cm, thread 48 µm', 'day 2', 'destroyed, by M. Sand, 6 May']);
    expect(lines.join(' ')).toContain('2 Weed 1.5 mm left 2 6 day 2');
    expect(lines.join(' ')).toContain('by the log of May: day 1 to day 3');
    // The spoiled sheet is listed as a reject, and its number went to the next.
    expect(after('1/3', 1)).toEqual(['1']);
    expect(after('2/3', 1)).toEqual(['3']);
    expect(after('3/3', 2)).toEqual(['4', 'Box 4']);
    expect(after('BAT', 1)).toEqual(['5']);
    expect(lines).toContain('1 sheet spoiled and taken out:');
    expect(lines.join(' ')).toContain('Sheet 2, after 3 pulls, spoiled: ink on the margin.');
    for (const line of ['Signature of the artist', 'Printer', 'Approved', 'Place and date']) expect(lines).toContain(line);
    expect(lines.join(' ')).toMatch(/not legal advice/);
  });
  it('should tell the order of the press where it was not the recipe’s', async () => {
    const turned = events.map((event): LogEvent =>
      'pulls' in event && event.pulls[0] === bench[0]!.id ? { ...event, atMs: event.atMs + 1.5 * DAY } : event,
    );
    const pages = async (log: LogEvent[]): Promise<string> => {
      const visit = { title: 'May', record: editionRecord(edition, head, log) };
      return (await pdfPages((await editionPdf(recipe, edition, { size: 'A4', picture: null, fonts, visit, dayOf })).bytes)).join(' ');
    };
    expect(await pages(turned)).toContain('By the log their printing began in the order 2, 1, 3.');
    expect(await pages(events)).not.toContain('their printing began');
  });

  it('should never sign on a page that does not say what is signed', async () => {
    // Rejects that fill the page to every height: somewhere among them the signatures go on to another page.
    let turned = 0;
    for (let lines = 0; lines < 60; lines += 2) {
      const words = { ...edition.words, rejects: 'Rejects of the first day, set aside and cut.\u00a0'.repeat(3 * lines) };
      const { bytes } = await editionPdf(recipe, { ...edition, words }, { size: 'A4', picture: null, fonts, visit: null, dayOf });
      const [page] = (await pdfPages(bytes)).filter((text) => text.includes('Signature of the artist'));
      expect(page!.replaceAll('\n', ' ')).toContain('Отлив, Łucja Žižková: Edition of 3, numbered 1/3 to 3/3; 1 approved standard, BAT;');
      if (page!.startsWith('Отлив, Łucja')) turned++;
    }
    expect(turned).toBeGreaterThan(0);
  });

  it('should leave room by hand for what no log says, on either size of page', async () => {
    for (const size of ['A4', 'Letter'] as const) {
      const text = await textOf(null, size);
      expect(text).toContain('signed and numbered on ____');
      expect(text).toContain('Not stated.');
      expect(text).not.toContain('by the log');
    }
  });
});

describe('markRows', () => {
  it('should go by impressions, then BAT and each class of proof by number', () => {
    const sheets = record.sheets.map((sheet, i) => ({ ...sheet, mark: ['AP 10/10', 'BAT', 'PP 1/1', '2/20', 'AP 9/10', '10/20'][i]! }));
    expect(markRows(sheets).rows.map(([mark]) => mark)).toEqual(['2/20', '10/20', 'BAT', 'AP 9/10', 'AP 10/10', 'PP 1/1']);
  });
  it('should name what has no mark', () => {
    const sheets = record.sheets.map((sheet, i) => ({ ...sheet, mark: null, fate: i < 4 ? ('spare' as const) : ('out' as const) }));
    expect(markRows(sheets)).toEqual({
      rows: [],
      spare: ['Kept out of the edition: sheets 5, 6.', 'Good, but without a mark: sheets 1–4.'],
    });
  });
});

describe('countFacts and dates', () => {
  it('should spell the classes of proofs and say each day once', () => {
    expect(countFacts({ impressions: 20, ap: 2, pp: 1, hc: 1, bat: false, variable: true })).toEqual([
      'Variable edition (EV) of 20, numbered EV 1/20 to EV 20/20',
      '2 artist’s proofs, AP 1/2 to 2/2',
      '1 printer’s proof, PP 1/1',
      '1 hors commerce, HC 1/1',
    ]);
    expect(datesOf([2 * DAY, 5, 6, DAY], dayOf)).toBe('day 1, day 2, day 3');
    expect(rangeOf([2 * DAY, 5], dayOf)).toBe('day 1 to day 3');
    expect([rangeOf([7, 5], dayOf), rangeOf([], dayOf)]).toEqual(['day 1', '']);
  });
});
