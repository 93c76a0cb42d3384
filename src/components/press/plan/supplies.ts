import { css, html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { minutesText } from '../../../engine/base/words.ts';
import type { FrameState } from '../../../engine/explore/prepare/frames.ts';
import { stackMinutesOf } from '../../../engine/ink/film/drying.ts';
import { paperToCut, REJECTS_A_PULL, withRejects } from '../../../engine/visit/paper-needs.ts';
import type { VisitInk, VisitScreen } from '../../../engine/visit/registry.ts';
import { screensToMake } from '../../../engine/visit/screens-to-make.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import '../../ui/kit/ink-chip.ts';
import { fixed } from '../../../engine/words/language.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { say } from '../../words/en/press/plan.ts';
import { frameWord } from '../../words/frame-words.ts';
import { gramsText, listed, recipeLetter } from '../../words/plan-words.ts';
import { inkSplit, screensWords, testSheetName } from '../../words/supply-words.ts';
import { madeBox } from './screen-made.ts';

export const supplyStyles = css`
  table.supplies {
    border-collapse: collapse;
    width: 100%;
  }
  .supplies th,
  .supplies td {
    padding: var(--space-4) var(--space-8) var(--space-4) 0;
    border-bottom: 1px solid var(--line);
    text-align: left;
    font-weight: 400;
    vertical-align: middle;
  }
  .supplies thead th {
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .supplies .number {
    text-align: right;
    white-space: nowrap;
  }
  .supplies tbody th {
    font-weight: 600;
  }
  .supplies th input {
    width: 20px;
    height: 20px;
    margin: 0 var(--space-4) 0 0;
    vertical-align: -3px;
  }
  .supplies ps-ink-chip {
    vertical-align: -4px;
    margin-right: var(--space-5);
  }
  .supplies .open > * {
    padding-bottom: 0;
    border-bottom: 0;
  }
  .supplies .split {
    padding-top: var(--space-1);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .supplies .split span {
    display: block;
    max-width: calc(100vw - 40px);
  }
  .supplies tr > :last-child {
    padding-right: 0;
  }
  @media screen and (max-width: 760px) {
    .supplies th,
    .supplies td {
      padding-right: var(--space-6);
    }
    .supplies thead .number {
      white-space: normal;
    }
  }
`;

/**
 * A table of supplies.
 * @param words how many columns stand over words; the rest stand over numbers
 */
function supplyTable(caption: string, heads: readonly string[], words: number, rows: unknown) {
  return html`<table class="supplies">
    <caption class="visually-hidden">
      ${caption}
    </caption>
    <thead>
      <tr>
        ${heads.map((head, h) => html`<th scope="col" class=${h < words ? '' : 'number'}>${head}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}

/** Ink to mix, in grams, the visit over. */
export function inkTable(plan: PressPlan) {
  const inks = new Map(plan.cards.map((card) => [card.ink.key, card.ink]));
  return supplyTable(
    say.inkToMix,
    [say.ink, say.mix2, say.printedArea, say.printOnAfter, say.stackAfter],
    1,
    html`
      ${plan.inks.map((need) => {
        const ink: VisitInk | undefined = inks.get(need.key);
        const split = inkSplit(need);
        return html`<tr class=${split === '' ? '' : 'open'}>
          <th scope="row"><ps-ink-chip .ink=${ink?.ink}></ps-ink-chip>${need.name}</th>
          <td class="number"><b>${gramsText(need.grams)} g</b></td>
          <td class="number">${fixed(need.areaM2, 2)} m²</td>
          <td class="number">${ink === undefined ? '' : minutesText(ink.ink.dryMinutes)}</td>
          <td class="number">${ink === undefined ? '' : minutesText(stackMinutesOf(ink.ink))}</td>
        </tr>
        ${split === '' ? nothing : html`<tr><td class="split" colspan="5"><span>${split}</span></td></tr>`}`;
      })}
`,
  );
}

/** The same by stock ink, as it is weighed out; nothing where no ink is a mix. */
export function stockTable(plan: PressPlan) {
  const mixed = plan.cards.some((card) => card.ink.stocks.length > 1);
  if (!mixed) return nothing;
  return supplyTable(
    say.stockInkToHave,
    [say.stockInkForMixes, say.toHave],
    1,
    html`
      ${plan.stocks.map(
        ({ name, grams }) => html`<tr>
          <th scope="row">${name}</th>
          <td class="number"><b>${gramsText(grams)} g</b></td>
        </tr>`,
      )}
`,
  );
}

/** Paper to cut, by recipe, with overs and proofs. */
export function paperTable({ plan, recipes }: MadePlan) {
  const rows = plan.recipes.map(({ title }, r) => ({
    title,
    paper: entryAt(recipes, r).paper,
    ...paperToCut(plan.sheets.filter((sheet) => sheet.recipe === r)),
    pulls: entryAt(recipes, r).pulls.length,
  }));
  const all = rows.reduce((sum, { cut }) => sum + cut, plan.testSheet === true ? 1 : 0);
  return html`${supplyTable(
    say.paperToCut,
    [say.recipe, say.paper, say.sheets3, say.overs, say.proofs, say.cut],
    2,
    html`
      ${rows.map(
        ({ title, paper, good, overs, proofs, cut }, r) => html`<tr>
          <th scope="row">${recipeLetter(r)} ${title}</th>
          <td>${paper.name}, <span style="white-space: nowrap">${paper.widthMm} × ${paper.heightMm} mm</span></td>
          <td class="number">${good}</td>
          <td class="number">${overs}</td>
          <td class="number">${proofs}</td>
          <td class="number"><b>${cut}</b></td>
        </tr>`,
      )}
      ${plan.testSheet === true ? html`<tr><th scope="row" colspan="5">${testSheetName(plan)}</th><td class="number"><b>1</b></td></tr>` : nothing}
      ${
        rows.length > 1
          ? html`<tr>
            <th scope="row" colspan="5">${say.inAll}</th>
            <td class="number"><b>${all}</b></td>
          </tr>`
          : nothing
      }
`,
  )}
  <p class="soft small">
    ${say.rejectsCompoundAtSpoiled(100 * REJECTS_A_PULL, rejectWords(rows))}
  </p>`;
}

/** More recipes than this are counted, not named. */
const MOST_NAMED = 5;

/** 'A and C take 8 sheets for 6 good, B takes 3 sheets for 2 good': what is alike is said once. */
function rejectWords(rows: readonly { good: number; pulls: number }[]): string {
  const groups = new Map<string, string[]>();
  for (const [r, { good, pulls }] of rows.entries()) {
    const words = say.sheetsForGood(withRejects(good, pulls), good);
    groups.set(words, [...(groups.get(words) ?? []), recipeLetter(r)]);
  }
  const named = (letters: readonly string[]): string => (letters.length > MOST_NAMED ? say.recipes(letters.length) : listed(letters));
  if (groups.size === 1 && rows.length > 1) return say.eachRecipeTakes([...groups.keys()].join());
  return [...groups].map(([words, letters]) => say.take(named(letters), letters.length, words)).join(', ');
}

/** How far a screen is, where the box beside it does not say it. */
function soFar(state: FrameState, box: boolean) {
  return state === 'drawn' || (box && state === 'made') ? nothing : html` <span class="soft small">${frameWord(state)}</span>`;
}

/** Frames to have at hand, in the order in which they are first mounted, and whether each is made. */
export function screenTable({ plan, recipes, screenStates, drawerScreens = new Map() }: MadePlan) {
  const stateOf = ({ key }: VisitScreen): FrameState => screenStates?.get(key) ?? 'drawn';
  const { screens, filmM2 } = screensToMake(plan, recipes, (key) => screenStates?.get(key) === 'made');
  return supplyTable(
    say.screens,
    [say.screenTickedWhenMade, say.mesh, say.firstInSetUp, say.mounted],
    2,
    html`
      ${screens.map(
        ({ screen, first, mounts }) => html`<tr>
          <th scope="row">${drawerScreens.has(screen.key) ? madeBox(screen.key, stateOf(screen) === 'made') : nothing}${screen.key} ${screen.name}${soFar(stateOf(screen), drawerScreens.has(screen.key))}</th>
          <td style="white-space: nowrap">${screen.mesh.threadsPerCm}/cm, ${screen.mesh.threadUm} µm</td>
          <td class="number">${first}</td>
          <td class="number">${say.times(mounts)}</td>
        </tr>`,
      )}
      <tr>
        <th scope="row" colspan="3">${say.filmPositivesAsLarge(screensWords(screens.length, screens.filter(({ screen }) => stateOf(screen) === 'made').length))}</th>
        <td class="number"><b>${fixed(filmM2, 2)} m²</b></td>
      </tr>
`,
  );
}
