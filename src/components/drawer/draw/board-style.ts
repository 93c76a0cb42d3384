import { css } from 'lit';

/** The drawing board; marks keep their size on the screen however large the board is. */
export const boardStyle = css`
  :host {
    display: grid;
    justify-items: center;
    min-width: 0;
  }
  svg {
    display: block;
    max-width: 100%;
    background: var(--film);
    box-shadow: var(--shadow);
    forced-color-adjust: none;
    cursor: crosshair;
    touch-action: none;
    user-select: none;
    -webkit-user-select: none;
  }
  path {
    fill: none;
    vector-effect: non-scaling-stroke;
    pointer-events: none;
  }
  .grid {
    stroke: var(--film-line);
    stroke-width: 1px;
  }
  .face {
    fill: var(--film-ink);
    fill-opacity: 0.75;
    fill-rule: nonzero;
  }
  .under {
    fill: var(--film-ink);
    fill-rule: nonzero;
  }
  .tone-0 {
    fill-opacity: 0.8;
  }
  .tone-1 {
    fill-opacity: 0.4;
  }
  .tone-2 {
    fill-opacity: 0.6;
  }
  .blade {
    stroke: var(--film-accent);
    stroke-width: 2px;
    stroke-linejoin: round;
  }
  .open,
  .pen {
    stroke: var(--film-ink);
    stroke-width: 2px;
    stroke-linejoin: round;
  }
  .point {
    stroke: var(--film-accent);
    stroke-width: 9px;
    stroke-linecap: square;
  }
  .point.round {
    stroke-linecap: round;
    stroke-width: 10px;
  }
  .point.chosen {
    stroke: var(--mark);
    stroke-width: 15px;
  }
  .arm {
    stroke: var(--film-accent);
    stroke-width: 1.5px;
  }
  .knob {
    stroke: var(--film-accent);
    stroke-width: 12px;
    stroke-linecap: round;
  }
  .cross {
    stroke: var(--mark);
    stroke-width: 1.5px;
  }
`;
