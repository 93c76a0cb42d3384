import { defined } from '../../engine/base/at.ts';
import { type EditionRecord, printedOrder } from '../../engine/log/edition/edition-sheets.ts';
import { type Edition, editionFacts, type EditionFacts } from '../../engine/log/edition/edition.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { fixed } from '../../engine/words/language.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { countFacts, datesOf, fateOf, markRows, rangeOf } from '../words/edition-words.ts';
import { say } from '../words/en/output/room.ts';
import { recipeOffsetWords } from '../words/offset-words.ts';
import { type PageName, PageWriter } from './page-writer.ts';
import type { PdfFile } from './pull-sheet-pdf.ts';
import { wrappedTable } from './tables.ts';

export interface EditionPdfOptions {
  size: PageName;
  /** A PNG of the print; null leaves it out. */
  picture: Uint8Array | null;
  fonts: PageFonts;
  /** The visit's title and what its log says; null without one. */
  visit: { title: string; record: EditionRecord } | null;
  /** The day of a time, as it is written out. */
  dayOf: (atMs: number) => string;
}

const PICTURE_PT = 150;
/** It is read at a table, not at arm's length. */
const HEADING_PT = 13.5;

/**
 * The documentation sheet of an edition: paper, inks with their mixes, screens and what became of
 * them, the sequence with offsets, strokes and dates, proofs, which sheet has which number,
 * rejects, and room to sign.
 */
export async function editionPdf(recipe: Recipe, edition: Edition, options: EditionPdfOptions): Promise<PdfFile> {
  const title = edition.words.title || recipe.title;
  const out = await PageWriter.open(options.size, say.documentationOfEdition(title), options.fonts);
  const facts = editionFacts(recipe);
  await head(out, { recipe, edition, facts }, options);
  inks(out, facts);
  screens(out, recipe, edition, options);
  sequence(out, facts, options);
  pressOrder(out, options);
  sheets(out, edition, options);
  rejects(out, edition, options);
  if (recipe.note !== '') {
    out.heading(say.note, HEADING_PT);
    out.paragraph(recipe.note, { size: 10.5 });
  }
  sign(out, `${title}${edition.words.artist === '' ? '' : `, ${edition.words.artist}`}: ${countFacts(edition.counts).join('; ')}.`);
  return { bytes: await out.close(say.documentation(title)), missing: out.missing };
}

interface EditionDocument {
  recipe: Recipe;
  edition: Edition;
  facts: EditionFacts;
}

async function head(
  out: PageWriter,
  { recipe, edition, facts }: EditionDocument,
  { picture, visit, dayOf }: EditionPdfOptions,
): Promise<void> {
  const { words } = edition;
  out.paragraph(say.documentationOfEdition2, { soft: true });
  const top = out.y + 4;
  let room = out.right - out.left;
  if (picture !== null) {
    const width = (PICTURE_PT * recipe.paper.widthMm) / recipe.paper.heightMm;
    out.image(await out.doc.embedPng(picture), { x: out.right - width, y: top, width, height: PICTURE_PT });
    room -= width + 18;
  }
  out.paragraph(words.title || recipe.title, { size: 24, bold: true, most: room });
  if (words.artist !== '') out.paragraph(words.artist, { size: 15, most: room });
  out.y += 6;
  for (const line of countFacts(edition.counts)) out.paragraph(line, { most: room });
  out.y = Math.max(out.y, picture === null ? 0 : top + PICTURE_PT) + 14;
  const dates =
    visit === null
      ? ''
      : rangeOf(
          visit.record.dates.flatMap((pull) => pull.atMs),
          dayOf,
        );
  wrappedTable(
    out,
    [
      { head: '', width: 138 },
      { head: '', width: 0 },
    ],
    [
      [say.medium, say.screenprint],
      [say.paper, facts.paper],
      [say.yearOfPrinting, words.year],
      [say.workshopAndPrinter, words.workshop],
      [
        say.datesOfPrinting,
        [words.dates, ...(dates === '' ? [] : [say.byLogOf(defined(visit).title, dates)])].filter((part) => part !== '').join('; '),
      ],
      [say.approvedBATBy, words.approved],
      [say.otherEditionsOrStates, words.other],
    ].map(([name, value]) => [defined(name), value === '' ? '–' : defined(value)]),
  );
}

function inks(out: PageWriter, facts: EditionFacts): void {
  out.heading(say.inks, HEADING_PT);
  wrappedTable(
    out,
    [
      { head: say.ink, width: 138, bold: true },
      { head: say.mixedOfPartsBy, width: 0 },
    ],
    facts.inks.map(({ name, mix }) => {
      const all = mix.reduce((sum, { parts }) => sum + parts, 0);
      return [
        name,
        mix.length === 0
          ? say.asItIs
          : mix.map((part) => `${part.parts} ${part.name} (${fixed((100 * part.parts) / all, 1)} %)`).join(', '),
      ];
    }),
  );
}

