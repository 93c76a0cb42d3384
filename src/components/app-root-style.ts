import { css } from 'lit';

/** The studio's frame: doors above, on a phone below; notices in a place of their own, so that they lie over no control. */
export const appRootStyle = css`
  :host {
    display: grid;
    grid-template-rows: auto auto 1fr auto;
    height: 100dvh;
  }
  .skip {
    position: absolute;
    z-index: 30;
    left: var(--space-4);
    top: -60px;
    padding: var(--space-4) var(--space-6);
    background: var(--table);
    color: var(--ink);
    border: 1px solid var(--line);
  }
  .skip:focus {
    top: var(--space-2);
  }
  header {
    display: flex;
    align-items: stretch;
    gap: var(--space-4) var(--space-8);
    padding: 0 var(--space-8);
    background: var(--table);
    border-bottom: 1px solid var(--line);
    min-width: 0;
  }
  .name {
    display: flex;
    align-items: center;
    gap: var(--space-5);
    font-weight: 700;
    letter-spacing: -0.02em;
    font-size: var(--type-lead);
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
    padding: 0 var(--space-6);
    color: var(--ink-soft);
    text-decoration: none;
    border-bottom: 3px solid transparent;
  }
  /* Inside, as the row of doors scrolls and cuts off what lies around it. */
  nav a:focus-visible {
    outline-offset: -3px;
  }
  nav a:hover {
    color: var(--ink);
  }
  nav a[aria-current] {
    color: var(--ink);
    font-weight: 650;
    border-color: var(--accent);
  }
  @media (forced-colors: active) {
    nav a {
      border-color: Canvas;
    }
    nav a[aria-current] {
      border-color: Highlight;
    }
  }
  .tools {
    display: flex;
    align-items: center;
    gap: var(--space-2);
  }
  .tools button svg {
    width: 20px;
    height: 20px;
  }
  .help {
    min-width: 40px;
    font-weight: 650;
  }
  ps-help {
    position: absolute;
  }
  .strips {
    grid-row: 2;
    grid-column: 1;
    min-width: 0;
  }
  main {
    grid-row: 3;
    grid-column: 1;
    position: relative;
    min-height: 0;
    overflow: hidden;
  }
  main:focus {
    outline: none;
  }
  main > :not(h1) {
    position: absolute;
    inset: 0;
    overflow: auto;
  }
  .notices {
    grid-row: 4;
    grid-column: 1;
    min-width: 0;
    max-height: 30dvh;
    overflow-y: auto;
    background: var(--ink);
    color: var(--wall);
  }
  .notice {
    display: flex;
    gap: var(--space-5);
    align-items: center;
    padding: var(--space-2) var(--space-5) var(--space-2) var(--space-8);
  }
  .notice + .notice {
    border-top: 1px solid color-mix(in srgb, var(--wall) 25%, transparent);
  }
  .notice p {
    max-width: 110ch;
    padding: var(--space-2) 0;
    overflow-wrap: anywhere;
  }
  .notice button {
    color: inherit;
  }
  .notice button:last-child {
    margin-left: auto;
  }
  @media (max-width: 760px) {
    :host {
      grid-template-rows: auto auto 1fr auto auto;
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
      padding: 0 var(--space-7);
      border-bottom: 1px solid var(--line);
    }
    .tools {
      justify-self: end;
      padding-right: var(--space-3);
      background: none;
    }
    .keys {
      display: none;
    }
    nav {
      grid-row: 5;
      grid-column: 1;
      background: var(--table);
      border-top: 1px solid var(--line);
      justify-content: space-between;
    }
    nav a {
      flex: 1;
      justify-content: center;
      padding: 0 var(--space-2);
      font-size: var(--type-small);
      border-bottom: 0;
      border-top: 3px solid transparent;
    }
    /* Longer names of rooms than the English ones still stand beside each other. */
    :host(:lang(de)) nav a {
      padding: 0 1px;
      font-size: var(--type-fine);
    }
    .notice {
      padding-inline: var(--space-6) var(--space-3);
      font-size: var(--type-label);
    }
  }
  /* At 400 % a window is as low as 256 px: the page is higher than it then, and scrolls. */
  @media (max-height: 519px) {
    .notices {
      position: fixed;
      z-index: 25;
      inset: auto 0 0;
    }
    :host {
      height: max(100dvh, 340px);
    }
  }
  @media (max-height: 519px) and (max-width: 760px) {
    :host {
      height: 520px;
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
    main > :not(h1) {
      position: static;
      overflow: visible;
    }
  }
`;
