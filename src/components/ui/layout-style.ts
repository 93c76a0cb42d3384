import { css } from 'lit';

/** An element whose parts stand in a row that wraps. */
export const rowHost = css`
  :host {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
  }
`;

/** An element whose parts stand below each other. */
export const stackHost = css`
  :host {
    display: grid;
    gap: var(--space-7);
  }
`;

/** An element that is a list of cards, side by side as many as fit; set `--card` to their least width. */
export const cardList = css`
  :host {
    display: block;
  }
  ul {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(var(--card), 1fr));
    padding: 0;
    list-style: none;
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
