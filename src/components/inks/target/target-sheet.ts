import { html, LitElement, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import { INK_MESH } from '../../../engine/ink/film/film-factor.ts';
import { expectedSwatch } from '../../../engine/ink/target/expected-swatch.ts';
import { layOutTarget, type PageName, ROOM_MM } from '../../../engine/ink/target/target-layout.ts';
import type { Ink, Paper } from '../../../engine/ink/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { sheetStyles } from './target-sheet-style.ts';

/** What a target is printed from. */
export interface TargetPrint {
  /** In the order of rows and columns. */
  inks: readonly Ink[];
  paper: Paper;
  page: PageName;
  /** The project's title. */
  title: string;
  relative: boolean;
}

/** While a target is there, the page is that of the target and nothing else of the app is printed. */
function pageRules(page: PageName): CSSStyleSheet {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    `@page { size: ${page} landscape; margin: 12mm; } @page target { size: ${page} landscape; margin: 0; } @media print { body > :not(target-sheet) { display: none !important; } }`,
  );
  return sheet;
}

let shown: { sheet: TargetSheet; rules: CSSStyleSheet } | null = null;

function putAway(): void {
  if (shown === null) return;
  const { sheet, rules } = shown;
  shown = null;
  sheet.remove();
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== rules);
}

/** Opens the browser's print dialog on a target. */
export async function printTarget(print: TargetPrint): Promise<void> {
  putAway();
  const sheet = document.createElement('target-sheet');
  sheet.print = print;
  const rules = pageRules(print.page);
  shown = { sheet, rules };
  document.body.append(sheet);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
  await sheet.updateComplete;
  window.addEventListener('afterprint', putAway, { once: true });
  window.print();
}

/** A target to be pulled by hand, on paper alone: its squares in mm, how to pull it, a list to fill in. */
@customElement('target-sheet')
export class TargetSheet extends LitElement {
  static override styles = [controls, sheetStyles];

  @property({ attribute: false }) print!: TargetPrint;

