import { html, nothing } from 'lit';
import { styleMap } from 'lit/directives/style-map.js';
import type {
  CardPart,
  GridRow,
  PaperBlock,
  PaperCard,
  PaperCell,
  PaperGrid,
  PaperLine,
  PaperPassport,
  PaperState,
  PaperTable,
} from '../../output/papers/paper-blocks.ts';
import { say } from '../../words/en/press/sheet.ts';

/** What the blocks are drawn with. */
export interface PaperView {
  /** A picture of a recipe's sheet. */
  image(state: PaperState): unknown;
  /** The sheet at its stops. */
  diagram(card: PaperCard): unknown;
}

/** The papers of a visit as they stand on a page of the browser. */
export function paperHtml(blocks: readonly PaperBlock[], view: PaperView) {
  return blocks.map((block) => blockHtml(block, view));
}

function blockHtml(block: PaperBlock, view: PaperView): unknown {
  switch (block.kind) {
    case 'page':
      return html`<div class="new-page"></div>`;
    case 'cover':
      return html`<p>${block.over}</p>
        <h1>${block.title}</h1>
        ${linesHtml(block.lines)} ${fillHtml(block.fill)}`;
    case 'heading':
      return html`<h2>${block.text}</h2>`;
    case 'text':
      return linesHtml([block]);
    case 'fill':
      return fillHtml(block.fill);
    case 'list':
      return html`<section class="keep">
        <h2>${block.title}</h2>
        <ul class="cautions">
          ${block.items.map((item) => html`<li>${item}</li>`)}
        </ul>
      </section>`;
    case 'table':
      return tableHtml(block);
    case 'prints':
      return html`<div class="prints ${block.prints.length > 4 ? 'many' : ''}">
        ${block.prints.map(
          ({ state, title, below }) => html`<figure>
            ${view.image(state)}
            <figcaption><b>${title}</b><br />${below}</figcaption>
          </figure>`,
        )}
      </div>`;
    case 'grid':
      return gridHtml(block);
    case 'card':
      return html`<div class="alone">${cardHtml(block, view)}</div>`;
    case 'columns':
      return html`<div class="columns">
        ${block.entries.map((entry) => (entry.kind === 'card' ? cardHtml(entry, view) : passportHtml(entry, view)))}
      </div>`;
  }
}

function linesHtml(lines: readonly PaperLine[]) {
  return lines.map(
    ({ text, size, bold, soft }) =>
      html`<p class="${size ?? ''} ${bold === true ? 'bold' : ''} ${soft === true ? 'soft' : ''}">${unbroken(text)}</p>`,
  );
}

/** Words with a hyphen that are short enough to stay on one line in every column. */
const HYPHENED = /(\p{L}{1,10}-\p{L}{1,10})/u;

/** A text in which no line ends within 'set-up': the PDF breaks none there either. */
function unbroken(text: string): unknown {
  const parts = text.split(HYPHENED);
  return parts.length === 1 ? text : parts.map((part, i) => (i % 2 === 1 ? html`<span class="whole">${part}</span>` : part));
}

function fillHtml(words: readonly string[]) {
  return html`<div class="fill">${words.map((word) => html`<span>${word}</span>`)}</div>`;
}

/** A table; its head stands again on every page that it runs on to. */
export function tableHtml({ title, columns, rows }: PaperTable) {
  return html`<table class="paper">
    <colgroup>
      ${columns.map(({ share }) => html`<col style=${styleMap({ width: `${(100 * share).toFixed(1)}%` })} />`)}
    </colgroup>
    <thead>
      <tr>
        <th class="title" colspan=${columns.length}><span>${title}</span></th>
      </tr>
      <tr>
        ${columns.map(({ head }) => (head === '' ? html`<td></td>` : html`<th scope="col">${head}</th>`))}
      </tr>
    </thead>
    ${rows.map(
      ({ over, cells, under = [] }) => html`<tbody>
        ${over === undefined ? nothing : html`<tr class="across"><td colspan=${columns.length}>${over}</td></tr>`}
        <tr>
          ${cells.map(cellHtml)}
        </tr>
        ${under.map((text) => html`<tr class="across"><td colspan=${columns.length}>${text}</td></tr>`)}
      </tbody>`,
    )}
  </table>`;
}

