import { css } from 'lit';

export const wallRoomStyles = css`
  :host {
    display: grid;
    grid-template-columns: 324px minmax(0, 1fr);
    overflow: hidden !important;
  }
  aside {
    display: grid;
    grid-template: auto minmax(0, 1fr) / minmax(0, 1fr);
    min-height: 0;
    background: var(--table);
    border-right: 1px solid var(--line);
  }
  .head {
    padding: 18px 20px 0;
  }
  .settings:not([hidden]) {
    display: grid;
    align-content: start;
    gap: 26px;
    padding: 18px 20px 28px;
    overflow-y: auto;
    scrollbar-width: thin;
  }
  .progress {
    display: flex;
    align-items: baseline;
    justify-content: space-between;
    flex-wrap: wrap;
    gap: 10px 12px;
  }
  .count {
    white-space: nowrap;
  }
  .count b {
    font-size: 30px;
    font-weight: 650;
    letter-spacing: -0.03em;
    line-height: 1;
  }
  .progress button {
    white-space: nowrap;
  }
  .line {
    height: 2px;
    margin-top: 12px;
    background: var(--line);
    overflow: hidden;
  }
  .line i {
    display: block;
    height: 100%;
    background: var(--ink-soft);
    transform-origin: left;
  }
  .line i[data-running] {
    background: var(--accent);
  }
  .told {
    margin-top: 10px;
    font-size: 14px;
    color: var(--ink-soft);
  }
  .where {
    min-height: 28px;
    padding: 0 4px;
    margin-left: -4px;
    color: var(--ink);
    text-decoration: underline;
    text-underline-offset: 3px;
  }
  .steps {
    display: flex;
    align-items: center;
    gap: 8px;
  }
  .steps input {
    width: 4.8em;
  }
  section .small {
    margin: 2px 0 8px;
  }
  @media (max-width: 760px) {
    :host {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: minmax(0, 1fr) auto;
    }
    wall-view {
      grid-row: 1;
    }
    aside {
      grid-row: 2;
      display: block;
      border-right: 0;
      border-top: 1px solid var(--line);
    }
    .head {
      padding: 6px 12px;
    }
    .progress {
      align-items: center;
      gap: 8px;
    }
    .count {
      flex: 1;
    }
    .count b {
      font-size: 20px;
    }
    /* Along the edge between the wall and what it is found from. */
    .line {
      order: -1;
      margin: -7px -12px 5px;
      background: none;
    }
    .head {
      display: grid;
    }
    .told {
      margin: 6px 0 0;
    }
    .settings {
      max-height: 46dvh;
      padding: 14px 16px 24px;
      border-top: 1px solid var(--line);
      overscroll-behavior: contain;
    }
  }
`;
