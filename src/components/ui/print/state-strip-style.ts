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
    padding: 12px 20px 10px;
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
    padding: 0 11px;
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
    background: #fff;
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
  .state[aria-selected='true']:focus-visible .sheet {
    outline-width: 3px;
  }
  .ticket {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 3px;
    margin-top: 9px;
    font-size: 12px;
    line-height: 18px;
    color: var(--ink-soft);
  }
  .line {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 6px;
    min-height: 18px;
    white-space: nowrap;
  }
  .number {
    font-size: 15px;
    font-weight: 650;
    color: var(--ink);
  }
  .state[aria-selected='true'] .number {
    color: var(--accent);
  }
  .lay {
    letter-spacing: -0.02em;
    word-spacing: -0.05em;
  }
  .lay.long {
    font-size: 11px;
    letter-spacing: -0.05em;
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
  }
  .free {
    position: absolute;
    left: 0;
    top: calc(var(--state-width) / var(--sheet-ratio) / 2);
    transform: translate(-50%, -50%);
    font-size: 17px;
    line-height: 1;
    font-weight: 600;
    color: var(--ink-soft);
    cursor: help;
  }
  .dragged .sheet {
    transform: translate(var(--drag-x, 0px), -6px);
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
    top: -6px;
    bottom: 0;
    width: 3px;
    margin-left: -1.5px;
    background: var(--accent);
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
  }
  .mark::after {
    bottom: 0;
  }
  .handle {
    display: none;
  }
  /* Stays in sight while the states scroll under it. */
  .end {
    position: sticky;
    right: -20px;
    z-index: 5;
    flex: none;
    align-self: stretch;
    margin-left: auto;
    padding: 0 20px 0 12px;
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
      padding: 12px 8px 8px;
    }
  }
  @media (any-pointer: coarse) {
    .handle {
      display: grid;
      place-items: center;
      height: 32px;
      margin-top: 4px;
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
