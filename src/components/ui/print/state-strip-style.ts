import { css } from 'lit';

export const stateStripStyle = css`
  :host {
    display: block;
    min-width: 0;
  }
  .scroller {
    display: flex;
    align-items: flex-start;
    overflow-x: auto;
    overscroll-behavior-x: contain;
    padding: var(--space-6) var(--space-8) var(--space-5);
    scrollbar-width: thin;
    scrollbar-color: var(--line) transparent;
  }
  [role='listbox'] {
    display: flex;
    position: relative;
  }
  .state {
    position: relative;
    flex: none;
    width: calc(var(--state-width) + 22px);
    padding: 0 var(--space-5);
    cursor: grab;
    user-select: none;
    -webkit-user-select: none;
    outline: none;
  }
  .bare {
    cursor: default;
  }
  .sheet {
    width: var(--state-width);
    aspect-ratio: var(--sheet-ratio);
    background: var(--white);
    forced-color-adjust: none;
    box-shadow: var(--shadow);
  }
  .state:focus-visible .sheet {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .state[aria-selected='true'] .sheet {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .chosen:focus-visible .sheet {
    outline-width: 3px;
  }
  .ticket {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-2);
    margin-top: var(--space-4);
    font-size: var(--type-fine);
    line-height: 18px;
    color: var(--ink-soft);
  }
  .line {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: var(--space-3);
    min-height: 18px;
    white-space: nowrap;
  }
  .number {
    font-size: var(--type-text);
    font-weight: 650;
    color: var(--ink);
  }
  .state[aria-selected='true'] .number {
    color: var(--accent);
  }
  .offset {
    letter-spacing: -0.02em;
    word-spacing: -0.05em;
  }
  .glyph {
    width: 26px;
    height: 18px;
    color: var(--ink);
  }
  .strokes {
    color: var(--ink);
  }
  .shown::after {
    content: '';
    position: absolute;
    left: 11px;
    right: 11px;
    top: -7px;
    height: 3px;
    background: var(--accent);
    forced-color-adjust: none;
  }
  .swaps {
    margin: 0;
    padding: 0 var(--space-7) var(--space-3);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .free {
    position: absolute;
    left: 0;
    top: calc(var(--state-width) / var(--sheet-ratio) / 2);
    transform: translate(-50%, -50%);
    font-size: var(--type-lead);
    line-height: 1;
    font-weight: 600;
    color: var(--ink-soft);
  }
  .dragged .sheet {
    transform: translate(var(--drag-x, 0px), var(--drag-y, -6px));
    position: relative;
    z-index: 3;
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .dragged .ticket,
  .dragged .handle {
    opacity: 0.25;
  }
  .dragged {
    cursor: grabbing;
    z-index: 3;
  }
  .dragging .free {
    visibility: hidden;
  }
  .mark {
    position: absolute;
    z-index: 4;
    width: 3px;
    margin-left: calc(-1 * var(--space-1));
    background: var(--accent);
    forced-color-adjust: none;
    pointer-events: none;
  }
  .mark::before,
  .mark::after {
    content: '';
    position: absolute;
    left: -3px;
    width: 9px;
    height: 3px;
    background: var(--accent);
    forced-color-adjust: none;
  }
  .mark::after {
    bottom: 0;
  }
  .handle {
    display: none;
  }
  /* All at once: rows of small states, which scroll down where they are very many. */
  :host([compact]) .scroller {
    flex-wrap: nowrap;
    overflow: hidden auto;
    max-height: 46cqh;
    padding: var(--space-4) var(--space-6);
  }
  :host([compact]) [role='listbox'] {
    flex-wrap: wrap;
  }
  :host([compact]) .state {
    width: calc(var(--state-width) + 6px);
    padding: var(--space-2) 3px 0;
  }
  :host([compact]) .place {
    font-size: var(--type-fine);
    line-height: 15px;
    text-align: center;
    color: var(--ink-soft);
  }
  :host([compact]) .chosen .place {
    color: var(--accent);
    font-weight: 650;
  }
  :host([compact]) .free,
  :host([compact]) .swaps {
    display: none;
  }
  :host([compact]) .shown::after {
    left: 3px;
    right: 3px;
    top: -2px;
  }
  /* Stays in sight while the states scroll under it. */
  .end {
    position: sticky;
    right: -20px;
    z-index: 5;
    flex: none;
    align-self: stretch;
    margin-left: auto;
    padding: 0 var(--space-8) 0 var(--space-6);
    background: linear-gradient(to right, transparent, var(--wall) 12px);
  }
  :host([data-more]) .end::before {
    content: '';
    position: absolute;
    right: 100%;
    top: 0;
    bottom: 0;
    width: 56px;
    background: linear-gradient(to right, transparent, var(--wall));
    pointer-events: none;
  }
  :host([data-more]) .end {
    background: var(--wall);
  }
  .end.none {
    display: none;
  }
  @media (max-width: 760px) {
    .scroller {
      padding: var(--space-6) var(--space-4) var(--space-4);
    }
  }
  @media (any-pointer: coarse) {
    .handle {
      display: grid;
      place-items: center;
      height: 32px;
      margin-top: var(--space-2);
      touch-action: none;
      color: var(--ink-soft);
      border-top: 1px solid var(--line);
    }
    .handle svg {
      width: 22px;
      height: 10px;
    }
  }
`;
