import { css } from 'lit';

export const benchRoomStyle = css`
  :host {
    container-type: size;
  }
  .bench {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 336px;
    grid-template-rows: auto auto;
    grid-template-areas: 'table side' 'graph side';
    --folded: 46px;
  }
  .table {
    grid-area: table;
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    height: calc(100cqh - var(--folded));
    min-height: 420px;
    min-width: 0;
  }
  .light {
    position: relative;
    display: grid;
    min-width: 0;
    min-height: 0;
  }
  .pictures {
    display: grid;
    grid-auto-columns: minmax(0, 1fr);
    grid-auto-flow: column;
    min-height: 0;
    min-width: 0;
  }
  figure {
    display: grid;
    grid-template-rows: minmax(0, 1fr);
    margin: 0;
    min-width: 0;
    min-height: 0;
  }
  figure + figure {
    border-left: 1px solid var(--line);
  }
  figure:has(figcaption) {
    grid-template-rows: auto minmax(0, 1fr);
  }
  figcaption {
    text-align: center;
    padding: var(--space-4) var(--space-6) 0;
    font-size: var(--type-small);
    color: var(--ink-soft);
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  bench-place-card {
    position: absolute;
    top: var(--space-4);
    right: var(--space-4);
    width: min(320px, 100% - 2 * var(--space-4));
    max-height: calc(100% - 2 * var(--space-4));
    overflow-y: auto;
    z-index: 6;
  }
  /* In the corners, where an upright sheet leaves room. */
  .under {
    position: absolute;
    inset: auto 0 0 0;
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: var(--space-7);
    padding: 0 var(--space-6) var(--space-4);
    pointer-events: none;
  }
  .readout {
    padding: var(--space-1) var(--space-4);
    font-size: var(--type-small);
    color: var(--ink-soft);
    background: color-mix(in srgb, var(--wall) 88%, transparent);
    white-space: nowrap;
  }
  .changed {
    position: absolute;
    left: var(--space-6);
    bottom: calc(var(--space-10) + var(--space-3));
    max-width: min(46ch, 100% - 2 * var(--space-6));
    padding: var(--space-2) var(--space-4);
    font-size: var(--type-small);
    background: var(--sheet);
    box-shadow: var(--shadow-low);
    pointer-events: none;
  }
  .changed:empty {
    display: none;
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 var(--space-4);
    padding: var(--space-2) var(--space-6) 0;
  }
  .ways .fill {
    flex: 1;
  }
  .ways button {
    font-size: var(--type-label);
  }
  .looks {
    display: flex;
    background: color-mix(in srgb, var(--wall) 88%, transparent);
    pointer-events: auto;
  }
  .looks button {
    font-size: var(--type-label);
    padding: var(--space-2) var(--space-5);
  }
  .looks button:hover {
    text-decoration: underline;
    text-underline-offset: 4px;
    border-color: transparent;
  }
  .strip {
    min-width: 0;
    border-top: 1px solid var(--line);
  }
  bench-order-fold {
    grid-area: graph;
    min-width: 0;
    border-top: 1px solid var(--line);
  }
  .side {
    grid-area: side;
    align-self: start;
    position: sticky;
    top: 0;
    height: 100cqh;
    overflow-y: auto;
    display: grid;
    align-content: start;
    gap: var(--space-8);
    padding: var(--space-8);
    background: var(--table);
    border-left: 1px solid var(--line);
  }
  .stack {
    display: grid;
    gap: var(--space-1);
  }
  .stack h2 {
    overflow-wrap: anywhere;
  }
  .stack .act {
    padding-top: var(--space-6);
  }
  .side > * + * {
    padding-top: var(--space-8);
    border-top: 1px solid var(--line);
  }
  .wide {
    display: grid;
    gap: var(--space-2);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .wide select {
    font-size: var(--type-text);
    color: var(--ink);
    width: 100%;
  }
  .looking {
    display: grid;
    gap: var(--space-6);
  }
  .empty {
    padding: var(--space-8);
    color: var(--on-stock);
  }
  .empty p {
    max-width: 22em;
  }
  .empty button {
    pointer-events: auto;
  }
  @media (max-width: 760px) {
    .empty {
      gap: var(--space-5);
      font-size: var(--type-text);
    }
    .empty p {
      max-width: 11.5em;
    }
    .bench {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: auto auto auto;
      grid-template-areas: 'table' 'side' 'graph';
    }
    .table {
      grid-template-rows: max(50cqh, 220px) auto;
      height: auto;
      min-height: 0;
    }
    .light {
      grid-template-rows: minmax(0, 1fr) auto auto;
    }
    .changed {
      position: static;
      max-width: none;
      margin: 0 var(--space-4);
    }
    .under {
      position: static;
      padding: 0 var(--space-2);
      justify-content: end;
      pointer-events: auto;
    }
    .readout {
      position: absolute;
      left: 8px;
      top: 8px;
      font-size: var(--type-fine);
    }
    .readout.idle {
      display: none;
    }
    bench-place-card {
      /* Below where one is on the sheet. */
      top: var(--space-10);
      max-height: none;
    }
    .looks button {
      font-size: var(--type-small);
    }
    .side {
      position: static;
      height: auto;
      border-left: 0;
      border-top: 1px solid var(--line);
    }
  }
`;