  override render() {
    const { inks, paper, page, title, relative } = this.print;
    const layout = layOutTarget(
      inks.map(({ id }) => id),
      page,
    );
    const { widthMm, heightMm, sideMm, pitchMm, squares } = layout;
    const chip = Math.min(4.5, sideMm * 0.36);
    const digits = Math.min(3.6, sideMm * 0.34);
    const [left, top] = [ROOM_MM.edge + ROOM_MM.left, ROOM_MM.edge + ROOM_MM.heading + ROOM_MM.above];
    const bottom = top + inks.length * pitchMm - (pitchMm - sideMm);
    const right = left + (inks.length + 1) * pitchMm - (pitchMm - sideMm);
    const label = Math.min(3.8, pitchMm * 0.5);
    // A letter is about 0.6 of its size wide.
    const fitting = (name: string, roomMm: number): string => {
      const most = Math.floor(roomMm / (label * 0.6));
      return name.length > most ? `${name.slice(0, most - 1).trimEnd()}…` : name;
    };
    const groups = inks.map((ink) => ({ ink, list: squares.filter(({ first }) => first === ink.id) }));
    return html`
      <section class="page" style="width:${widthMm}mm;height:${heightMm}mm">
        <svg viewBox="0 0 ${widthMm} ${heightMm}" style="width:${widthMm}mm;height:${heightMm}mm" role="img" aria-label="Target of ${inks.length} inks with ${squares.length} numbered squares">
          <text class="title" x=${ROOM_MM.edge} y=${ROOM_MM.edge + 5}>Overprint target: ${title}</text>
          <text class="note" x=${ROOM_MM.edge} y=${ROOM_MM.edge + 10}>Pull this by hand; measure or pick each square. One stroke each, on ${paper.name === '' ? 'the paper of the project' : paper.name}. Rows go down first, columns over them.</text>
          ${inks.map((ink, row) => {
            const y = top + row * pitchMm;
            return svg`<rect class="bar" x=${left} y=${y} width=${right - left} height=${sideMm} />
              <text class="name" font-size=${label} x=${left - 3} y=${y + sideMm / 2 + label * 0.35} text-anchor="end">${fitting(`${row + 1} ${ink.name}`, ROOM_MM.left - 3)}</text>`;
          })}
          ${inks.map((ink, column) => {
            const x = left + (column + 1) * pitchMm;
            return svg`<rect class="bar" x=${x} y=${top} width=${sideMm} height=${bottom - top} />
              <text class="name" font-size=${label} transform="translate(${x + sideMm / 2 + label * 0.35} ${top - 2.5}) rotate(-90)">${fitting(`${column + 1} ${ink.name}`, ROOM_MM.above - 3)}</text>`;
          })}
          <text class="note" transform="translate(${left + sideMm / 2 + 1} ${top - 2.5}) rotate(-90)">alone</text>
          <text class="note" x=${left - 3} y=${top - 9} text-anchor="end">over it →</text>
          <text class="note" x=${left - 3} y=${top - 4} text-anchor="end">first down ↓</text>
          ${squares.map((square) => {
            const { xMm, yMm, number } = square;
            return svg`<rect class="square" x=${xMm} y=${yMm} width=${sideMm} height=${sideMm} />
              <text class="number" font-size=${digits} x=${xMm + 0.7} y=${yMm + digits + 0.3}>${number}</text>
              <rect x=${xMm + sideMm - chip - 0.6} y=${yMm + sideMm - chip - 0.6} width=${chip} height=${chip} fill=${expectedSwatch(square, inks, paper, relative).hex} />`;
          })}
          <text class="note" x=${ROOM_MM.edge} y=${heightMm - ROOM_MM.edge}>Squares ${sideMm.toFixed(1)} mm, ${pitchMm.toFixed(1)} mm apart, when printed at 100 %. The small chips are what the inks are thought to give, as this printer can show it.</text>
        </svg>
      </section>
      <section class="flow">
        <h2>Pulling it</h2>
        <ol>
          <li>Make two stencils: one bar as long as a row, one as long as a column, as wide as a square; or mask the bars on an open screen.</li>
          <li>Rows: pull each ink as one bar along its row, from square “alone” to the end. One stroke, on the mesh in the list.</li>
          <li>Let every row dry; the times are in the list.</li>
          <li>Columns: pull each ink as one bar down its column, over all rows, in the same way.</li>
          <li>When all is dry, measure each square in the middle: spectral, over white backing; or L, a, b (D50, 2°). Name the samples by the numbers of the squares.</li>
        </ol>
        <p class="small">${CAUTIONS[0]} ${CAUTIONS_DEFER}</p>
        <p class="fill"><span>Paper: ${paper.name}</span><span>Date</span><span>Printer</span><span>Instrument, light</span></p>
        <table>
          <thead><tr><th>Ink</th><th>Mesh</th><th>Strokes</th><th>Dry</th><th class="line">Batch, letdown</th><th class="line">Squeegee, angle</th><th class="line">Notes</th></tr></thead>
          <tbody>
            ${inks.map((ink, i) => {
              const mesh = ink.mesh ?? INK_MESH;
              return html`<tr>
                <td>${i + 1} ${ink.name}</td>
                <td>${mesh.threadsPerCm}/cm, ${mesh.threadUm} µm${ink.mesh === undefined ? ', or yours' : ''}</td>
                <td>1</td>
                <td>${ink.dryMinutes} min</td>
                <td></td><td></td><td></td>
              </tr>`;
            })}
          </tbody>
        </table>
        <h2 class="new-page">What you measure</h2>
        <div class="lists">
          ${groups.map(
            ({ ink, list }) => html`<table class="readings ${list.length <= 20 ? 'short' : ''}">
              <colgroup><col class="number" /><col class="over" /><col /><col /><col /></colgroup>
              <thead><tr><th colspan="2">${ink.name} first, then</th><th>L</th><th>a</th><th>b</th></tr></thead>
              <tbody>
                ${list.map((square) => {
                  const over = square.over === null ? null : defined(inks.find(({ id }) => id === square.over));
                  return html`<tr><td>${square.number}</td><td>${over === null ? 'nothing' : over.name}</td><td></td><td></td><td></td></tr>`;
                })}
              </tbody>
            </table>`,
          )}
        </div>
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'target-sheet': TargetSheet;
  }
}
