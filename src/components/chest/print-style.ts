import { css } from 'lit';

export const printStyles = css`
  :host {
    display: grid;
    gap: 16px;
    align-content: start;
    min-width: 0;
  }
  .hung {
    position: relative;
    padding-top: 4px;
  }
  .pin {
    position: absolute;
    z-index: 1;
    top: 12px;
    left: 50%;
    width: 11px;
    height: 11px;
    margin-left: -5.5px;
    border-radius: 50%;
    background: radial-gradient(circle at 35% 30%, #8f887d, #35312c 70%);
    box-shadow: 1px 3px 3px rgb(0 0 0 / 0.35);
  }
  .paper {
    display: grid;
    place-items: center;
    background: #fffdf9;
    box-shadow: var(--shadow);
  }
  .paper ps-picture {
    width: 100%;
  }
  .paper p {
    padding: 24px;
    color: #5b564d;
  }
  .words {
    display: grid;
    gap: 4px;
    align-content: start;
    min-width: 0;
  }
  .words label {
    display: block;
  }
  .title,
  .note {
    width: calc(100% + 12px);
    margin-left: -6px;
    padding: 2px 6px !important;
    background: none !important;
    border-color: transparent !important;
  }
  .title {
    text-overflow: ellipsis;
    font-size: 18px;
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
    gap: 5px;
    padding: 4px 0 2px;
  }
  .chips ps-ink-chip {
    width: 29px;
  }
  .actions {
    margin-top: 8px;
    gap: 8px;
  }
  .quiet-actions {
    gap: 0 6px;
    margin-left: -8px;
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
    padding: 0 12px 6px 0;
    font-weight: 400;
    font-size: 13px;
    color: var(--ink-soft);
    text-align: left;
  }
  td {
    padding: 5px 12px 5px 0;
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
    gap: 8px;
    align-items: center;
    white-space: nowrap;
  }
  @media (min-width: 900px) {
    :host([opened]) {
      grid-template-columns: minmax(240px, 320px) minmax(0, 1fr);
      grid-template-rows: auto 1fr;
      gap: 16px 40px;
    }
    :host([opened]) .built {
      grid-column: 2;
      grid-row: 1 / 3;
      padding-top: 4px;
    }
  }
  @media (max-width: 760px) {
    td,
    th {
      padding-right: 8px;
      font-size: 13px;
    }
    td ps-ink-chip {
      width: 20px;
    }
    th:nth-child(2) {
      text-align: left;
    }
  }
`;
