import type { PDFImage } from 'pdf-lib';
import { defined, entryAt, num } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import { srgbHexFromLab } from '../../engine/colour/screen-colour.ts';
import { pullRings } from '../../engine/shapes/place/placed.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { CardState, SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { tickGroups } from '../press/log/ticks.ts';
import type { PageFonts } from '../ui/page-fonts.ts';
import { counted } from '../ui/words.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../words/cautions.ts';
import { dryWords, waitWords } from '../words/drying-words.ts';
import { mixWords } from '../words/mix-words.ts';
import { offsetWords } from '../words/offset-words.ts';
import {
  beginWords,
  boundWords,
  capital,
  endWords,
  freeSwapWords,
  needsWords,
  planHeadline,
  recipeLetter,
  setUpTags,
  timeWords,
} from '../words/plan-words.ts';
import { dayPlanPages } from './day-plan.ts';
import { gridPages } from './grid-pages.ts';
import type { MadePlan } from './made-plan.ts';
import { type DrawState, type PageName, PageWriter } from './page-writer.ts';
import { passportPages } from './passports.ts';
import { PDF_COLOURS } from './pdf-colours.ts';
import { supplyPages } from './supply-pages.ts';

/** Gives a PNG of a recipe's sheet with some pulls on it; null when it could not be drawn. */
export type PictureOf = (recipe: number, pulls: readonly Pull[]) => Promise<Uint8Array | null>;

export interface PullSheetOptions {
  size: PageName;
  heading: string;
  picture: PictureOf;
  fonts: PageFonts;
}

/** A file, and the signs that its fonts lack: they stand in it as boxes. */
export interface PdfFile {
  bytes: Uint8Array;
  missing: readonly string[];
}

/** Height of the pictures of a state: of a card with one, and of one with several. */
const ONE_STATE_PT = 120;
const STATE_PT = 96;
/** Two cards with one state each stand on a page of either size. */
const CARD_PT = 188;

/**
 * The pull sheet as a PDF, one column: summary and cautions, the visit at a glance, the days, what
 * to have ready, a card for each set-up, a passport for each kind of sheet. Diagrams are vectors,
 * states are pictures.
 */
export async function pullSheetPdf(made: MadePlan, options: PullSheetOptions): Promise<PdfFile> {
  const out = await PageWriter.open(options.size, `Pull sheet: ${options.heading}`, options.fonts);
  const draw = stateStudio(out, made, options.picture);
  await cover(out, made, options.heading, draw);
  gridPages(out, made.plan);
  dayPlanPages(out, made.plan);
  supplyPages(out, made);
  // Without a heading, two cards stand on the first page as on the others.
  out.newPage();
  for (const [at, card] of made.plan.cards.entries()) await cardBlock(out, made, card, at, draw);
  await passportPages(out, made, draw);
  const bytes = await out.close(`Pull sheet: ${options.heading}`);
  return { bytes, missing: out.missing };
}

function stateStudio(out: PageWriter, made: MadePlan, picture: PictureOf): DrawState {
  const images = new Map<string, PDFImage | null>();
  return async (recipe, pulls, x, top, height) => {
    const { widthMm, heightMm } = entryAt(made.recipes, recipe).paper;
    const width = (height * widthMm) / heightMm;
    if (pulls.length === 0) {
      out.fill(x, top, width, height, PDF_COLOURS.white, true);
      return width;
    }
    const key = JSON.stringify([recipe, pulls.map((pull) => pull.id)]);
    let image = images.get(key);
    if (image === undefined) {
      const png = await picture(recipe, pulls);
      image = png === null ? null : await out.doc.embedPng(png);
      images.set(key, image);
    }
    if (image === null) out.fill(x, top, width, height, null, true);
    else out.image(image, x, top, width, height);
    return width;
  };
}

