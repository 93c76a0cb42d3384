import { css } from 'lit';

export const sheetStyles = css`
  @media print {
    :host {
      background: var(--paper-white);
      font-size: var(--paper-text);
      line-height: 1.35;
      print-color-adjust: exact;
    }
  }
  .page {
    page: target;
    overflow: hidden;
  }
  svg {
    display: block;
  }
  text {
    font-family: var(--font);
    fill: var(--paper-black);
  }
  .title {
    font-size: var(--target-title);
    font-weight: 650;
  }
  .note {
    font-size: var(--target-note);
  }
  .number {
    font-weight: 600;
  }
  .bar {
    fill: none;
    stroke: var(--paper-line);
    stroke-width: 0.15;
    stroke-dasharray: 1 1;
  }
  .square {
    fill: none;
    stroke: var(--paper-black);
    stroke-width: 0.25;
  }
  h2 {
    font-size: var(--paper-lead);
    margin: 0 0 3mm;
    break-after: avoid;
  }
  .new-page {
    break-before: page;
  }
  ol {
    margin: 0 0 5mm;
    padding-left: 6mm;
    max-width: 200mm;
  }
  table {
    border-collapse: collapse;
  }
  tr {
    break-inside: avoid;
  }
  th {
    text-align: left;
    font-weight: 650;
  }
  th,
  td {
    padding: 1.3mm 4mm 1.3mm 0;
    border-bottom: 0.2mm solid var(--paper-edge);
    vertical-align: bottom;
  }
  th.line {
    width: 42mm;
  }
  .fill {
    display: flex;
    gap: 8mm;
    margin: 7mm 0 5mm;
  }
  .fill span {
    flex: 1;
    border-bottom: 0.3mm solid var(--paper-black);
    padding-bottom: 1mm;
  }
  .small {
    margin-bottom: 5mm;
    font-size: var(--paper-small);
  }
  .lists {
    columns: 60mm;
    column-gap: 8mm;
  }
  .readings {
    width: 100%;
    margin-bottom: 6mm;
    table-layout: fixed;
    font-size: var(--paper-small);
  }
  .readings th,
  .readings td {
    padding: 1mm 1mm 1mm 0;
    border-right: 0.2mm solid var(--paper-line);
    overflow-wrap: anywhere;
  }
  .readings td:first-child {
    border-right: 0;
    font-weight: 650;
  }
  .readings .number {
    width: 9mm;
  }
  .readings .over {
    width: 25mm;
  }
  /* A short table stays whole; a long one may break, its heading with it. */
  .readings.short {
    break-inside: avoid;
  }
`;
