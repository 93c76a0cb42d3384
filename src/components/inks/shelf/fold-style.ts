import { css } from 'lit';

/** What is inside a fold of a column. */
export const foldStyles = css`
  .inside {
    display: grid;
    gap: var(--space-6);
    padding: var(--space-1) 0 var(--space-7);
  }
`;
