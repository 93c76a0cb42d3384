import { html, svg } from 'lit';
import type { Printing } from '../../../engine/ink/film/printing.ts';
import { expectedSwatch } from '../../../engine/ink/target/expected-swatch.ts';
import { layOutTarget, type PageName, ROOM_MM, type TargetLayout } from '../../../engine/ink/target/target-layout.ts';
import type { Ink, Paper } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/inks/target.ts';

/** What a target is printed from. */
export interface TargetPrint {
  /** In the order of rows and columns. */
  inks: readonly Ink[];
  paper: Paper;
  /** Surface and trapping of the studio. */
  printing?: Printing;
  page: PageName;
  /** The project's title. */
  title: string;
  relative: boolean;
}

/** The page to pull on: a bar a row, a bar a column, the squares with their numbers and expected colours. */
export function targetPage(print: TargetPrint) {
  const { inks, paper, page, title } = print;
  const layout = layOutTarget(
    inks.map(({ id }) => id),
    page,
  );
  const { widthMm, heightMm, sideMm, pitchMm, squares } = layout;
  return html`
    <section class="page" style="width:${widthMm}mm;height:${heightMm}mm">
      <svg viewBox="0 0 ${widthMm} ${heightMm}" style="width:${widthMm}mm;height:${heightMm}mm" role="img" aria-label=${say.targetOfInksWith(inks.length, squares.length)}>
        <text class="title" x=${ROOM_MM.edge} y=${ROOM_MM.edge + 5}>${say.overprintTarget} ${title}</text>
        <text class="note" x=${ROOM_MM.edge} y=${ROOM_MM.edge + 10}>${say.pullThisByHand(paper.name === '' ? say.paperOfProject : paper.name)}</text>
        ${bars(inks, layout)} ${squares.map((square) => squareOf(square, print, layout))}
        <text class="note" x=${ROOM_MM.edge} y=${heightMm - ROOM_MM.edge}>${say.squaresMmMmApart(fixed(sideMm, 1), fixed(pitchMm, 1))}</text>
      </svg>
    </section>
  `;
}

/** A bar with its ink's name for each row and each column, and what rows and columns are. */
function bars(inks: readonly Ink[], { sideMm, pitchMm }: TargetLayout) {
  const [left, top] = [ROOM_MM.edge + ROOM_MM.left, ROOM_MM.edge + ROOM_MM.heading + ROOM_MM.above];
  const bottom = top + inks.length * pitchMm - (pitchMm - sideMm);
  const right = left + (inks.length + 1) * pitchMm - (pitchMm - sideMm);
  const label = Math.min(3.8, pitchMm * 0.5);
  return [
    inks.map((ink, row) => {
      const y = top + row * pitchMm;
      return svg`<rect class="bar" x=${left} y=${y} width=${right - left} height=${sideMm} />
        <text class="name" font-size=${label} x=${left - 3} y=${y + sideMm / 2 + label * 0.35} text-anchor="end">${fitting(`${row + 1} ${ink.name}`, ROOM_MM.left - 3, label)}</text>`;
    }),
    inks.map((ink, column) => {
      const x = left + (column + 1) * pitchMm;
      return svg`<rect class="bar" x=${x} y=${top} width=${sideMm} height=${bottom - top} />
        <text class="name" font-size=${label} transform="translate(${x + sideMm / 2 + label * 0.35} ${top - 2.5}) rotate(-90)">${fitting(`${column + 1} ${ink.name}`, ROOM_MM.above - 3, label)}</text>`;
    }),
    svg`<text class="note" transform="translate(${left + sideMm / 2 + 1} ${top - 2.5}) rotate(-90)">${say.alone2}</text>
      <text class="note" x=${left - 3} y=${top - 9} text-anchor="end">${say.overIt2}</text>
      <text class="note" x=${left - 3} y=${top - 4} text-anchor="end">${say.firstDown}</text>`,
  ];
}

/** A name as much of it as has room. */
function fitting(name: string, roomMm: number, fontMm: number): string {
  // A letter is about 0.6 of its size wide.
  const most = Math.floor(roomMm / (fontMm * 0.6));
  return name.length > most ? `${name.slice(0, most - 1).trimEnd()}…` : name;
}

function squareOf(square: TargetLayout['squares'][number], { inks, paper, printing, relative }: TargetPrint, { sideMm }: TargetLayout) {
  const { xMm, yMm, number } = square;
  const chip = Math.min(4.5, sideMm * 0.36);
  const digits = Math.min(3.6, sideMm * 0.34);
  return svg`<rect class="square" x=${xMm} y=${yMm} width=${sideMm} height=${sideMm} />
    <text class="number" font-size=${digits} x=${xMm + 0.7} y=${yMm + digits + 0.3}>${number}</text>
    <rect x=${xMm + sideMm - chip - 0.6} y=${yMm + sideMm - chip - 0.6} width=${chip} height=${chip} fill=${expectedSwatch(square, inks, { ...printing, paper }, relative).hex} />`;
}