async function cover(out: PageWriter, made: MadePlan, heading: string, draw: DrawState): Promise<void> {
  const { plan } = made;
  out.paragraph('Pull sheet', { soft: true });
  out.paragraph(heading, { size: 28, bold: true });
  out.paragraph(`${counted(plan.sheets.length, 'sheet')}, ${planHeadline(plan)}`, { size: 15, bold: true });
  out.y += 4;
  out.paragraph(
    [boundWords(plan), beginWords(plan), endWords(plan), freeSwapWords(plan), needsWords(plan)].filter((words) => words !== '').join(' '),
  );
  for (const problem of plan.problems.slice(0, 3)) out.paragraph(problem.message, { bold: true });
  out.y += 18;
  const third = (out.right - out.left) / 3;
  for (const [i, word] of ['Date', 'Printer', 'Studio'].entries()) {
    out.line(word, out.left + i * third, out.y, { soft: true });
    out.rule(out.y + 16, out.left + i * third + 46, out.left + (i + 1) * third - 14);
  }
  out.y += 34;
  let x = out.left;
  const height = made.recipes.length > 4 ? 88 : 130;
  for (const [r, recipe] of plan.recipes.entries()) {
    const { widthMm, heightMm } = entryAt(made.recipes, r).paper;
    const width = (height * widthMm) / heightMm;
    if (x + width > out.right) {
      x = out.left;
      out.y += height + 50;
    }
    if (x === out.left) out.need(height + 50);
    await draw(r, entryAt(made.recipes, r).pulls, x, out.y, height);
    const cell = Math.max(width, 112);
    const name = out.lines(`${recipeLetter(r)} ${recipe.title}`, cell, { bold: true, size: 10.5 });
    for (const [i, line] of name.slice(0, 2).entries()) {
      out.line(i === 1 && name.length > 2 ? `${line}…` : line, x, out.y + height + 4 + 13 * i, { bold: true, size: 10.5 }, cell);
    }
    out.line(
      `${counted(recipe.sheets.length, 'sheet')}: ${rangesText(recipe.sheets)}`,
      x,
      out.y + height + 4 + 13 * Math.min(2, name.length),
      { size: 10.5 },
      cell,
    );
    x += cell + 16;
  }
  out.y += height + 48;
  cautions(out);
}

/** What can hurt stands together on one page. */
function cautions(out: PageWriter): void {
  const style = { size: 11 };
  const lines = [...CAUTIONS, CAUTIONS_DEFER].reduce((sum, text) => sum + out.lines(text, out.right - out.left - 18, style).length, 0);
  out.need(40 + lines * style.size * 1.35 + CAUTIONS.length * 2);
  out.heading('Before you start');
  for (const caution of CAUTIONS) {
    out.box(out.left, out.y + 2, 9);
    out.paragraph(caution, style, out.left + 18);
    out.y += 2;
  }
  out.paragraph(CAUTIONS_DEFER, { ...style, bold: true });
}

/** Two lays on the long edge, one round the corner; what the screen prints where it lies; the way it is moved. */
function layDiagram(out: PageWriter, made: MadePlan, card: SetUpCard, x: number, top: number, box: number): void {
  const state = entryAt(card.states, 0);
  const recipe = entryAt(made.recipes, state.recipe);
  const { widthMm, heightMm } = recipe.paper;
  const inner = box - 18;
  const scale = inner / Math.max(widthMm, heightMm);
  const width = widthMm * scale;
  const height = heightMm * scale;
  const left = x + (box - width) / 2;
  out.fill(left, top, width, height, PDF_COLOURS.white, true);
  const pull = entryAt(recipe.pulls, num(state.prints, 0));
  const screen = defined(recipe.screens.find((each) => each.id === pull.screen));
  out.shape(pullRings(screen, recipe.shapes, pull, recipe.paper).rings, left, top, scale, PDF_COLOURS.shape);
  const bottom = top + height;
  if (height > width) {
    out.fill(left - 8, top + height * 0.22 - 9, 6, 18, PDF_COLOURS.black);
    out.fill(left - 8, top + height * 0.78 - 9, 6, 18, PDF_COLOURS.black);
    out.fill(left + width * 0.25 - 9, bottom + 2, 18, 6, PDF_COLOURS.black);
  } else {
    out.fill(left + width * 0.22 - 9, bottom + 2, 18, 6, PDF_COLOURS.black);
    out.fill(left + width * 0.78 - 9, bottom + 2, 18, 6, PDF_COLOURS.black);
    out.fill(left - 8, bottom - height * 0.25 - 9, 6, 18, PDF_COLOURS.black);
  }
  const length = Math.hypot(card.dxMm, card.dyMm);
  if (length === 0) return;
  // The length only hints; the millimetres are in words.
  const reach = Math.min(34, Math.max(14, length * 2));
  const [ux, uy] = [card.dxMm / length, card.dyMm / length];
  const [cx, cy] = [left + width / 2, top + height / 2];
  const [tx, ty] = [cx + ux * reach, cy + uy * reach];
  out.stroke(cx, cy, tx, ty, 2.5, PDF_COLOURS.accent);
  out.stroke(tx, ty, tx - 7 * ux + 5 * uy, ty - 7 * uy - 5 * ux, 2.5, PDF_COLOURS.accent);
  out.stroke(tx, ty, tx - 7 * ux - 5 * uy, ty - 7 * uy + 5 * ux, 2.5, PDF_COLOURS.accent);
}

