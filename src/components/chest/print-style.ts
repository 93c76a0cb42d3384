import { css } from 'lit';

export const printStyles = css`
  :host {
    display: grid;
    gap: var(--space-7);
    align-content: start;
    min-width: 0;
  }
  .hung {
    position: relative;
    padding-top: var(--space-2);
  }
  .pin {
    position: absolute;
    z-index: 1;
    top: 12px;
    left: 50%;
    width: 11px;
    height: 11px;
    margin-left: calc(-1 * var(--space-3));
    border-radius: 50%;
    background: var(--pin);
    forced-color-adjust: none;
    box-shadow: var(--shadow-low);
  }
  .paper {
    display: grid;
    place-items: center;
    background: var(--stock);
    box-shadow: var(--shadow);
  }
  .paper ps-picture {
    width: 100%;
  }
  .paper p {
    padding: var(--space-8);
    color: var(--on-stock-soft);
  }
  .words {
    display: grid;
    gap: var(--space-2);
    align-content: start;
    min-width: 0;
  }
  .words label {
    display: block;
  }
  .title,
  .note {
    width: calc(100% + 12px);
    margin-left: calc(-1 * var(--space-3));
    padding: var(--space-1) var(--space-3) !important;
    background: none !important;
    border-color: transparent !important;
  }
  .title {
    text-overflow: ellipsis;
    font-size: var(--type-lead);
    font-weight: 650;
    letter-spacing: -0.01em;
  }
  .note {
    display: block;
    resize: vertical;
    min-height: 30px !important;
    max-height: 12em;
    line-height: 1.4;
  }
  @supports (field-sizing: content) {
    .note {
      field-sizing: content;
      resize: none;
    }
  }
  .title:hover,
  .note:hover {
    border-color: var(--line) !important;
  }
  .chips {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-2);
    padding: var(--space-2) 0 var(--space-1);
  }
  .chips ps-ink-chip {
    width: 29px;
  }
  .actions {
    margin-top: var(--space-4);
    gap: var(--space-4);
  }
  .quiet-actions {
    gap: 0 var(--space-3);
    margin-left: calc(-1 * var(--space-4));
  }
  .first {
    border-color: var(--ink-soft);
    font-weight: 600;
  }
  .built {
    overflow-x: auto;
  }
  table {
    width: 100%;
    max-width: 720px;
    border-collapse: collapse;
  }
  th {
    padding: 0 var(--space-6) var(--space-3) 0;
    font-weight: 400;
    font-size: var(--type-small);
    color: var(--ink-soft);
    text-align: left;
  }
  td {
    padding: var(--space-2) var(--space-6) var(--space-2) 0;
    border-top: 1px solid var(--line);
    vertical-align: middle;
  }
  .count {
    text-align: right;
    padding-right: 0;
  }
  .glyph-cell {
    width: 34px;
  }
  .glyph {
    display: block;
    width: 26px;
    height: 26px;
  }
  .ink {
    display: inline-flex;
    vertical-align: middle;
    gap: var(--space-4);
    align-items: center;
    white-space: nowrap;
  }
  @media (min-width: 900px) {
    :host([opened]) {
      grid-template-columns: minmax(240px, 320px) minmax(0, 1fr);
      grid-template-rows: auto 1fr;
      gap: var(--space-7) var(--space-10);
    }
    :host([opened]) .built {
      grid-column: 2;
      grid-row: 1 / 3;
      padding-top: var(--space-2);
    }
  }
  @media (max-width: 760px) {
    td,
    th {
      padding-right: var(--space-4);
      font-size: var(--type-small);
    }
    td ps-ink-chip {
      width: 20px;
    }
    th:nth-child(2) {
      text-align: left;
    }
  }
`;
