import { css } from 'lit';

export const pullSheetStyle = css`
  @media print {
    :host {
      font-size: var(--paper-read);
      line-height: 1.35;
    }
  }
  h1 {
    font-size: var(--paper-display);
    line-height: 1.1;
    letter-spacing: -0.02em;
  }
  h2 {
    font-size: var(--paper-head);
    margin: 0 0 3mm;
    break-after: avoid;
  }
  h3 {
    font-size: var(--paper-head);
  }
  .headline {
    font-size: var(--paper-head);
    font-weight: 650;
    margin: 5mm 0 1.5mm;
  }
  .fill {
    display: flex;
    gap: 8mm;
    margin: 6mm 0;
  }
  .fill span {
    flex: 1;
    border-bottom: 0.3mm solid var(--paper-black);
    padding-bottom: 1mm;
    font-size: var(--paper-text);
  }
  .prints {
    display: flex;
    flex-wrap: wrap;
    gap: 6mm;
    margin: 5mm 0;
  }
  .prints figure {
    width: 40mm;
  }
  .prints.many figure {
    width: 26mm;
  }
  figure {
    margin: 0;
    break-inside: avoid;
  }
  figcaption {
    padding-top: 1.5mm;
    font-size: var(--paper-text);
    line-height: 1.25;
  }
  .print {
    display: block;
    width: 100%;
    /* Room between, so that the image's rounded edge never covers the line. */
    padding: 0.4mm;
    border: 0.35mm solid var(--paper-edge);
  }
  section {
    margin-top: 8mm;
  }
  .new-page {
    break-before: page;
    margin-top: 0;
  }
  .keep {
    break-inside: avoid;
  }
  .supplies th,
  .supplies td {
    padding: 1.6mm 5mm 1.6mm 0;
  }
  .supplies tr {
    break-inside: avoid;
  }
  .supplies thead th {
    font-size: var(--paper-text);
  }
  ul.cautions {
    margin: 0 0 2mm;
    padding-left: 5mm;
  }
  .cautions li {
    margin-bottom: 1mm;
  }
  .defer {
    font-weight: 650;
  }
  .small {
    font-size: var(--paper-text);
  }
  .card {
    break-inside: avoid;
    display: grid;
    grid-template: 'head head' auto 'wait wait' auto 'how states' auto 'sheets states' 1fr / minmax(0, 1fr) auto;
    gap: 2.5mm 8mm;
    padding: 3.5mm 0 4.5mm;
    border-top: 0.5mm solid var(--paper-black);
  }
  /* Several pictures need the width, so that the sheets go below them. */
  .card.several {
    grid-template: 'head head' auto 'wait wait' auto 'how states' auto 'sheets sheets' auto / minmax(0, 1fr) auto;
  }
  /* Many pictures go each beside its sheets, two to a line. */
  .card.many {
    grid-template: 'head head' auto 'wait wait' auto 'how how' auto 'sheets sheets' auto / minmax(0, 1fr) auto;
  }
  .many .take {
    grid-template-columns: 1fr 1fr;
    gap: 3mm 6mm;
  }
  .many .take > div {
    display: grid;
    grid-template-columns: 31mm minmax(0, 1fr);
    gap: 3mm;
    align-items: start;
  }
  .card header {
    grid-area: head;
    display: flex;
    align-items: baseline;
    gap: 4mm;
  }
  .card .at {
    font-size: var(--paper-lead);
    white-space: nowrap;
  }
  .card .screen {
    flex: 1;
    font-size: var(--paper-title);
    line-height: 1.1;
    font-weight: 700;
    letter-spacing: -0.01em;
  }
  .card .tags {
    font-weight: 650;
  }
  .wait {
    grid-area: wait;
    padding: 1.5mm 3mm;
    border: 0.3mm solid var(--paper-black);
    font-weight: 650;
  }
  .how {
    display: grid;
    grid-template-columns: 24mm minmax(0, 1fr);
    gap: 0 5mm;
    align-items: start;
    grid-area: how;
  }
  .offset-diagram {
    display: block;
    width: 24mm;
    height: 24mm;
  }
  .ink {
    display: flex;
    align-items: center;
    gap: 3mm;
    font-size: var(--paper-head);
    font-weight: 650;
  }
  .ink ps-ink-chip {
    width: 14mm;
    height: 7mm;
  }
  .take {
    grid-area: sheets;
    display: grid;
    gap: 2mm;
    align-content: start;
  }
  .states {
    grid-area: states;
    display: flex;
    flex-wrap: wrap;
    align-content: start;
    justify-content: end;
    gap: 4mm;
    max-width: 90mm;
  }
  .states figure {
    width: 66mm;
  }
  .several .states figure {
    width: 42mm;
  }
  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 2mm;
    align-items: start;
  }
  .day {
    width: 100%;
    margin-bottom: 6mm;
    border-collapse: collapse;
  }
  .day caption {
    padding-bottom: 1.5mm;
    font-size: var(--paper-lead);
    font-weight: 650;
    text-align: left;
    break-after: avoid;
  }
  .day td,
  .passport td {
    padding: 1.1mm 3mm 1.1mm 0;
    border-top: 0.2mm solid var(--paper-line);
    vertical-align: middle;
  }
  .day tr,
  .passport tr {
    break-inside: avoid;
  }
  .clock {
    font-variant-numeric: tabular-nums;
  }
  .passport {
    display: grid;
    grid-template-columns: 34mm minmax(0, 1fr);
    gap: 7mm;
    align-items: start;
    padding: 4mm 0 6mm;
    border-top: 0.5mm solid var(--paper-black);
    break-inside: avoid;
  }
  .passport table {
    width: 100%;
    margin-top: 2mm;
    border-collapse: collapse;
  }
  .states figcaption {
    padding-top: 1mm;
    white-space: nowrap;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  ul.sheets {
    display: flex;
    flex-wrap: wrap;
    gap: 2mm 5mm;
    margin: 1mm 0 0;
    padding: 0;
    list-style: none;
    font-size: var(--paper-lead);
  }
  .sheets li {
    display: flex;
    align-items: center;
    gap: 1.6mm;
  }
  .box {
    display: block;
    width: 5.5mm;
    height: 5.5mm;
    border: 0.35mm solid var(--paper-black);
  }
`;
