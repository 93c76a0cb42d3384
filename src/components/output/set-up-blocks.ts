import { defined, entryAt, num } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import { srgbHexFromLab } from '../../engine/colour/screen-colour.ts';
import { tickGroups } from '../../engine/log/ticks/ticks.ts';
import { pullRings } from '../../engine/shapes/place/placed.ts';
import type { CardState, SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { counted } from '../ui/words.ts';
import { dryWords, waitWords } from '../words/drying-words.ts';
import { mixWords } from '../words/mix-words.ts';
import { instructionWords, OFFSET_NOTE, offsetArrow, offsetWords } from '../words/offset-words.ts';
import { capital, recipeLetter, setUpTags, timeWords } from '../words/plan-words.ts';
import type { MadePlan } from './made-plan.ts';
import type { Box, PageWriter, Spot } from './page-writer.ts';
import { PDF_COLOURS } from './pdf-colours.ts';
import type { PlanPages } from './plan-pages.ts';

/** Height of the pictures of a state: of a card with one, and of one with several. */
const ONE_STATE_PT = 120;
const STATE_PT = 96;
/** Two cards with one state each stand on a page of either size. */
const CARD_PT = 188;
const DIAGRAM_PT = 118;

/** Where the sheet lies against its stops, what the screen prints, and the way in which it is moved. */
function offsetDiagram(out: PageWriter, made: MadePlan, card: SetUpCard, { x, y: top }: Spot): void {
  const state = entryAt(card.states, 0);
  const recipe = entryAt(made.recipes, state.recipe);
  const { widthMm, heightMm } = recipe.paper;
  const inner = DIAGRAM_PT - 18;
  const scale = inner / Math.max(widthMm, heightMm);
  const width = widthMm * scale;
  const height = heightMm * scale;
  const left = x + (DIAGRAM_PT - width) / 2;
  out.rectangle({ x: left, y: top, width, height }, { hex: PDF_COLOURS.white, edge: true });
  const pull = entryAt(recipe.pulls, num(state.prints, 0));
  const screen = defined(recipe.screens.find((each) => each.id === pull.screen));
  out.shape(pullRings(screen, recipe.shapes, pull, recipe.paper).rings, { x: left, y: top, scale, hex: PDF_COLOURS.shape });
  stops(out, { x: left, y: top, width, height });
  moveArrow(out, card, { x: left + width / 2, y: top + height / 2 });
}

/** Two stops on the long edge, one round the corner. */
function stops(out: PageWriter, { x, y, width, height }: Box): void {
  const bottom = y + height;
  const style = { hex: PDF_COLOURS.black };
  const beside = (share: number): void => out.rectangle({ x: x - 8, y: bottom - height * share - 9, width: 6, height: 18 }, style);
  const below = (share: number): void => out.rectangle({ x: x + width * share - 9, y: bottom + 2, width: 18, height: 6 }, style);
  if (height > width) {
    beside(0.78);
    beside(0.22);
    below(0.25);
  } else {
    below(0.22);
    below(0.78);
    beside(0.25);
  }
}

function moveArrow(out: PageWriter, card: SetUpCard, from: Spot): void {
  const length = Math.hypot(card.dxMm, card.dyMm);
  if (length === 0) return;
  const arrow = offsetArrow(card);
  const reach = (arrow.length * DIAGRAM_PT) / 150;
  const [ux, uy] = [card.dxMm / length, card.dyMm / length];
  const tip = { x: from.x + ux * reach, y: from.y + uy * reach };
  const style = { thickness: 2.5, hex: PDF_COLOURS.accent };
  out.stroke(from, tip, style);
  out.line(arrow.words, { x: from.x - 14, y: from.y + (card.dyMm > 0 ? -14 : 6) }, { size: 8 });
  for (const side of [5, -5]) out.stroke(tip, { x: tip.x - 7 * ux + side * uy, y: tip.y - 7 * uy - side * ux }, style);
}

/** The card of a set-up: what to mount, mix and move, by the clock, and what its sheets look like before and after. */
export async function setUpBlock(pages: PlanPages, at: number): Promise<void> {
  const { out, made } = pages;
  const { plan } = made;
  const card = entryAt(plan.cards, at);
  const time = plan.times[at];
  const height = card.states.length > 1 ? STATE_PT : ONE_STATE_PT;
  out.need(CARD_PT + height + 34);
  out.y += 8;
  out.stroke({ x: out.left, y: out.y }, { x: out.right, y: out.y }, { thickness: 1.6, hex: PDF_COLOURS.black });
  out.y += 8;
  const tags = setUpTags(plan, at);
  out.box({ x: out.left, y: out.y + 1 }, 16);
  out.line(`Set-up ${card.number}`, { x: out.left + 26, y: out.y }, { size: 18, bold: true });
  const tagText = tags.join(', ');
  out.line(tagText, { x: out.right - out.widthOf(tagText, { size: 13, bold: true }), y: out.y + 4 }, { size: 13, bold: true });
  out.y += 28;
  const top = out.y;
  offsetDiagram(out, made, card, { x: out.left, y: top });
  const x = out.left + DIAGRAM_PT + 18;
  out.paragraph(`${card.screen.key} ${card.screen.name}`, { size: 18, bold: true, x });
  out.rectangle({ x, y: out.y + 1, width: 26, height: 14 }, { hex: srgbHexFromLab(card.ink.ink.overWhite), edge: true });
  out.line(card.ink.key, { x: x + 34, y: out.y }, { size: 15, bold: true, most: out.right - x - 34 });
  out.y += 22;
  const mix = mixWords(card);
  if (mix !== null) out.paragraph(mix, { x });
  out.paragraph(`${capital(offsetWords(card))}; ${counted(card.strokes, 'stroke')}`, { size: 14, bold: true, x });
  for (const words of instructionWords(card)) out.paragraph(words, { bold: true, x });
  if (offsetWords(card) !== 'no offset') out.paragraph(OFFSET_NOTE, { size: 9, soft: true, x });
  out.paragraph(`Mesh ${card.screen.mesh.threadsPerCm}/cm, thread ${card.screen.mesh.threadUm} µm`, { x });
  if (time !== undefined) {
    out.paragraph(timeWords(plan, time), { x });
    if (time.waitMinutes >= 1) out.paragraph(`${capital(waitWords(plan, at))}.`, { bold: true, x });
    out.paragraph(dryWords(plan, at), { x });
  }
  out.y = Math.max(out.y, top + DIAGRAM_PT) + 8;
  for (const state of card.states) await stateBlock(pages, state, height);
}

async function stateBlock({ out, made, draw }: PlanPages, state: CardState, height: number): Promise<void> {
  const title = made.plan.recipes[state.recipe]?.title ?? '';
  out.need(height + 34);
  out.paragraph(`${recipeLetter(state.recipe)} ${title}${state.prints.length > 1 ? `, ${state.prints.length} pulls each` : ''}`, {
    bold: true,
  });
  const top = out.y + 2;
  const first = await draw(state.recipe, state.before, { x: out.left, y: top, height });
  const second = await draw(state.recipe, state.after, { x: out.left + first + 14, y: top, height });
  out.line(state.before.length === 0 ? 'now: bare' : 'now', { x: out.left, y: top + height + 2 }, { size: 10, soft: true });
  out.line('then', { x: out.left + first + 14, y: top + height + 2 }, { size: 10, soft: true });
  const y = tickBoxes(out, state.sheets, { x: out.left + first + second + 34, y: top });
  out.y = Math.max(y + 26, out.y > top ? out.y : top + height + 16);
}

/** A box for each sheet or run of sheets. @returns where the last row begins */
function tickBoxes(out: PageWriter, sheets: readonly number[], from: Spot): number {
  let { x, y } = from;
  for (const group of tickGroups(sheets)) {
    const words = rangesText(group);
    const width = 22 + out.widthOf(words, { size: 13 }) + 14;
    if (x + width > out.right) {
      x = from.x;
      y += 24;
    }
    if (y > out.height - 60) {
      out.newPage();
      y = out.y;
    }
    out.box({ x, y }, 15);
    out.line(words, { x: x + 21, y }, { size: 13 });
    x += width;
  }
  return y;
}
