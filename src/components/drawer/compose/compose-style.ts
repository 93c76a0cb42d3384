import { css } from 'lit';

export const composeStyle = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 400px;
    min-height: 0;
    min-width: 0;
    height: 100%;
  }
  compose-sheet {
    height: 100%;
    padding: var(--space-4);
  }
  .tools {
    display: grid;
    align-content: start;
    gap: var(--space-7);
    padding: var(--space-8);
    overflow-y: auto;
    background: var(--table);
    border-left: 1px solid var(--line);
  }
  .row {
    gap: var(--space-3);
  }
  h2 {
    font-size: var(--type-lead);
  }
  header.row {
    justify-content: space-between;
  }
  .pad {
    display: inline-flex;
    align-items: center;
    gap: var(--space-3);
  }
  .pad button {
    min-width: 44px;
  }
  [role='radiogroup'] {
    gap: var(--space-5);
    margin-left: var(--space-5);
  }
  .six {
    display: grid;
    grid-template-columns: repeat(3, minmax(0, 1fr));
    gap: var(--space-3);
    width: 100%;
    max-width: 300px;
  }
  .pieces {
    max-height: 120px;
    overflow-y: auto;
  }
  .off {
    padding-top: var(--space-4);
  }
  .tools button {
    padding: var(--space-2) var(--space-5);
    font-size: var(--type-label);
  }
  @media (max-width: 999px) {
    :host {
      grid-template-columns: minmax(0, 1fr);
      height: auto;
    }
    compose-sheet {
      position: sticky;
      z-index: 1;
      top: 0;
      height: min(46vh, 130vw);
      padding: var(--space-2);
      background: var(--wall);
    }
    .tools {
      padding: var(--space-6) var(--space-7) var(--space-10);
      border-left: 0;
      border-top: 1px solid var(--line);
    }
  }
`;
