import { css } from 'lit';

export const composeSheetStyle = css`
  :host {
    display: block;
    min-width: 0;
    min-height: 0;
  }
  svg {
    display: block;
    width: 100%;
    height: 100%;
    user-select: none;
    -webkit-user-select: none;
  }
  .paper {
    fill: var(--film);
    filter: var(--shadow-cut);
  }
  .printable {
    fill: none;
    stroke: var(--film-soft);
    stroke-dasharray: 3 4;
    vector-effect: non-scaling-stroke;
    pointer-events: none;
  }
  path {
    touch-action: none;
    cursor: grab;
    stroke-width: 1px;
    vector-effect: non-scaling-stroke;
  }
  .screen {
    outline: none;
  }
  .ghost path {
    fill: var(--film-rest);
    fill-opacity: 0.16;
    stroke: var(--film-soft);
    stroke-opacity: 0.6;
  }
  .inked path {
    fill: var(--ink-colour);
    stroke: transparent;
    mix-blend-mode: multiply;
  }
  .screen.chosen path {
    stroke: var(--film-accent);
    stroke-opacity: 0.8;
  }
  .ghost.chosen path {
    fill: var(--film-ink);
    fill-opacity: 0.6;
  }
  .screen path.held {
    stroke-width: 2px;
    stroke-opacity: 1;
  }
  .screen:focus-visible path.held {
    stroke-width: 3px;
  }
  path.over {
    fill: transparent;
    stroke: var(--film-accent);
    stroke-width: 2px;
  }
  .tried path {
    fill: var(--film-accent);
    fill-opacity: 0.55;
    mix-blend-mode: multiply;
    pointer-events: none;
  }
  .tone1 path {
    fill: var(--example-cool);
  }
  .tone2 path {
    fill: var(--example-warm);
  }
  .tone3 path {
    fill: var(--film-soft);
  }
  .box rect,
  .box line {
    fill: none;
    stroke: var(--film-accent);
    stroke-width: 1px;
    vector-effect: non-scaling-stroke;
    pointer-events: none;
  }
  .handle {
    touch-action: none;
    cursor: nwse-resize;
  }
  .handle.turn {
    cursor: crosshair;
  }
  .handle circle {
    fill: var(--film);
    stroke: var(--film-accent);
    stroke-width: 2px;
    vector-effect: non-scaling-stroke;
  }
  .handle.turn circle {
    fill: var(--film-accent);
  }
  .handle circle.reach {
    fill: transparent;
    stroke: none;
  }
`;
