import type { FrameState } from '../../../engine/explore/prepare/frames.ts';
import { meshKey } from '../../../engine/ink/film/mesh.ts';
import { type CutRow, cutList, type StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import { emulsionMl, EMULSION_ML_PER_M2, EXPOSURE_STEPS, FRAME_MARGIN_MM, framesOf } from '../../../engine/visit/stencils/frames.ts';
import { stencilsOf, type Stencil } from '../../../engine/visit/stencils/stencil-list.ts';
import { fixed } from '../../../engine/words/language.ts';
import { CAUTIONS_BY_TOPIC, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { say } from '../../words/en/output/papers.ts';
import { TURNED_OVER, TURNED_OVER_NOTE } from '../../words/film-words.ts';
import { frameWord } from '../../words/frame-words.ts';
import { listed, recipeLetter } from '../../words/plan-words.ts';
import { screensWords } from '../../words/supply-words.ts';
import type { MadePlan } from '../made-plan.ts';
import { cell, type PaperBlock, type PaperCell, type PaperTable } from './paper-blocks.ts';

const TICK: PaperCell = { lines: [], box: true };
const TICKED: PaperCell = { lines: [], box: 'ticked' };

/** A common size of paper as it is bought, its grain along the long side; common practice, no source. */
export const USUAL_STOCK: StockSheet = { widthMm: 700, heightMm: 1000, grain: 'height' };

/** Where the figures of the stencils come from. */
const STENCIL_NOTE = say.imageRectangleRoundWhat(FRAME_MARGIN_MM, EMULSION_ML_PER_M2);
const STEP_NOTE = say.exposureByStepTest;
const GRAIN_NOTE = say.paperMovesMoreAcross;

/** What to prepare before a visit: stencils, frames, exposure tests, paper to cut, and the cautions of that work. */
export function stencilBlocks(made: MadePlan, stock: StockSheet): PaperBlock[] {
  const stencils = stencilsOf(made.plan, made.recipes);
  const states = made.screenStates ?? new Map<string, FrameState>();
  // A screen that is made stands on a frame already, and is not washed out for another.
  const toMake = stencils.filter(({ screen }) => states.get(screen.key) !== 'made');
  return [
    stencilTable(stencils, states),
    ...(toMake.length === 0 ? [] : [frameTable(toMake, toMake.length < stencils.length)]),
    { kind: 'text', text: STENCIL_NOTE, size: 'small', soft: true },
    ...(stencils.some(({ screen }) => screen.mirrored === true)
      ? [{ kind: 'text' as const, text: TURNED_OVER_NOTE, size: 'small' as const, soft: true }]
      : []),
    ...(toMake.length === 0 ? [] : [stepTable(toMake), { kind: 'text' as const, text: STEP_NOTE, size: 'small' as const, soft: true }]),
    cutTable(made, stock),
    { kind: 'text', text: GRAIN_NOTE, size: 'small', soft: true },
    { kind: 'list', title: say.whileYouPrepare, items: [...CAUTIONS_BY_TOPIC.screens] },
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
    title: say.stencilsByMesh(screensWords(stencils.length, made)),
    columns: [
      { head: '', share: 0.05 },
      { head: say.screen, share: 0.23 },
      { head: say.mesh, share: 0.16 },
      { head: say.image, share: 0.17 },
      { head: say.emulsion, share: 0.11 },
      { head: say.inks, share: 0.13 },
      { head: say.firstLastSetUp, share: 0.15 },
    ],
    rows: stencils.map((stencil) => ({
      cells: [
        states.get(stencil.screen.key) === 'made' ? TICKED : TICK,
        {
          lines: [
            { text: `${stencil.screen.key} ${stencil.screen.name}`, bold: true },
            {
              text: stateWords(states.get(stencil.screen.key)) + say.mountedTimes(stencil.mounts),
              size: 'small',
            },
            ...(stencil.screen.mirrored === true ? [{ text: TURNED_OVER, size: 'small' as const }] : []),
          ],
        },
        cell(meshWords(stencil.screen)),
        {
          lines: [
            { text: `${Math.ceil(stencil.imageWidthMm)} × ${Math.ceil(stencil.imageHeightMm)} mm` },
            { text: say.cmOpen(fixed(stencil.imageM2 * 1e4, 0)), size: 'small' },
          ],
        },
        cell(say.mL(Math.ceil(emulsionMl(stencil)))),
        cell(stencil.inks.join(', '), { size: 'small' }),
        { lines: [{ text: `${stencil.first}, ${stencil.last}` }, { text: daysWords(stencil), size: 'small' }] },
      ],
    })),
  };
}

/** 'made, ' or 'to make, ' where the list of screens to make says so. */
function stateWords(state: FrameState | undefined): string {
  return state === undefined ? '' : `${frameWord(state)}, `;
}

function daysWords({ firstDay, lastDay }: Stencil): string {
  return firstDay === lastDay ? say.dayFirstDay(firstDay) : say.daysTo(firstDay, lastDay);
}

function frameTable(stencils: readonly Stencil[], othersMade: boolean): PaperTable {
  const frames = framesOf(stencils);
  const saved = stencils.length - frames.length;
  return {
    kind: 'table',
    title: say.framesFrames(othersMade, frames.length, saved > 0 ? say.fewerByReclaimingOvernight(saved) : say.oneForEachStencil),
    columns: [
      { head: say.frame, share: 0.09 },
      { head: say.mesh, share: 0.18 },
      { head: say.insideAtLeast, share: 0.2 },
      { head: say.stencilsOneAfterOther, share: 0.53 },
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
  return names.map((name, at) => (at === 0 ? name : say.reclaimThen(name))).join('; ');
}

function stepTable(stencils: readonly Stencil[]): PaperTable {
  const meshes = new Map(stencils.map(({ screen }) => [meshKey(screen.mesh), screen]));
  return {
    kind: 'table',
    title: say.exposure,
    columns: [
      { head: say.mesh, share: 0.24 },
      ...EXPOSURE_STEPS.map((step) => ({ head: `× ${fixed(step, step % 1 === 0 ? 0 : 1)}`, share: 0.06 })),
      { head: say.shortestStepS, share: 0.17 },
      { head: say.chosenS, share: 0.17 },
    ],
    rows: [...meshes.values()].map((screen) => ({
      cells: [cell(meshWords(screen), { bold: true }), ...EXPOSURE_STEPS.map(() => TICK), cell('________'), cell('________')],
    })),
  };
}

function cutTable({ plan, recipes }: MadePlan, stock: StockSheet): PaperTable {
  return {
    kind: 'table',
    title: say.cutListOutOf(stock.widthMm, stock.heightMm, stock.grain === 'width' ? stock.widthMm : stock.heightMm),
    columns: [
      { head: '', share: 0.05 },
      { head: say.recipes, share: 0.15 },
      { head: say.cut, share: 0.34 },
      { head: say.grainAlongWidth, share: 0.23 },
      { head: say.grainAlongHeight, share: 0.23 },
    ],
    rows: cutList(plan, recipes, stock).map((row) => ({
      cells: [
        TICK,
        cell(row.recipes.length > 6 ? say.recipesRecipes(row.recipes.length) : listed(row.recipes.map(recipeLetter)), { bold: true }),
        { lines: [{ text: say.sheetsOfMm(row.sheets, row.widthMm, row.heightMm) }, { text: row.paper, size: 'small' }] },
        ...row.ways.map(wayCell),
      ],
    })),
  };
}

function wayCell({ across, down, aStock, stockSheets, wasted }: CutRow['ways'][number]): PaperCell {
  if (stockSheets === null) return cell(say.doesNotFit, { soft: true });
  return {
    lines: [
      { text: say.sheetsToBuy(stockSheets) },
      { text: say.outOfEachWaste(across, down, aStock, Math.round(100 * wasted)), size: 'small' },
    ],
  };
}
