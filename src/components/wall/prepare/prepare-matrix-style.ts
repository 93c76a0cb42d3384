import { css } from 'lit';

/** Prints by screens and inks. */
export const prepareMatrixStyle = css`
  :host {
    display: grid;
    gap: var(--space-4);
    min-width: 0;
  }
  .more {
    justify-self: start;
  }
  table {
    width: 100%;
    border-collapse: separate;
    border-spacing: 0;
    font-size: var(--type-label);
  }
  th,
  td {
    padding: var(--space-1) var(--space-3);
    border-bottom: 1px solid var(--line);
    text-align: center;
    white-space: nowrap;
    font-weight: 400;
  }
  thead th {
    position: sticky;
    top: 0;
    z-index: 1;
    background: var(--sheet);
    font-weight: 600;
    vertical-align: bottom;
  }
  thead .name {
    display: inline-block;
    max-height: 13.5em;
    overflow: hidden;
    text-overflow: ellipsis;
    writing-mode: vertical-rl;
    transform: rotate(180deg);
    vertical-align: bottom;
    font-weight: 400;
  }
  thead .name + b {
    display: block;
    padding-top: var(--space-2);
    font-weight: inherit;
  }
  thead th[data-state='chosen'] {
    color: var(--accent);
  }
  thead th[data-state='missing'] {
    color: var(--ink-soft);
    font-weight: 400;
  }
  tbody th {
    position: sticky;
    left: 0;
    max-width: 11em;
    overflow: hidden;
    text-overflow: ellipsis;
    background: var(--sheet);
    text-align: left;
  }
  tr[data-printed] th {
    font-weight: 600;
  }
  i {
    forced-color-adjust: none;
    display: inline-block;
    width: 11px;
    height: 11px;
    border-radius: 50%;
    background: var(--ink);
    vertical-align: -1px;
  }
  td[data-state='chosen'] i {
    background: var(--accent);
  }
  td[data-state='missing'] i {
    background: none;
    border: 1.5px solid var(--ink-soft);
    box-sizing: border-box;
  }
  .lacks {
    width: 16%;
    min-width: 5em;
    text-align: left;
    color: var(--ink-soft);
  }
`;
