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
    padding: var(--space-7) var(--space-8) 0;
  }
  .settings:not([hidden]) {
    display: grid;
    align-content: start;
    gap: var(--space-9);
    padding: var(--space-7) var(--space-8) var(--space-9);
    overflow-y: auto;
    scrollbar-width: thin;
  }
  .progress {
    display: flex;
    align-items: baseline;
    justify-content: space-between;
    flex-wrap: wrap;
    gap: var(--space-5) var(--space-6);
  }
  .count {
    white-space: nowrap;
  }
  .count b {
    font-size: var(--type-title);
    font-weight: 650;
    letter-spacing: -0.03em;
    line-height: 1;
  }
  .progress button {
    white-space: nowrap;
  }
  .line {
    height: 2px;
    margin-top: var(--space-6);
    background: var(--line);
    forced-color-adjust: none;
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
  .note {
    margin-top: var(--space-5);
    font-size: var(--type-label);
    color: var(--ink-soft);
  }
  .where {
    min-height: 28px;
    padding: 0 var(--space-2);
    margin-left: calc(-1 * var(--space-2));
    color: var(--ink);
    text-decoration: underline;
    text-underline-offset: 3px;
  }
  .steps {
    display: flex;
    align-items: center;
    gap: var(--space-4);
  }
  .steps input {
    width: 4.8em;
  }
  section .small {
    margin: var(--space-1) 0 var(--space-4);
  }
  @media (max-width: 760px) {
    :host {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: minmax(min-content, 1fr) auto;
      overflow: hidden auto !important;
    }
    wall-view {
      grid-row: 1;
    }
    aside {
      grid-row: 2;
      display: block;
      min-height: auto;
      border-right: 0;
      border-top: 1px solid var(--line);
    }
    .head {
      padding: var(--space-3) var(--space-6);
    }
    .progress {
      align-items: center;
      gap: var(--space-3);
    }
    .progress button {
      padding-inline: var(--space-4);
      font-size: var(--type-label);
    }
    .progress .lying {
      padding: var(--space-1) var(--space-2);
    }
    .lying svg {
      display: block;
      height: 36px;
      overflow: visible;
    }
    .count {
      flex: 1;
    }
    .count b {
      font-size: var(--type-head);
    }
    /* Along the edge between the wall and what it is found from. */
    .line {
      order: -1;
      margin: calc(-1 * var(--space-3)) calc(-1 * var(--space-6)) var(--space-2);
      background: none;
    }
    .head {
      display: grid;
    }
    .note {
      margin: var(--space-3) 0 0;
    }
    .settings {
      max-height: 46dvh;
      padding: var(--space-6) var(--space-7) var(--space-8);
      border-top: 1px solid var(--line);
      overscroll-behavior: contain;
    }
  }
`;