function cellHtml({ lines, swatch, box = false }: PaperCell) {
  return html`<td class=${swatch === undefined ? '' : 'inked'}>
    ${box === false ? nothing : html`<span class="box" ?data-ticked=${box === 'ticked'}></span>`}
    ${swatch === undefined ? nothing : html`<span class="swatch" style=${styleMap({ background: swatch })}></span>`}
    ${linesHtml(lines)}
  </td>`;
}

/** Of more sheets than this the numbers stand upright, so that row heads keep their room. */
const MOST_LYING_NUMBERS = 20;

function gridHtml({ title, note, columns, rows }: PaperGrid) {
  return html`<table class="grid ${columns.length > MOST_LYING_NUMBERS ? 'upright' : ''} ${columns.length > 42 ? 'lying' : ''}">
    <colgroup>
      <col class="head" />
      ${columns.map(() => html`<col />`)}
    </colgroup>
    <thead>
      <tr>
        <th class="title" colspan=${columns.length + 1}>${title}<p class="small soft">${note}</p></th>
      </tr>
      <tr class="letters">
        <td></td>
        ${columns.map(({ letter }) => html`<th class=${letter === '' ? '' : 'starts'}>${letter}</th>`)}
      </tr>
      <tr class="numbers">
        <td></td>
        ${columns.map(({ label, letter }) => html`<th class=${letter === '' ? '' : 'starts'} scope="col"><span>${label}</span></th>`)}
      </tr>
      ${
        columns.every(({ use }) => use === '')
          ? nothing
          : html`<tr class="letters">
            <td></td>
            ${columns.map(({ use, letter }) => html`<th class=${letter === '' ? '' : 'starts'}>${use}</th>`)}
          </tr>`
      }
    </thead>
    <tbody>
      ${rows.map(
        (row) => html`${row.gap === null ? nothing : html`<tr class="gap"><th colspan=${columns.length + 1}>${row.gap}</th></tr>`}
          <tr>
            <th scope="row">
              <div>
                <b>${row.number}</b>
                <span class="swatch" style=${styleMap({ background: row.hex })}></span>
                <span class=${row.mount ? 'bold' : ''}>${row.screen}</span>
                <span class="soft">${row.how}</span>
              </div>
            </th>
            ${row.squares.map((square, at) => squareHtml(row, square, columns[at]?.letter !== ''))}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function squareHtml({ hex, light }: GridRow, square: string | null, starts: boolean) {
  return html`<td class=${starts ? 'starts' : ''}>
    ${
      square === null
        ? nothing
        : html`<span class="pull" style=${styleMap({ background: hex, color: `var(--paper-${light ? 'white' : 'black'})` })}>${square}</span>`
    }
  </td>`;
}

function cardHtml(card: PaperCard, view: PaperView) {
  return html`<article class="card">
    <header>
      <span class="box"></span>
      <b class="large">${card.title}</b>
      <span class="tags">${card.tags}</span>
    </header>
    <div class="how">
      ${view.diagram(card)}
      <div>
        <p class="large bold">${card.screen}</p>
        <p class="large bold ink"><span class="swatch" style=${styleMap({ background: card.hex })}></span>${card.ink}</p>
        ${linesHtml(card.lines)}
      </div>
    </div>
    ${card.parts.map((part) => partHtml(part, view))}
  </article>`;
}

function partHtml({ title, before, after, sheets }: CardPart, view: PaperView) {
  return html`<div class="part">
    ${view.image(before)} ${view.image(after)}
    <div>
      <p class="bold">${say.bareNowThen(title, before.pulls.length === 0)}</p>
      <ul class="sheets">
        ${sheets.map((label) => html`<li><span class="box"></span>${label}</li>`)}
      </ul>
    </div>
  </div>`;
}

function passportHtml({ title, sheets, state, rows }: PaperPassport, view: PaperView) {
  return html`<article class="passport">
    <header>
      ${view.image(state)}
      <div>
        <p class="large bold">${title}</p>
        <p>${sheets}</p>
      </div>
    </header>
    <table>
      ${rows.map(
        ({ number, screen, how }) => html`<tr>
          <td><span class="box"></span></td>
          <td><b>${number}</b></td>
          <td><b>${screen}</b></td>
          <td>${how}</td>
        </tr>`,
      )}
    </table>
  </article>`;
}
