import { css } from 'lit';

/** An element whose parts stand in a row that wraps. */
export const rowHost = css`
  :host {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
  }
`;

/** A plain list whose entries are rows that wrap. */
export const rowItems = css`
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
  }
`;

/** An element whose parts stand below each other, as high as they are. */
export const stackHost = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-7);
    align-content: start;
  }
`;

/** An element whose parts stand close below each other. */
export const closeStackHost = css`
  ${stackHost}
  :host {
    gap: var(--space-6);
  }
`;

/** A room as wide as the window, in sections below each other. */
export const wideRoom = css`
  :host {
    display: block;
  }
  .room {
    max-width: 1640px;
    margin: 0 auto;
    padding: var(--space-10) var(--space-10) 80px;
  }
  @media (max-width: 1180px) {
    .room {
      padding: var(--space-9) var(--space-9) var(--space-11);
    }
  }
  @media (max-width: 760px) {
    .room {
      padding: var(--space-8) var(--space-7) var(--space-10);
    }
  }
`;

/** The line that says what was found. */
export const headline = css`
  .headline {
    font-size: var(--type-title);
    font-weight: 650;
    line-height: 1.2;
    letter-spacing: -0.02em;
    text-wrap: balance;
  }
  @media (max-width: 760px) {
    .headline {
      font-size: var(--type-head);
    }
  }
`;

/** A name that is written into the head of an editor. */
export const nameInput = css`
  header input[type='text'] {
    width: 100%;
    padding: var(--space-1) 0;
    font-size: var(--type-head);
    font-weight: 650;
    letter-spacing: -0.01em;
    background: none;
    border-color: transparent;
    border-bottom-color: var(--line);
    border-radius: 0;
  }
  header input[type='text']:hover,
  header input[type='text']:focus {
    border-bottom-color: var(--ink);
  }
`;

/** Lists of cards, side by side as many as fit; set `--card` to their least width. */
export const cardGrid = css`
  ul {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(var(--card), 1fr));
    margin: 0;
    padding: 0;
    list-style: none;
  }
`;

/** An element that is a list of cards. */
export const cardList = css`
  ${cardGrid}
  :host {
    display: block;
  }
`;

/** What stands in the middle of an empty surface and lets the pointer through to it. */
export const midst = css`
  .midst {
    position: absolute;
    inset: 0;
    display: grid;
    place-content: center;
    justify-items: center;
    gap: var(--space-7);
    text-align: center;
    pointer-events: none;
  }
`;

/** A dialog as large as the window. */
export const fullDialog = css`
  dialog {
    width: 100vw;
    height: 100dvh;
    max-width: none;
    max-height: none;
    margin: 0;
    padding: 0;
    border: 0;
    background: var(--wall);
    color: var(--ink);
    --least: 0px;
  }
  /* Where a window is too low for head, prints and foot together, they scroll. */
  @media (max-height: 519px) {
    dialog[open] {
      overflow-y: auto;
      --least: 360px;
    }
  }
`;

/** An element that is on paper alone. */
export const paperHost = css`
  :host {
    display: none;
  }
  @media print {
    :host {
      display: block;
      color: var(--paper-black);
    }
  }
`;