async function cardBlock(out: PageWriter, made: MadePlan, card: SetUpCard, at: number, draw: DrawState): Promise<void> {
  const { plan } = made;
  const time = plan.times[at];
  const box = 118;
  const height = card.states.length > 1 ? STATE_PT : ONE_STATE_PT;
  out.need(CARD_PT + height + 34);
  out.y += 8;
  out.stroke(out.left, out.y, out.right, out.y, 1.6, PDF_COLOURS.black);
  out.y += 8;
  const tags = setUpTags(plan, at);
  out.box(out.left, out.y + 1, 16);
  out.line(`Set-up ${card.number}`, out.left + 26, out.y, { size: 18, bold: true });
  const tagText = tags.join(', ');
  out.line(tagText, out.right - out.widthOf(tagText, { size: 13, bold: true }), out.y + 4, { size: 13, bold: true });
  out.y += 28;
  const top = out.y;
  layDiagram(out, made, card, out.left, top, box);
  const x = out.left + box + 18;
  out.paragraph(`${card.screen.key} ${card.screen.name}`, { size: 18, bold: true }, x);
  out.fill(x, out.y + 1, 26, 14, srgbHexFromLab(card.ink.ink.overWhite), true);
  out.line(card.ink.key, x + 34, out.y, { size: 15, bold: true }, out.right - x - 34);
  out.y += 22;
  const mix = mixWords(card);
  if (mix !== null) out.paragraph(mix, {}, x);
  out.paragraph(`${capital(offsetWords(card))}; ${counted(card.strokes, 'stroke')}`, { size: 14, bold: true }, x);
  out.paragraph(`Mesh ${card.screen.mesh.threadsPerCm}/cm, thread ${card.screen.mesh.threadUm} µm`, {}, x);
  if (time !== undefined) {
    out.paragraph(timeWords(plan, time), {}, x);
    if (time.waitMinutes >= 1) out.paragraph(`${capital(waitWords(plan, at))}.`, { bold: true }, x);
    out.paragraph(dryWords(plan, at), {}, x);
  }
  out.y = Math.max(out.y, top + box) + 8;
  for (const state of card.states) await stateBlock(out, made, state, height, draw);
}

async function stateBlock(out: PageWriter, made: MadePlan, state: CardState, height: number, draw: DrawState): Promise<void> {
  const title = made.plan.recipes[state.recipe]?.title ?? '';
  out.need(height + 34);
  out.paragraph(`${recipeLetter(state.recipe)} ${title}${state.prints.length > 1 ? `, ${state.prints.length} pulls each` : ''}`, {
    bold: true,
  });
  const top = out.y + 2;
  const first = await draw(state.recipe, state.before, out.left, top, height);
  const second = await draw(state.recipe, state.after, out.left + first + 14, top, height);
  out.line(state.before.length === 0 ? 'now: bare' : 'now', out.left, top + height + 2, { size: 10, soft: true });
  out.line('then', out.left + first + 14, top + height + 2, { size: 10, soft: true });
  const from = out.left + first + second + 34;
  let x = from;
  let y = top;
  for (const group of tickGroups(state.sheets)) {
    const words = rangesText(group);
    const width = 22 + out.widthOf(words, { size: 13 }) + 14;
    if (x + width > out.right) {
      x = from;
      y += 24;
    }
    if (y > out.height - 60) {
      out.newPage();
      y = out.y;
    }
    out.box(x, y, 15);
    out.line(words, x + 21, y, { size: 13 });
    x += width;
  }
  out.y = Math.max(y + 26, out.y > top ? out.y : top + height + 16);
}
