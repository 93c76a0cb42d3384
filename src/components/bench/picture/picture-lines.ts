import { nothing, svg } from 'lit';

/** Lines over a picture, sheet mm. */
interface PictureLines {
  /** SVG path data of what is selected; '' for nothing. */
  outline: string;
  /** Whether it can be dragged. */
  held: boolean;
  /** A place that is marked; null for none. */
  spot: { xMm: number; yMm: number } | null;
}

/** What is drawn over a picture; the part of it that a pointer takes hold of is of class `hold`. */
export function pictureLines({ outline, held, spot }: PictureLines) {
  return svg`<g class="lines">
    ${outline === '' || !held ? nothing : svg`<path class="hold" d=${outline} />`}
    ${outline === '' ? nothing : svg`<path class="under" d=${outline} /><path class="over" d=${outline} />`}
    ${spot === null ? nothing : svg`<path class="ring" d=${dotAt(spot)} /><path class="dot" d=${dotAt(spot)} />`}
  </g>`;
}

/** A line of no length: its round ends are a dot, as large at every zoom. */
function dotAt({ xMm, yMm }: { xMm: number; yMm: number }): string {
  return `M${xMm} ${yMm}h0`;
}
