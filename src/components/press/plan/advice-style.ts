import { css } from 'lit';

/** Advice in rows: what is to be done, what it brings, and the print that it changes most. */
export const adviceStyle = css`
  :host {
    display: block;
    max-width: 1000px;
  }
  h2 {
    margin-bottom: var(--space-3);
  }
  p {
    max-width: 66ch;
  }
  .ask {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-4) var(--space-6);
    margin-top: var(--space-5);
  }
  .fewer {
    align-items: end;
  }
  .fewer label {
    display: flex;
    max-width: 100%;
    align-items: center;
    gap: var(--space-4);
    min-width: 0;
  }
  .fewer select {
    min-width: 0;
    max-width: 100%;
  }
  [role='status'] {
    margin-top: var(--space-6);
  }
  ol {
    margin: var(--space-6) 0 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto auto;
    gap: var(--space-2) var(--space-8);
    align-items: center;
    padding: var(--space-5) 0;
    border-bottom: 1px solid var(--line);
  }
  li p {
    max-width: 80ch;
    font-variant-numeric: tabular-nums;
  }
  li > button {
    grid-column: 3;
  }
  .pair {
    display: flex;
    align-items: center;
    gap: var(--space-4);
  }
  .pair .print {
    display: block;
    width: auto;
    height: 96px;
    background: var(--stock);
    box-shadow: var(--shadow);
  }
  @media (max-width: 760px) {
    li {
      grid-template-columns: minmax(0, 1fr) auto;
    }
    .words {
      grid-column: 1 / -1;
    }
    li > button {
      grid-column: 2;
    }
  }
`;
