import { html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import { INK_MESH } from '../../../engine/ink/film/film-factor.ts';
import { layOutTarget, type PageName } from '../../../engine/ink/target/target-layout.ts';
import type { TargetSquare } from '../../../engine/ink/target/target.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { paperHost } from '../../ui/layout-style.ts';
import { CAUTIONS, CAUTIONS_BY_TOPIC, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { say } from '../../words/en/inks/target.ts';
import { targetPage, type TargetPrint } from './target-page.ts';
import { sheetStyles } from './target-sheet-style.ts';

/** While a target is there, the page is that of the target and nothing else of the app is printed. */
function pageRules(page: PageName): CSSStyleSheet {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    `@page { size: ${page} landscape; margin: 12mm; } @page target { size: ${page} landscape; margin: 0; } @media print { body > :not(target-sheet) { display: none !important; } }`,
  );
  return sheet;
}

let printing: { sheet: TargetSheet; rules: CSSStyleSheet } | null = null;

function endPrint(): void {
  if (printing === null) return;
  const { sheet, rules } = printing;
  printing = null;
  sheet.remove();
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== rules);
}

/** Opens the browser's print dialog on a target. */
export async function printTarget(print: TargetPrint): Promise<void> {
  endPrint();
  const sheet = document.createElement('target-sheet');
  sheet.print = print;
  const rules = pageRules(print.page);
  printing = { sheet, rules };
  document.body.append(sheet);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
  await sheet.updateComplete;
  window.addEventListener('afterprint', endPrint, { once: true });
  window.print();
}

/** A target to be pulled by hand, on paper alone: its squares in mm, how to pull it, a list to fill in. */
@customElement('target-sheet')
export class TargetSheet extends LitElement {
  static override styles = [controls, paperHost, sheetStyles];

  @property({ attribute: false }) print!: TargetPrint;

  override render() {
    const { inks, paper, page } = this.print;
    const { squares } = layOutTarget(
      inks.map(({ id }) => id),
      page,
    );
    const rows = inks.map((ink) => ({ ink, list: squares.filter(({ first }) => first === ink.id) }));
    return html`
      ${targetPage(this.print)}
      <section class="flow">
        <h2>${say.pullingIt}</h2>
        <ol>
          <li>${say.makeTwoStencilsOne}</li>
          <li>${say.rowsPullEachInk}</li>
          <li>${say.letEveryRowDry}</li>
          <li>${say.columnsPullEachInk}</li>
          <li>${say.whenAllIsDry}</li>
        </ol>
        <p class="small">${[CAUTIONS[0], ...CAUTIONS_BY_TOPIC.target, CAUTIONS_DEFER].join(' ')}</p>
        <p class="fill"><span>${say.paper} ${paper.name}</span><span>${say.date}</span><span>${say.printer}</span><span>${say.instrumentLight}</span></p>
        ${this.renderInks()}
        <h2 class="new-page">${say.whatYouMeasure}</h2>
        <div class="lists">${rows.map(({ ink, list }) => this.renderReadings(ink, list))}</div>
      </section>
    `;
  }

  private renderInks() {
    return html`<table>
      <thead><tr><th>${say.ink}</th><th>${say.mesh}</th><th>${say.strokes}</th><th>${say.dry}</th><th class="line">${say.batchLetdown}</th><th class="line">${say.squeegeeAngle}</th><th class="line">${say.notes}</th></tr></thead>
      <tbody>
        ${this.print.inks.map((ink, i) => {
          const mesh = ink.mesh ?? INK_MESH;
          return html`<tr>
            <td>${i + 1} ${ink.name}</td>
            <td>${say.cmMOrYours(mesh.threadsPerCm, mesh.threadUm, ink.mesh === undefined)}</td>
            <td>1</td>
            <td>${say.min(ink.dryMinutes)}</td>
            <td></td><td></td><td></td>
          </tr>`;
        })}
      </tbody>
    </table>`;
  }

  /** Lines to fill in for the squares of one row. */
  private renderReadings(ink: Ink, squares: readonly TargetSquare[]) {
    const { inks } = this.print;
    return html`<table class="readings ${squares.length <= 20 ? 'short' : ''}">
      <colgroup><col class="number" /><col class="over" /><col /><col /><col /></colgroup>
      <thead><tr><th colspan="2">${say.firstThen(ink.name)}</th><th>L</th><th>a</th><th>b</th></tr></thead>
      <tbody>
        ${squares.map((square) => {
          const over = square.over === null ? null : defined(inks.find(({ id }) => id === square.over));
          return html`<tr><td>${square.number}</td><td>${over === null ? say.nothing : over.name}</td><td></td><td></td><td></td></tr>`;
        })}
      </tbody>
    </table>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'target-sheet': TargetSheet;
  }
}
