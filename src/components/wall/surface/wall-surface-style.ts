import { css } from 'lit';

export const wallSurfaceStyles = css`
  :host {
    position: relative;
    display: grid;
    grid-template: minmax(0, 1fr) / minmax(0, 1fr);
    min-width: 0;
    min-height: 0;
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
    padding: var(--space-9);
    color: var(--ink-soft);
  }
  .note p {
    max-width: 38ch;
    text-wrap: balance;
  }
  .plain {
    position: absolute;
    inset: auto 0 0;
    padding: var(--space-3) var(--space-6);
    background: var(--wall);
    color: var(--ink-soft);
    pointer-events: none;
  }
  ::slotted(*) {
    pointer-events: auto;
  }
`;
