import { css } from 'lit';

export const wallViewStyles = css`
  :host {
    position: relative;
    display: grid;
    grid-template-rows: auto minmax(0, 1fr) auto;
    grid-template-columns: minmax(0, 1fr) auto;
    min-width: 0;
    min-height: 0;
    background: var(--wall);
  }
  .surface {
    position: relative;
    min-height: 0;
    overflow: hidden;
    touch-action: none;
    cursor: grab;
    user-select: none;
    -webkit-user-select: none;
  }
  .surface,
  wall-line {
    grid-column: 1;
  }
  wall-line {
    grid-row: 1;
  }
  compare-prints,
  print-out,
  wall-keys {
    position: absolute;
  }
  wall-line[hidden] {
    display: none;
  }
  .surface {
    grid-row: 2;
  }
  .rail {
    grid-row: 3;
    grid-column: 1 / -1;
  }
  wall-filter {
    grid-column: 2;
    grid-row: 1 / span 2;
    width: 290px;
  }
  .box {
    position: absolute;
    border: 1.5px solid var(--accent);
    background: color-mix(in srgb, var(--accent) 10%, transparent);
    pointer-events: none;
  }
  .box[hidden] {
    display: none;
  }
  .surface[data-dragging] {
    cursor: grabbing;
  }
  .surface:focus-visible {
    outline: none;
  }
  /* Prints lie over an outline; the print in focus has its own ring. */
  .surface:focus-visible:not([data-focused])::after {
    content: '';
    position: absolute;
    inset: 0;
    border: 2px solid var(--accent);
    pointer-events: none;
  }
  .surface canvas {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    pointer-events: none;
  }
  .note {
    position: absolute;
    inset: 0;
    display: grid;
    place-content: center;
    justify-items: center;
    gap: 16px;
    padding: 32px;
    text-align: center;
    color: var(--ink-soft);
    pointer-events: none;
  }
  .note p {
    max-width: 38ch;
    text-wrap: balance;
  }
  ::slotted(*) {
    pointer-events: auto;
  }
  .rail {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 4px 10px;
    padding: 6px 16px;
    /* Room for the longest words: the wall must not jump from print to print. */
    min-height: 62px;
    background: var(--table);
    border-top: 1px solid var(--line);
  }
  .rail .which {
    flex: 1 1 0;
    min-width: 0;
    font-size: 13px;
    line-height: 1.25;
  }
  .rail .deeds {
    display: flex;
    gap: 6px;
  }
  .stand {
    display: flex;
    gap: 6px;
    margin-left: 10px;
    padding-left: 16px;
    border-left: 1px solid var(--line);
  }
  .dot {
    display: inline-block;
    width: 9px;
    height: 9px;
    margin: 0 4px 0 6px;
    border-radius: 50%;
    background: var(--accent);
  }
  @media (max-width: 760px) {
    wall-filter {
      position: absolute;
      z-index: 2;
      grid-area: 1 / 1 / -1 / -1;
      inset: auto 0 0;
      width: auto;
      height: 48%;
    }
    .rail {
      gap: 6px;
      padding: 4px 10px;
      min-height: 0;
    }
    .rail .which {
      flex-basis: 100%;
      font-size: 14px;
    }
    .rail[data-none] {
      padding: 0;
      min-height: 0;
      border: 0;
    }
    .rail[data-none] > :not(.stand) {
      display: none;
    }
    .rail .deeds {
      display: contents;
    }
    .rail .deeds button {
      flex: 1 0 auto;
      padding: 4px 8px;
      white-space: nowrap;
    }
    .stand {
      position: absolute;
      bottom: calc(100% + 8px);
      right: 8px;
      margin: 0;
      padding: 0;
      border: 0;
    }
    .stand button {
      background: color-mix(in srgb, var(--table) 90%, transparent);
    }
    .stand .step,
    .stand:not([data-moved]) {
      display: none;
    }
  }
`;
