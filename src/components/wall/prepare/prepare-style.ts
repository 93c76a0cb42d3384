import { css } from 'lit';

/** Groups of fields, and amounts among them. */
export const fieldsStyle = css`
  fieldset {
    display: grid;
    gap: var(--space-2);
    margin: 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0 0 var(--space-2);
    font-weight: 600;
  }
  .amount {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 5.4em 4.2em;
    align-items: center;
    gap: var(--space-4);
    font-size: var(--type-label);
  }
  .amount input {
    width: 100%;
    text-align: right;
  }
`;

export const prepareStyle = css`
  dialog[open] {
    display: grid;
    grid-template: auto minmax(var(--least), 1fr) / 300px minmax(0, 1fr);
  }
  header {
    grid-column: 1 / -1;
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: var(--space-6);
    padding: var(--space-5) var(--space-8);
    background: var(--table);
    border-bottom: 1px solid var(--line);
  }
  .ask,
  .answer {
    display: grid;
    align-content: start;
    gap: var(--space-7);
    min-width: 0;
    padding: var(--space-7) var(--space-8) var(--space-9);
    overflow-y: auto;
  }
  .ask {
    background: var(--table);
    border-right: 1px solid var(--line);
  }
  section,
  .way {
    display: grid;
    gap: var(--space-4);
    min-width: 0;
  }
  .tick {
    display: flex;
    align-items: center;
    gap: var(--space-4);
    min-height: 32px;
  }
  .curve {
    display: block;
    width: min(100%, 620px);
    height: auto;
    font-size: var(--type-fine);
  }
  .curve text {
    fill: var(--ink-soft);
  }
  .curve path,
  .curve line {
    fill: none;
    stroke: var(--ink);
    stroke-width: 2;
  }
  .curve .rule {
    stroke: var(--line);
    stroke-width: 1;
  }
  .curve .bound {
    stroke: var(--ink-soft);
    stroke-width: 1.2;
    stroke-dasharray: 4 3;
  }
  .curve .at {
    stroke: var(--accent);
    stroke-width: 1;
  }
  .curve circle {
    fill: var(--ink);
  }
  .curve circle[data-chosen] {
    fill: var(--accent);
  }
  .curve .hit {
    fill: transparent;
    cursor: pointer;
  }
  .count {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-4) var(--space-6);
  }
  .count input {
    flex: 1 1 200px;
    max-width: 420px;
  }
  .scroll {
    max-height: 60vh;
    overflow: auto;
    border: 1px solid var(--line);
    background: var(--sheet);
  }
  table {
    border-collapse: separate;
    border-spacing: 0;
    font-size: var(--type-label);
  }
  .matrix th,
  .matrix td {
    padding: var(--space-1) var(--space-3);
    border-bottom: 1px solid var(--line);
    text-align: center;
    white-space: nowrap;
    font-weight: 400;
  }
  .matrix thead th {
    position: sticky;
    top: 0;
    z-index: 1;
    background: var(--sheet);
    font-weight: 600;
  }
  .matrix thead th[data-state='chosen'] {
    color: var(--accent);
  }
  .matrix thead th[data-state='missing'] {
    color: var(--ink-soft);
    font-weight: 400;
  }
  .matrix tbody th {
    position: sticky;
    left: 0;
    max-width: 11em;
    overflow: hidden;
    text-overflow: ellipsis;
    background: var(--sheet);
    text-align: left;
  }
  .matrix tr[data-printed] th {
    font-weight: 600;
  }
  .matrix i {
    forced-color-adjust: none;
    display: inline-block;
    width: 11px;
    height: 11px;
    border-radius: 50%;
    background: var(--ink);
    vertical-align: -1px;
  }
  .matrix td[data-state='chosen'] i {
    background: var(--accent);
  }
  .matrix td[data-state='missing'] i {
    background: none;
    border: 1.5px solid var(--ink-soft);
    box-sizing: border-box;
  }
  .matrix .lacks {
    text-align: left;
    color: var(--ink-soft);
  }
  .list {
    width: 100%;
  }
  .list th,
  .list td {
    padding: var(--space-2) var(--space-4) var(--space-2) var(--space-4);
    border-bottom: 1px solid var(--line);
    text-align: left;
    font-weight: 400;
    white-space: nowrap;
  }
  .list thead th {
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .list td[data-frame='to make'] {
    color: var(--accent);
    font-weight: 600;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-4);
  }
  @media (max-width: 760px) {
    dialog[open] {
      display: block;
      overflow-y: auto;
    }
    .ask {
      border-right: 0;
      border-bottom: 1px solid var(--line);
    }
    .ask,
    .answer {
      padding: var(--space-6) var(--space-6) var(--space-7);
      overflow: visible;
    }
    .list,
    .list tbody {
      display: block;
    }
    .list thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    .list tbody tr {
      display: grid;
      grid-template-columns: 2.4em minmax(0, 1fr) auto;
      gap: 0 var(--space-4);
      padding: var(--space-4);
      border-bottom: 1px solid var(--line);
    }
    .list tbody th,
    .list tbody td {
      padding: 0;
      border: 0;
      white-space: normal;
    }
    .list tbody th,
    .list td[data-part='name'] {
      font-weight: 600;
    }
    .list td[data-part='state'] {
      grid-area: 1 / 3;
    }
    .list td:nth-child(n + 3):not(:last-child) {
      grid-column: 2 / -1;
      color: var(--ink-soft);
    }
    .list td:nth-child(n + 3):not(:last-child)::before {
      content: attr(data-head) ': ';
    }
    header {
      position: sticky;
      top: 0;
      z-index: 3;
      padding: var(--space-3) var(--space-6);
    }
  }
`;
