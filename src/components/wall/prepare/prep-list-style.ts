import { css } from 'lit';

/** The list of screens to have: a table, or where there is no room for columns a block of lines a screen. */
export const prepListStyle = css`
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
  @media (max-width: 760px) {
    .list,
    .list tbody {
      display: block;
    }
    .scroll:has(.list) {
      max-height: none;
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
  }
`;
