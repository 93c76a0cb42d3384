import { css } from 'lit';

/** A dialog that shows prints large, side by side under its head. */
export const sideBySideStyle = css`
  dialog[open] {
    display: grid;
    grid-template-rows: auto minmax(var(--least), 1fr);
  }
  header {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2) var(--space-5);
    padding: var(--space-5) var(--space-8);
    background: var(--table);
    border-bottom: 1px solid var(--line);
  }
  ul {
    display: grid;
    gap: var(--space-8);
    min-height: 0;
    margin: 0;
    padding: var(--space-8);
    list-style: none;
  }
`;
