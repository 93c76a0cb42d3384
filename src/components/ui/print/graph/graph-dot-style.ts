import { css } from 'lit';

/** A pull as a dot of a graph: its ink, a ring when it is selected or has the focus, and its number. */
export const graphDotStyle = css`
  .dot {
    cursor: pointer;
    outline: none;
  }
  .dot circle.ink {
    stroke: var(--ink);
    stroke-width: 1px;
  }
  .dot .halo {
    fill: none;
    stroke: none;
  }
  .dot.selected .halo,
  .dot:focus-visible .halo {
    stroke: var(--accent);
    stroke-width: 2.5px;
  }
  .dot text {
    font-size: var(--type-fine);
    font-weight: 650;
    text-anchor: middle;
    dominant-baseline: central;
    pointer-events: none;
  }
`;
