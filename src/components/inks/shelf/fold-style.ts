import { css } from 'lit';

/** Parts of a page that are shut until they are wanted. */
export const foldStyles = css`
  details.fold {
    border-top: 1px solid var(--line);
  }
  details.fold > summary {
    display: flex;
    align-items: baseline;
    gap: 12px;
    padding: 12px 0;
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
    font-size: 13px;
  }
  details.fold > .inside {
    display: grid;
    gap: 14px;
    padding: 2px 0 18px;
  }
`;
