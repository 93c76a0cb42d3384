import { css } from 'lit';

/** The set-up grid on paper: no scrolling, no choosing, as narrow as the page. */
export const setUpGridPaperStyle = css`
  :host([printed]) .scroller {
    overflow: visible;
    max-height: none;
    border: 0;
    background: none;
  }
  :host([printed]) table {
    width: 100%;
    table-layout: fixed;
    font-size: var(--paper-small);
  }
  :host([printed]) thead th,
  :host([printed]) tbody th {
    position: static;
    background: none;
  }
  :host([printed]) thead th.corner {
    width: var(--head, 68mm);
    padding: 0 2mm 1mm 0;
  }
  :host([printed]) thead tr:last-child th {
    padding: 0;
    font-size: var(--number-size, var(--paper-fine));
    color: var(--paper-black);
  }
  :host([printed]) td,
  :host([printed]) td.wide,
  :host([printed]) th.wide {
    width: auto;
    min-width: 0;
    background: none;
  }
  :host([printed]) thead th.recipe {
    padding: 0 1mm;
  }
  :host([printed]) .head {
    display: grid;
    grid-template-columns: 6mm 9mm minmax(0, 1fr) 15mm;
    gap: 0 2mm;
    align-items: center;
    padding: 1mm 2mm 1mm 0;
    line-height: 1.2;
  }
  :host([printed]) .name {
    white-space: normal;
  }
  :host([printed]) .how,
  :host([printed]) .tags {
    font-size: var(--paper-fine);
    white-space: normal;
    max-width: none;
  }
  :host([printed]) ps-ink-chip {
    width: 9mm;
    height: 5mm;
  }
  :host([printed]) .pull {
    width: min(5mm, 82%);
    height: auto;
    aspect-ratio: 1;
    font-size: var(--paper-fine);
  }
  :host([printed]) tr {
    break-inside: avoid;
  }
  :host([printed]) tr.gap {
    break-after: avoid;
  }
  :host([printed]) .gap th {
    border-right: 0;
  }
  :host([printed]) .gap th,
  :host([printed]) .gap td {
    background: var(--paper-fill);
    print-color-adjust: exact;
    -webkit-print-color-adjust: exact;
  }
  :host([printed]) .gap span {
    padding: 1mm 2mm;
    font-size: var(--paper-small);
    white-space: nowrap;
  }
`;
