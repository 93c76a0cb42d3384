import { css } from 'lit';

/** Tables, cards and passports of the papers. */
export const pullSheetStyle = css`
  :host {
    font-size: var(--paper-text);
    line-height: 1.28;
  }
  h1 {
    font-size: var(--paper-display);
    line-height: 1.1;
    letter-spacing: -0.02em;
  }
  h2 {
    font-size: var(--paper-head);
    margin: 4mm 0 2mm;
    break-after: avoid;
  }
  .large {
    font-size: var(--paper-lead);
  }
  .small {
    font-size: var(--paper-small);
  }
  .fill {
    display: flex;
    gap: 8mm;
    margin: 5mm 0;
  }
  .fill span {
    flex: 1;
    padding-bottom: 1mm;
    border-bottom: 0.3mm solid var(--paper-black);
  }
  .prints {
    display: flex;
    flex-wrap: wrap;
    gap: 5mm;
    margin: 4mm 0;
  }
  .prints figure {
    width: 40mm;
    margin: 0;
    break-inside: avoid;
  }
  .prints.many figure {
    width: 26mm;
  }
  figcaption {
    padding-top: 1mm;
    font-size: var(--paper-small);
  }
  .print {
    display: block;
    width: 100%;
    /* Room between, so that the image's rounded edge never covers the line. */
    padding: 0.4mm;
    border: 0.35mm solid var(--paper-edge);
  }
  .new-page {
    break-before: page;
  }
  .keep {
    break-inside: avoid;
  }
  ul.cautions {
    margin: 0 0 2mm;
    padding-left: 5mm;
  }
  .cautions li {
    margin-bottom: 1mm;
  }
  .columns {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 5mm 8mm;
    align-items: start;
  }
  .card,
  .passport {
    break-inside: avoid;
    border-top: 0.5mm solid var(--paper-black);
    padding-top: 1.5mm;
  }
  .card header {
    display: flex;
    align-items: center;
    gap: 2mm;
    margin-bottom: 1.5mm;
  }
  .tags {
    margin-left: auto;
    font-weight: 650;
  }
  .how {
    display: grid;
    grid-template-columns: 28mm minmax(0, 1fr);
    gap: 4mm;
    align-items: start;
  }
  .offset-diagram {
    display: block;
    width: 100%;
  }
  .ink {
    display: flex;
    align-items: center;
    gap: 2mm;
  }
  .part {
    display: grid;
    grid-template-columns: 15mm 15mm minmax(0, 1fr);
    gap: 2mm;
    align-items: start;
    margin-top: 2mm;
    break-inside: avoid;
  }
  .alone {
    font-size: var(--paper-read);
  }
  .alone .how {
    grid-template-columns: 60mm minmax(0, 1fr);
  }
  .alone .part {
    grid-template-columns: 42mm 42mm minmax(0, 1fr);
  }
  .alone .large {
    font-size: var(--paper-title);
  }
  ul.sheets {
    display: flex;
    flex-wrap: wrap;
    gap: 1.5mm 3.5mm;
    margin: 1mm 0 0;
    padding: 0;
    list-style: none;
    font-size: var(--paper-lead);
  }
  .sheets li {
    display: flex;
    align-items: center;
    gap: 1.4mm;
  }
  .passport header {
    display: grid;
    grid-template-columns: 15mm minmax(0, 1fr);
    gap: 4mm;
    margin-bottom: 1.5mm;
  }
  .passport table {
    width: 100%;
    border-collapse: collapse;
  }
  .passport td {
    padding: 0.4mm 2mm 0.4mm 0;
    vertical-align: top;
    font-size: var(--paper-small);
  }
  .passport .box {
    width: 3.4mm;
    height: 3.4mm;
  }
`;
