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

/** A table that scrolls in its own place. */
export const scrollStyle = css`
  .scroll {
    /* What is for the ear alone lies in it, and not below the page, which would scroll on without end. */
    position: relative;
    max-height: 60vh;
    overflow: auto;
    border: 1px solid var(--line);
    background: var(--sheet);
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
  .told,
  .way {
    display: grid;
    align-content: start;
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
  table {
    border-collapse: separate;
    border-spacing: 0;
    font-size: var(--type-label);
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-4);
  }
  /* Where there is room, the curve and beside it what it says. */
  @media (min-width: 1100px) {
    .possible {
      grid-template: auto auto 1fr / minmax(0, 620px) minmax(0, 1fr);
      gap: var(--space-4) var(--space-8);
    }
    .possible h3 {
      grid-column: 1 / -1;
    }
    .possible .curve {
      grid-row: 2 / span 2;
    }
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
    header {
      position: sticky;
      top: 0;
      z-index: 3;
      padding: var(--space-3) var(--space-6);
    }
  }
`;
