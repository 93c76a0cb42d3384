import { css } from 'lit';

export const wallActionsStyles = css`
  section {
    position: absolute;
    right: 0;
    bottom: 100%;
    z-index: 2;
    display: grid;
    gap: 12px;
    width: min(640px, 100%);
    max-height: min(62dvh, 560px);
    overflow-y: auto;
    overscroll-behavior: contain;
    padding: 16px 18px;
    background: var(--table);
    border: 1px solid var(--line);
    border-width: 1px 0 0 1px;
    scrollbar-width: thin;
  }
  changed-strip {
    min-width: 0;
  }
  section > * {
    min-width: 0;
  }
  dl {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
    gap: 2px 18px;
    margin: 0;
    font-size: 13px;
  }
  dl div {
    display: flex;
    justify-content: space-between;
    gap: 8px;
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
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }
`;
