import { css } from 'lit';

/** The studio's frame: doors above, on a phone below; notices over everything. */
export const appRootStyle = css`
  :host {
    display: grid;
    grid-template-rows: auto 1fr;
    height: 100dvh;
  }
  header {
    display: flex;
    align-items: stretch;
    gap: 8px 24px;
    padding: 0 20px;
    background: var(--table);
    border-bottom: 1px solid var(--line);
    min-width: 0;
  }
  .name {
    display: flex;
    align-items: center;
    gap: 10px;
    font-weight: 700;
    letter-spacing: -0.02em;
    font-size: 17px;
  }
  .name svg {
    width: 22px;
    height: 22px;
  }
  nav {
    display: flex;
    flex: 1;
    min-width: 0;
    overflow-x: auto;
    scrollbar-width: none;
  }
  nav a {
    display: flex;
    align-items: center;
    min-height: 52px;
    padding: 0 14px;
    color: var(--ink-soft);
    text-decoration: none;
    border-bottom: 3px solid transparent;
  }
  nav a:hover {
    color: var(--ink);
  }
  nav a[aria-current] {
    color: var(--ink);
    font-weight: 650;
    border-color: var(--accent);
  }
  .tools {
    display: flex;
    align-items: center;
    gap: 4px;
  }
  .tools button svg {
    width: 20px;
    height: 20px;
  }
  main {
    position: relative;
    min-height: 0;
    overflow: hidden;
  }
  main > * {
    position: absolute;
    inset: 0;
    overflow: auto;
  }
  .notices {
    position: fixed;
    z-index: 20;
    left: 50%;
    bottom: 20px;
    transform: translateX(-50%);
    display: grid;
    gap: 8px;
    width: min(640px, calc(100vw - 24px));
    overflow: visible;
    inset-block-start: auto;
  }
  .notice {
    display: flex;
    gap: 12px;
    align-items: start;
    padding: 10px 8px 10px 16px;
    background: var(--ink);
    color: var(--wall);
    border-radius: 3px;
    box-shadow: var(--shadow);
  }
  .notice p {
    flex: 1;
    padding: 6px 0;
    overflow-wrap: anywhere;
  }
  .notice button {
    color: inherit;
  }
  @media (max-width: 760px) {
    :host {
      grid-template-rows: auto 1fr auto;
    }
    header {
      display: contents;
    }
    .name,
    .tools {
      grid-row: 1;
      grid-column: 1;
      min-height: 48px;
      background: var(--table);
    }
    .name {
      padding: 0 16px;
      border-bottom: 1px solid var(--line);
    }
    .tools {
      justify-self: end;
      padding-right: 6px;
      background: none;
    }
    main {
      grid-row: 2;
      grid-column: 1;
    }
    nav {
      grid-row: 3;
      grid-column: 1;
      background: var(--table);
      border-top: 1px solid var(--line);
      justify-content: space-between;
    }
    nav a {
      flex: 1;
      justify-content: center;
      padding: 0 5px;
      font-size: 13px;
      border-bottom: 0;
      border-top: 3px solid transparent;
    }
    .notices {
      bottom: 64px;
    }
  }
  @media print {
    :host {
      display: block;
      height: auto;
    }
    header,
    .notices {
      display: none;
    }
    main,
    main > * {
      position: static;
      overflow: visible;
    }
  }
`;
