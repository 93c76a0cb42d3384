import { css } from 'lit';

/** Tables and the set-up grid of the papers; the tables stand on the screen too. */
export const paperTablesStyle = css`
  table.paper {
    width: 100%;
    margin-bottom: 3mm;
    border-collapse: collapse;
    table-layout: fixed;
  }
  .paper th,
  .paper td {
    padding: 0 1.5mm 0 0;
    text-align: left;
    vertical-align: top;
    font-weight: 400;
    overflow-wrap: anywhere;
  }
  .paper .title,
  .grid .title {
    padding: 2mm 0;
    font-size: var(--paper-head);
    font-weight: 650;
  }
  .paper thead tr + tr > * {
    padding-bottom: 0.8mm;
    border-bottom: 0.3mm solid var(--paper-line);
    color: var(--ink-soft);
    vertical-align: bottom;
    font-size: var(--paper-small);
  }
  .paper tbody {
    break-inside: avoid;
    border-bottom: 0.25mm solid var(--paper-line);
  }
  .paper tbody td {
    padding-top: 0.8mm;
    padding-bottom: 0.6mm;
  }
  .paper .across td {
    padding-left: 5.5%;
    font-weight: 650;
    font-size: var(--paper-small);
  }
  .whole {
    white-space: nowrap;
  }
  .bold {
    font-weight: 650;
  }
  .box {
    display: block;
    flex: none;
    width: 4.4mm;
    height: 4.4mm;
    border: 0.35mm solid var(--paper-black);
  }
  .box[data-ticked]::after {
    content: '';
    display: block;
    width: 1mm;
    height: 2.4mm;
    margin: 0.1mm 0 0 1.2mm;
    border: solid var(--paper-black);
    border-width: 0 0.5mm 0.5mm 0;
    transform: rotate(40deg);
  }
  .swatch {
    flex: none;
    display: inline-block;
    width: 4mm;
    height: 4mm;
    border: 0.2mm solid var(--paper-edge);
    print-color-adjust: exact;
    -webkit-print-color-adjust: exact;
  }
  .paper td.inked {
    position: relative;
    padding-left: 6mm;
  }
  .inked .swatch {
    position: absolute;
    left: 0;
    top: 1.2mm;
  }
  table.grid {
    width: 100%;
    border-collapse: collapse;
    table-layout: fixed;
    font-size: var(--paper-small);
    line-height: 1.15;
  }
  .grid col.head {
    width: 68mm;
  }
  .lying {
    page: lying;
  }
  .grid .title p {
    font-weight: 400;
  }
  .grid th {
    font-weight: 400;
    text-align: left;
  }
  .grid .numbers th,
  .grid .letters th {
    padding: 0;
    font-size: var(--paper-fine);
    text-align: center;
    overflow: visible;
    white-space: nowrap;
  }
  .grid .letters th {
    font-weight: 650;
  }
  table.upright col.head {
    width: 106mm;
  }
  .upright .numbers th span {
    writing-mode: vertical-rl;
    transform: rotate(180deg);
  }
  table.upright tbody th div {
    grid-template-columns: 7mm 5mm 34mm minmax(0, 1fr);
  }
  .grid tr {
    break-inside: avoid;
  }
  .grid .gap {
    break-after: avoid;
  }
  .grid .gap th {
    padding: 0.6mm 0;
    font-weight: 650;
  }
  .grid tbody tr {
    border-top: 0.2mm solid var(--paper-line);
  }
  .grid tbody th div {
    display: grid;
    grid-template-columns: 7mm 5mm 22mm minmax(0, 1fr);
    gap: 1mm;
    align-items: center;
    padding: 0.5mm 0;
  }
  .grid td {
    padding: 0.3mm;
  }
  .grid .starts {
    border-left: 0.3mm solid var(--paper-edge);
  }
  .pull {
    display: block;
    height: 3.6mm;
    border: 0.15mm solid var(--paper-edge);
    text-align: center;
    font-size: var(--paper-fine);
    font-weight: 650;
    line-height: 3.4mm;
    print-color-adjust: exact;
    -webkit-print-color-adjust: exact;
  }
`;
