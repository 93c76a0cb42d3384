import { html, nothing } from 'lit';
import type { Project } from '../../engine/project/types.ts';
import type { ShapeOf } from '../../engine/shapes/read/parts.ts';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { Screen } from '../../engine/shapes/types.ts';
import { say } from '../words/en/drawer/room.ts';
import { askParts } from './ask-parts.ts';
import type { Told } from './divide.ts';
import { askSize, longestNow, unsizedOf } from './drawn-sizes.ts';
import { askWhite } from './white-areas.ts';

/** What can be done with what is told. */
interface Doings {
  close: () => void;
  toBench: (screens: Screen[]) => void;
  spread: (screens: Screen[]) => void;
  resize: (mm: number) => void;
  redraw: (at: number, white: WhiteAs) => void;
  divide: (at: number, each: ShapeOf) => void;
}

type Shown = Told & { whites: ReadonlyMap<string, WhiteAs>; project: Project };

/** What the last files came to, with the questions that they leave. */
export function renderTold(told: Shown, doings: Doings) {
  const { report, project } = told;
  const { drawer: studio, bench } = project;
  const made = studio.screens.filter(({ id }) => report.screens.includes(id));
  const waiting = made.filter(({ id }) => !bench.some((pull) => pull.screen === id));
  return html`<div class="report" role="status" aria-label=${say.whatFilesCameTo}>
    <div class="top">
      <h3>${report.head}</h3>
      <button class="quiet" @click=${doings.close}>${say.close}</button>
    </div>
    ${
      made.length < 2
        ? nothing
        : html`<div class="row">
          ${waiting.length < 2 ? nothing : html`<button class="main" @click=${() => doings.toBench(waiting)}>${say.putAllOnBench(waiting.length)}</button>`}
          ${report.register || made.some(({ placed }) => placed.length !== 1) ? nothing : html`<button @click=${() => doings.spread(made)}>${say.spreadOverSheet}</button>`}
        </div>`
    }
    ${renderAsked(told, doings)}
    ${
      report.remarks.length === 0
        ? nothing
        : html`<ul>
          ${report.remarks.map((remark) => html`<li class=${remark.kept ? '' : 'refused'}>${remark.text}</li>`)}
        </ul>`
    }
  </div>`;
}

function renderAsked({ report, files, whites, project: { drawer: studio } }: Shown, doings: Doings) {
  const { longestMm, screens } = report;
  if (screens.length === 0) return nothing;
  const unsized = unsizedOf(files);
  return html`${unsized === null || longestMm === null ? nothing : askSize(unsized, longestNow(files, screens, studio.screens) ?? longestMm, doings.resize)}
  ${askWhite(files, studio.shapes, whites, doings.redraw)} ${askParts(files, doings.divide)}`;
}
