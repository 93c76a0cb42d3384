import { css } from 'lit';

/** Parts of a page that are shut until they are wanted. */
export const foldStyles = css`
  details.fold {
    border-top: 1px solid var(--line);
  }
  details.fold > summary {
    display: flex;
    align-items: baseline;
    gap: var(--space-6);
    padding: var(--space-6) 0;
    cursor: pointer;
    font-weight: 650;
    list-style: none;
  }
  details.fold > summary::-webkit-details-marker {
    display: none;
  }
  details.fold > summary::after {
    content: '+';
    margin-left: auto;
    font-weight: 400;
    color: var(--ink-soft);
  }
  details.fold[open] > summary::after {
    content: '−';
  }
  details.fold > summary .soft {
    font-weight: 400;
    font-size: var(--type-small);
  }
  details.fold > .inside {
    display: grid;
    gap: var(--space-6);
    padding: var(--space-1) 0 var(--space-7);
  }
`;
