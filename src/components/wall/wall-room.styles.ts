import { css } from 'lit';

export const wallRoomStyles = css`
  :host {
    display: grid;
    grid-template-columns: 316px minmax(0, 1fr);
    overflow: hidden !important;
  }
  aside {
    display: grid;
    grid-template-rows: auto minmax(0, 1fr);
    min-height: 0;
    background: var(--table);
    border-right: 1px solid var(--line);
  }
  .head {
    padding: 18px 20px 0;
  }
  .settings {
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
    gap: 12px;
  }
  .count b {
    font-size: 30px;
    font-weight: 650;
    letter-spacing: -0.03em;
    line-height: 1;
  }
  .line {
    height: 2px;
    margin-top: 10px;
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
      padding: 6px 12px 0;
    }
    .progress {
      align-items: center;
    }
    .count b {
      font-size: 20px;
    }
    .line {
      margin-top: 6px;
    }
    .told {
      margin: 6px 0 0;
    }
    summary {
      display: flex;
      align-items: center;
      min-height: var(--touch);
      padding: 0 12px;
      cursor: pointer;
    }
    summary::after {
      content: '▴';
      margin-left: auto;
      color: var(--ink-soft);
    }
    details[open] summary::after {
      content: '▾';
    }
    .settings {
      max-height: 48dvh;
      padding: 8px 16px 24px;
      overscroll-behavior: contain;
    }
  }
`;
