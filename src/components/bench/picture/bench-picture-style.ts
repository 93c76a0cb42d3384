import { css } from 'lit';

export const benchPictureStyle = css`
  :host {
    display: block;
    position: relative;
    overflow: hidden;
    min-width: 0;
    min-height: 0;
  }
  .frame {
    position: absolute;
    inset: 0;
    overflow: hidden;
    touch-action: none;
    outline: none;
    cursor: default;
  }
  .frame.near {
    cursor: grab;
  }
  .frame.moving {
    cursor: grabbing;
  }
  .frame:focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: -2px;
  }
  .stage {
    position: absolute;
    inset: 0;
    pointer-events: none;
  }
  .sheet {
    position: absolute;
    left: 0;
    top: 0;
    transform-origin: 0 0;
    box-shadow: var(--shadow);
  }
  canvas {
    position: absolute;
    left: 0;
    top: 0;
    transform-origin: 0 0;
  }
  canvas[hidden] {
    display: none;
  }
  svg {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    overflow: hidden;
  }
  .hold {
    pointer-events: all;
    fill: transparent;
    stroke: transparent;
    stroke-width: 14px;
    vector-effect: non-scaling-stroke;
    cursor: move;
  }
  .under {
    fill: none;
    stroke: var(--white);
    stroke-opacity: 0.75;
    stroke-width: 3.5px;
    vector-effect: non-scaling-stroke;
    stroke-linejoin: round;
  }
  .ring,
  .dot {
    fill: none;
    stroke: var(--white);
    stroke-width: 11px;
    stroke-linecap: round;
    vector-effect: non-scaling-stroke;
  }
  .dot {
    stroke: var(--mark);
    stroke-width: 7px;
  }
  .over {
    fill: none;
    stroke: var(--mark);
    stroke-width: 1.5px;
    vector-effect: non-scaling-stroke;
    stroke-linejoin: round;
  }
`;