function screens(out: PageWriter, recipe: Recipe, edition: Edition, { visit, dayOf }: EditionPdfOptions): void {
  out.heading(say.screens, HEADING_PT);
  const used = (id: string): string =>
    visit === null
      ? ''
      : datesOf(
          recipe.pulls.flatMap((pull, at) => (pull.screen === id ? (visit.record.dates[at]?.atMs ?? []) : [])),
          dayOf,
        );
  wrappedTable(
    out,
    [
      { head: say.screen, width: 116, bold: true },
      { head: say.mesh, width: 114 },
      { head: say.printed, width: 98 },
      { head: say.fate, width: 0 },
    ],
    recipe.screens.map(({ id, number, name, mesh }) => [
      `${number} ${name}`,
      say.cmThreadM(mesh.threadsPerCm, mesh.threadUm),
      used(id) || '–',
      fateOf(edition.fates.find((fate) => fate.screen === id)),
    ]),
  );
}

function sequence(out: PageWriter, facts: EditionFacts, { visit, dayOf }: EditionPdfOptions): void {
  out.heading(say.sequenceFirstDownFirst, HEADING_PT);
  wrappedTable(
    out,
    [
      { head: say.pull, width: 34, bold: true },
      { head: say.screen, width: 46 },
      { head: say.ink, width: 106 },
      { head: say.offset, width: 140 },
      { head: say.strokes, width: 48 },
      { head: say.sheets, width: 42 },
      { head: say.date, width: 0 },
    ],
    facts.sequence.map((pull, at) => {
      const dates = visit?.record.dates[at];
      const when = dates === undefined || dates.atMs.length === 0 ? ['–', '–'] : [`${dates.sheets}`, datesOf(dates.atMs, dayOf)];
      return [`${at + 1}`, `${pull.screen}`, pull.ink, recipeOffsetWords(pull), `${pull.strokes}`, ...when];
    }),
  );
}

/** The order of the press, where it was not the recipe's. */
function pressOrder(out: PageWriter, { visit }: EditionPdfOptions): void {
  const order = visit === null ? null : printedOrder(visit.record.dates);
  if (order !== null) out.paragraph(say.byLogTheirPrinting(order.map((pull) => pull + 1).join(', ')), { size: 10.5 });
}

function sheets(out: PageWriter, edition: Edition, { visit }: EditionPdfOptions): void {
  out.heading(say.numbersAndSheets, HEADING_PT);
  if (visit === null) {
    wrappedTable(
      out,
      [
        { head: '', width: 138 },
        { head: '', width: 0 },
      ],
      countFacts(edition.counts).map((line) => [line, say.signedAndNumberedOn]),
    );
    return;
  }
  const { rows, spare } = markRows(visit.record.sheets);
  out.paragraph(say.sheetIsNumberOn, { size: 9.5, soft: true });
  out.y += 2;
  wrappedTable(
    out,
    [
      { head: say.mark, width: 92, bold: true },
      { head: say.sheet, width: 66 },
      { head: say.liesIn, width: 110 },
      { head: say.howItWasPulled, width: 0 },
    ],
    rows,
  );
  for (const line of spare) out.paragraph(line, { size: 10.5 });
  for (const { message } of visit.record.problems) out.paragraph(message, { size: 10.5, bold: true });
}

function rejects(out: PageWriter, { words }: Edition, { visit }: EditionPdfOptions): void {
  out.heading(say.rejects, HEADING_PT);
  const spoiled = visit === null ? null : visit.record.sheets.filter((sheet) => sheet.fate === 'reject');
  if (spoiled !== null) {
    out.paragraph(say.sheetsSpoiledAndTaken(spoiled.length, spoiled.length === 0 ? '.' : ':'), { size: 10.5 });
    for (const { number, sheet } of spoiled) {
      const why = sheet.events
        .filter((event) => event.kind === 'spoiled' || event.kind === 'replaced')
        .map((event) => (event.note === '' ? say.spoiled : say.spoiledNote(event.note)))
        .join('; ');
      out.paragraph(say.sheetNumber(number, sheet.pulls.length === 0 ? say.beforeItsFirstPull : say.afterPulls(sheet.pulls.length), why), {
        size: 10.5,
        x: out.left + 14,
      });
    }
  }
  if (words.rejects !== '' || spoiled === null) out.paragraph(words.rejects === '' ? say.notStated : words.rejects, { size: 10.5 });
}

/** Room to sign, never without what is signed. */
function sign(out: PageWriter, what: string): void {
  const style = { size: 10.5, bold: true };
  out.need(176 + out.lines(what, out.right - out.left, style).length * 14.2);
  out.y += 16;
  out.paragraph(what, style);
  out.y += 34;
  const half = (out.right - out.left - 24) / 2;
  for (const [i, word] of [say.signatureOfArtist, say.printer, say.approved, say.placeAndDate].entries()) {
    const x = out.left + (i % 2) * (half + 24);
    out.rule({ y: out.y, x, to: x + half });
    out.line(word, { x, y: out.y + 3 }, { size: 9.5, soft: true });
    if (i % 2 === 1) out.y += 46;
  }
  out.y -= 18;
  out.paragraph(say.numeratorIsNotOrder, { size: 9.5, soft: true });
}
