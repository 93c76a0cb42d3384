import { css } from 'lit';

export const wallViewStyles = css`
  :host {
    position: relative;
    display: grid;
    grid-template-rows: auto auto minmax(0, 1fr) auto auto;
    grid-template-columns: minmax(0, 1fr) auto;
    min-width: 0;
    min-height: 0;
    background: var(--wall);
  }
  wall-surface,
  wall-taste,
  wall-line {
    grid-column: 1;
  }
  wall-line {
    grid-row: 1;
  }
  wall-compare-prints,
  wall-print-out,
  ps-picture-out {
    position: absolute;
  }
  /* Keeps its room, so that the wall keeps its height when prints come. */
  wall-line[data-none] {
    visibility: hidden;
  }
  wall-taste {
    grid-row: 2;
  }
  wall-surface {
    grid-row: 3;
  }
  wall-print-why {
    grid-row: 4;
    grid-column: 1 / -1;
  }
  /* As high as its line will be, so that the wall keeps its height when its code comes. */
  wall-print-why:not(:defined) {
    min-height: calc(2.8 * var(--type-small) + 2 * var(--space-3) + 1px);
  }
  wall-rail {
    grid-row: 5;
    grid-column: 1 / -1;
  }
  wall-filter {
    grid-column: 2;
    grid-row: 1 / span 3;
    width: 290px;
  }
  /* Room for the whole wall in small, beside both lines; the edge between these ends at it. */
  @media (min-width: 761px) {
    wall-print-why,
    wall-rail {
      padding-left: 178px;
    }
    wall-rail {
      border: 0;
      background: linear-gradient(var(--line), var(--line)) 178px 0/100% 1px no-repeat var(--table);
    }
  }
  @media (max-width: 760px) {
    /* However many lines stand above and below it, the wall keeps its height, and the room scrolls. */
    :host {
      grid-template-rows: auto auto minmax(200px, 1fr) auto auto;
    }
    wall-filter {
      position: absolute;
      z-index: 2;
      grid-area: 1 / 1 / -1 / -1;
      inset: auto 0 0;
      width: auto;
      height: 48%;
    }
  }
`;
