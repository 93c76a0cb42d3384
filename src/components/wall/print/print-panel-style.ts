import { css } from 'lit';

export const printPanelStyles = css`
  section {
    position: absolute;
    right: 0;
    bottom: 100%;
    z-index: 2;
    display: grid;
    gap: var(--space-6);
    width: min(640px, 100%);
    max-height: min(56dvh, 560px);
    overflow-y: auto;
    overscroll-behavior: contain;
    padding: var(--space-7) var(--space-7);
    background: var(--table);
    border: 1px solid var(--line);
    border-width: 1px 0 0 1px;
    scrollbar-width: thin;
  }
  section[data-side='left'] {
    right: auto;
    left: 0;
    border-width: 1px 1px 0 0;
  }
  wall-changed-strip {
    min-width: 0;
  }
  section > * {
    min-width: 0;
  }
  dl {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
    gap: var(--space-1) var(--space-7);
    margin: 0;
    font-size: var(--type-small);
  }
  dl div {
    display: flex;
    justify-content: space-between;
    gap: var(--space-4);
    border-bottom: 1px solid var(--line);
  }
  dt {
    color: var(--ink-soft);
  }
  dd {
    margin: 0;
    white-space: nowrap;
  }
  .actions {
    display: grid;
    grid-template-columns: max-content minmax(0, 1fr);
    align-items: center;
    gap: var(--space-3) var(--space-5);
  }
  /* Above the line that says what sets the print apart; as wide as the page, it covers all of that. */
  @media (min-width: 761px) {
    section {
      bottom: calc(100% + var(--why, 0px));
    }
  }
`;
