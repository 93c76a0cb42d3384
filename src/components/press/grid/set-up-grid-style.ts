import { css } from 'lit';

export const setUpGridStyle = css`
  :host {
    display: block;
    min-width: 0;
  }
  .scroller {
    position: relative;
    overflow: auto;
    max-height: min(78dvh, 900px);
    background: var(--table);
    border: 1px solid var(--line);
    overscroll-behavior-x: contain;
  }
  table {
    border-collapse: separate;
    border-spacing: 0;
    font-size: var(--type-label);
  }
  thead th {
    position: sticky;
    z-index: 2;
    background: var(--table);
    font-weight: 500;
  }
  thead tr:first-child th {
    top: 0;
    height: 34px;
  }
  thead tr:last-child th {
    top: 34px;
    height: 34px;
    border-bottom: 1px solid var(--ink);
    font-size: var(--type-fine);
    color: var(--ink-soft);
  }
  thead th.corner {
    left: 0;
    z-index: 4;
    text-align: left;
    padding: 0 var(--space-6);
    height: 68px;
    border-bottom: 1px solid var(--ink);
    vertical-align: bottom;
    padding-bottom: var(--space-3);
    font-size: var(--type-fine);
    color: var(--ink-soft);
  }
  thead th.recipe {
    max-width: 0;
    text-align: left;
    padding: 0 var(--space-3);
  }
  .title {
    display: -webkit-box;
    overflow: hidden;
    line-height: 1.15;
    overflow-wrap: anywhere;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
  }
  thead th small {
    display: block;
    margin-top: -2px;
    font-size: var(--type-fine);
    font-weight: 650;
    line-height: 1;
  }
  thead th.test {
    border-bottom: 1px solid var(--ink);
    vertical-align: bottom;
    padding: 0 var(--space-2) var(--space-3);
    font-size: var(--type-fine);
    line-height: 1.2;
  }
  /* Where no row has a square of its own in a column, its head holds it open. */
  thead tr:last-child th,
  td {
    box-sizing: border-box;
    width: 30px;
    min-width: 30px;
  }
  .starts {
    border-left: 1px solid var(--line);
  }
  th.corner,
  tbody th {
    border-right: 1px solid var(--ink);
  }
  tbody th {
    position: sticky;
    left: 0;
    z-index: 1;
    padding: 0;
    background: var(--table);
    text-align: left;
    font-weight: 400;
  }
  tbody th,
  tbody td {
    border-top: 1px solid color-mix(in srgb, var(--line) 55%, transparent);
  }
  tr.mount th,
  tr.mount td {
    border-top: 1px solid var(--ink-soft);
  }
  tbody tr:first-child > * {
    border-top: 0;
  }
  th button {
    display: grid;
    grid-template-columns: 44px 42px minmax(0, 1fr) auto;
    gap: 0 var(--space-5);
    align-items: center;
    justify-content: stretch;
    width: 100%;
    min-width: 400px;
    min-height: 46px;
    padding: var(--space-2) var(--space-6) var(--space-2) var(--space-2);
    border: 0;
    border-radius: 0;
    background: none;
    text-align: left;
    line-height: 1.25;
  }
  th button[aria-pressed='true'] {
    box-shadow: var(--edge-row);
    background: var(--sheet);
  }
  th button:focus-visible {
    outline-offset: -2px;
  }
  .at {
    color: var(--ink-soft);
    font-size: var(--type-small);
    text-align: right;
  }
  .at small {
    display: block;
    font-size: var(--type-fine);
    white-space: nowrap;
  }
  .name {
    font-weight: 600;
  }
  .name {
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .how,
  .tags {
    font-size: var(--type-fine);
    color: var(--ink-soft);
  }
  .tags {
    text-align: right;
    max-width: 74px;
  }
  @media screen and (min-width: 761px) {
    .close th button {
      grid-template-columns: 42px 26px minmax(0, 1fr) auto;
      gap: 0 var(--space-4);
      min-width: 284px;
      padding-right: var(--space-4);
    }
    .close th ps-ink-chip {
      width: 26px;
    }
    .close .title {
      font-size: var(--type-fine);
    }
    .close .how {
      overflow: hidden;
      text-overflow: ellipsis;
      white-space: nowrap;
    }
    .close thead tr:last-child th,
    .close td {
      width: 21px;
      min-width: 21px;
    }
    .close .pull {
      width: 18px;
    }
    .close td.wide,
    .close thead tr:last-child th.wide {
      min-width: 44px;
    }
  }
  .tick {
    margin-right: var(--space-2);
    color: var(--accent);
    font-weight: 700;
  }
  tr.done .pull,
  tr.done ps-ink-chip {
    opacity: 0.35;
  }
  tr.done .name {
    color: var(--ink-soft);
    font-weight: 400;
  }
  .tags b {
    color: var(--ink);
    font-weight: 650;
  }
  ps-ink-chip {
    width: 40px;
    height: 22px;
  }
  td {
    padding: 0;
    text-align: center;
    cursor: pointer;
  }
  td.wide,
  thead tr:last-child th.wide {
    min-width: 56px;
  }
  .pull {
    display: grid;
    place-items: center;
    width: 22px;
    height: 22px;
    margin: 0 auto;
    border: 1px solid var(--ink);
    font-size: var(--type-fine);
    font-weight: 650;
    print-color-adjust: exact;
    -webkit-print-color-adjust: exact;
  }
  tr.chosen td {
    background: var(--sheet);
  }
  .gap th {
    background: var(--wall);
  }
  .gap td {
    background: var(--wall);
    cursor: default;
  }
  .gap span {
    display: block;
    padding: var(--space-2) var(--space-6);
    font-size: var(--type-small);
  }
  .gap .day {
    font-weight: 650;
  }
  @media screen and (max-width: 760px) {
    th button {
      min-width: 190px;
      grid-template-columns: 44px minmax(0, 1fr);
      gap: 1px var(--space-4);
      padding: var(--space-3) var(--space-4) var(--space-3) var(--space-2);
    }
    th button .at {
      align-self: start;
      font-size: var(--type-label);
    }
    th button ps-ink-chip {
      grid-column: 1;
      grid-row: 2;
      align-self: start;
      justify-self: end;
      width: 28px;
      height: 16px;
    }
    th button .words {
      grid-column: 2;
      grid-row: 1 / 3;
    }
    .name {
      white-space: normal;
    }
    .tags {
      grid-column: 2;
      text-align: left;
      max-width: none;
      min-height: 15px;
    }
    .tags br {
      display: none;
    }
    .corner span {
      display: block;
      width: 162px;
    }
    .gap span {
      width: 190px;
      padding: var(--space-2) var(--space-5);
    }
  }
`;
