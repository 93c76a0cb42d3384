import type { FrameState } from '../../../engine/explore/prepare/frames.ts';
import { meshKey } from '../../../engine/ink/film/mesh.ts';
import { type CutRow, cutList, type StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import { emulsionMl, EMULSION_ML_PER_M2, EXPOSURE_STEPS, FRAME_MARGIN_MM, framesOf } from '../../../engine/visit/stencils/frames.ts';
import { stencilsOf, type Stencil } from '../../../engine/visit/stencils/stencil-list.ts';
import { counted } from '../../ui/words.ts';
import { CAUTIONS_BY_TOPIC, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { TURNED_OVER, TURNED_OVER_NOTE } from '../../words/film-words.ts';
import { listed, recipeLetter } from '../../words/plan-words.ts';
import { screensWords } from '../../words/supply-words.ts';
import type { MadePlan } from '../made-plan.ts';
import { cell, type PaperBlock, type PaperCell, type PaperTable } from './paper-blocks.ts';

const TICK: PaperCell = { lines: [], box: true };

/** A common size of paper as it is bought, its grain along the long side; common practice, no source. */
export const USUAL_STOCK: StockSheet = { widthMm: 700, heightMm: 1000, grain: 'height' };

/** Where the figures of the stencils come from. */
const STENCIL_NOTE = `Image: the rectangle round what is drawn, and what of it is open. Frame, inside: the largest image on it with ${FRAME_MARGIN_MM} mm on each side for ink and squeegee (common practice, no source). Emulsion: one coat on either side at ${EMULSION_ML_PER_M2} mL/m² (from memory).`;
const STEP_NOTE =
  'Exposure by a step test, for each mesh with your emulsion and lamp: cover a strip more after each step, wash out, and take the first step at which the edge stands and fine lines still open. Each step is half a stop, 1.4 times the one before.';
const GRAIN_NOTE =
  'Paper moves more across its grain than along it: cut all sheets of a print with the grain the same way, and mark it on the back.';

/** What to prepare before a visit: stencils, frames, exposure tests, paper to cut, and the cautions of that work. */
export function stencilBlocks(made: MadePlan, stock: StockSheet): PaperBlock[] {
  const stencils = stencilsOf(made.plan, made.recipes);
  return [
    stencilTable(stencils, made.screenStates ?? new Map()),
    frameTable(stencils),
    { kind: 'text', text: STENCIL_NOTE, size: 'small', soft: true },
    ...(stencils.some(({ screen }) => screen.mirrored === true)
      ? [{ kind: 'text' as const, text: TURNED_OVER_NOTE, size: 'small' as const, soft: true }]
      : []),
    stepTable(stencils),
    { kind: 'text', text: STEP_NOTE, size: 'small', soft: true },
    cutTable(made, stock),
    { kind: 'text', text: GRAIN_NOTE, size: 'small', soft: true },
    { kind: 'list', title: 'While you prepare', items: [...CAUTIONS_BY_TOPIC.screens] },
    { kind: 'text', text: CAUTIONS_DEFER, bold: true },
  ];
}

function meshWords({ mesh }: Pick<Stencil['screen'], 'mesh'>): string {
  return `${mesh.threadsPerCm}/cm, ${mesh.threadUm} µm`;
}

function stencilTable(stencils: readonly Stencil[], states: ReadonlyMap<string, FrameState>): PaperTable {
  const made = stencils.filter(({ screen }) => states.get(screen.key) === 'made').length;
  return {
    kind: 'table',
    title: `Stencils: ${screensWords(stencils.length, made)}, by mesh`,
    columns: [
      { head: '', share: 0.05 },
      { head: 'Screen', share: 0.23 },
      { head: 'Mesh', share: 0.16 },
      { head: 'Image', share: 0.17 },
      { head: 'Emulsion', share: 0.11 },
      { head: 'Inks', share: 0.13 },
      { head: 'First, last set-up', share: 0.15 },
    ],
    rows: stencils.map((stencil) => ({
      cells: [
        TICK,
        {
          lines: [
            { text: `${stencil.screen.key} ${stencil.screen.name}`, bold: true },
            {
              text: stateWords(states.get(stencil.screen.key)) + `mounted ${counted(stencil.mounts, 'time')}`,
              size: 'small',
            },
            ...(stencil.screen.mirrored === true ? [{ text: TURNED_OVER, size: 'small' as const }] : []),
          ],
        },
        cell(meshWords(stencil.screen)),
        {
          lines: [
            { text: `${Math.ceil(stencil.imageWidthMm)} × ${Math.ceil(stencil.imageHeightMm)} mm` },
            { text: `${(stencil.imageM2 * 1e4).toFixed(0)} cm² open`, size: 'small' },
          ],
        },
        cell(`${Math.ceil(emulsionMl(stencil))} mL`),
        cell(stencil.inks.join(', '), { size: 'small' }),
        { lines: [{ text: `${stencil.first}, ${stencil.last}` }, { text: daysWords(stencil), size: 'small' }] },
      ],
    })),
  };
}

/** 'made, ' or 'to make, ' where the list of screens to make says so. */
function stateWords(state: FrameState | undefined): string {
  return state === undefined ? '' : `${state}, `;
}

function daysWords({ firstDay, lastDay }: Stencil): string {
  return firstDay === lastDay ? `day ${firstDay}` : `days ${firstDay} to ${lastDay}`;
}

function frameTable(stencils: readonly Stencil[]): PaperTable {
  const frames = framesOf(stencils);
  const saved = stencils.length - frames.length;
  return {
    kind: 'table',
    title: `Frames: ${counted(frames.length, 'frame')}${saved > 0 ? `, ${saved} fewer by reclaiming overnight` : ', one for each stencil: none is free in time to be reclaimed'}`,
    columns: [
      { head: 'Frame', share: 0.09 },
      { head: 'Mesh', share: 0.18 },
      { head: 'Inside, at least', share: 0.2 },
      { head: 'Stencils, one after the other', share: 0.53 },
    ],
    rows: frames.map((frame, at) => ({
      cells: [
        cell(String(at + 1), { bold: true }),
        cell(meshWords(frame)),
        cell(`${frame.insideWidthMm} × ${frame.insideHeightMm} mm`),
        cell(listedInTime(frame.stencils.map((stencil) => `${stencil.screen.key} ${stencil.screen.name} (${daysWords(stencil)})`))),
      ],
    })),
  };
}

function listedInTime(names: readonly string[]): string {
  return names.map((name, at) => (at === 0 ? name : `reclaim, then ${name}`)).join('; ');
}

function stepTable(stencils: readonly Stencil[]): PaperTable {
  const meshes = new Map(stencils.map(({ screen }) => [meshKey(screen.mesh), screen]));
  return {
    kind: 'table',
    title: 'Exposure',
    columns: [
      { head: 'Mesh', share: 0.24 },
      ...EXPOSURE_STEPS.map((step) => ({ head: `× ${step}`, share: 0.06 })),
      { head: 'Shortest step, s', share: 0.17 },
      { head: 'Chosen, s', share: 0.17 },
    ],
    rows: [...meshes.values()].map((screen) => ({
      cells: [cell(meshWords(screen), { bold: true }), ...EXPOSURE_STEPS.map(() => TICK), cell('________'), cell('________')],
    })),
  };
}

function cutTable({ plan, recipes }: MadePlan, stock: StockSheet): PaperTable {
  return {
    kind: 'table',
    title: `Cut list: out of ${stock.widthMm} × ${stock.heightMm} mm, grain along ${stock.grain === 'width' ? stock.widthMm : stock.heightMm}`,
    columns: [
      { head: '', share: 0.05 },
      { head: 'Recipes', share: 0.15 },
      { head: 'Cut', share: 0.34 },
      { head: 'Grain along the width', share: 0.23 },
      { head: 'Grain along the height', share: 0.23 },
    ],
    rows: cutList(plan, recipes, stock).map((row) => ({
      cells: [
        TICK,
        cell(row.recipes.length > 6 ? counted(row.recipes.length, 'recipe') : listed(row.recipes.map(recipeLetter)), { bold: true }),
        { lines: [{ text: `${counted(row.sheets, 'sheet')} of ${row.widthMm} × ${row.heightMm} mm` }, { text: row.paper, size: 'small' }] },
        ...row.ways.map(wayCell),
      ],
    })),
  };
}

function wayCell({ across, down, aStock, stockSheets, wasted }: CutRow['ways'][number]): PaperCell {
  if (stockSheets === null) return cell('does not fit', { soft: true });
  return {
    lines: [
      { text: `${counted(stockSheets, 'sheet')} to buy` },
      { text: `${across} × ${down} = ${aStock} out of each, ${Math.round(100 * wasted)} % waste`, size: 'small' },
    ],
  };
}
