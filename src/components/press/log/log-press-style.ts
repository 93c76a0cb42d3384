import { css } from 'lit';
import { screenMadeStyle } from '../plan/screen-made.ts';

/** The press mode: read at arm's length, touched with wet hands. */
export const logPressStyle = css`
  dialog {
    --control: var(--touch);
    --fold-height: var(--touch);
    position: fixed;
    inset: 0;
    overflow-y: auto;
    overscroll-behavior: contain;
    scroll-padding-bottom: 90px;
  }
  .face {
    display: grid;
    grid-template-columns: minmax(250px, 320px) minmax(0, 1fr);
    grid-template-rows: auto 1fr auto;
    gap: var(--space-7) var(--space-9);
    min-height: 100%;
    padding: var(--space-7) var(--space-8) 0;
  }
  header {
    grid-column: 1 / -1;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-4) var(--space-6);
  }
  header h2 {
    margin-right: auto;
    font-size: var(--type-title);
  }
  header h2:has(+ .beds) {
    margin-right: var(--space-4);
  }
  header button {
    min-height: 52px;
    padding: var(--space-2) var(--space-8);
  }
  .beds {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-4);
    margin-right: auto;
  }
  header .beds button {
    padding: var(--space-2) var(--space-6);
    font-variant-numeric: tabular-nums;
  }
  .beds button[aria-pressed='true'] {
    border-color: var(--ink) var(--ink) var(--accent);
    border-bottom-width: 3px;
    font-weight: 650;
  }
  .stale {
    display: flex;
    flex: 1 1 100%;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-3) var(--space-6);
    margin: 0;
    padding: var(--space-4) var(--space-7);
    border-left: 3px solid var(--accent);
    background: var(--table);
    font-weight: 600;
  }
  .frame {
    display: grid;
    gap: var(--space-3);
    align-content: start;
  }
  .screen {
    font-size: var(--type-display);
    font-weight: 700;
    line-height: 1.1;
    letter-spacing: -0.02em;
  }
  .ink {
    display: flex;
    align-items: center;
    gap: var(--space-6);
    font-size: var(--type-title);
    font-weight: 600;
  }
  .ink ps-ink-chip {
    width: 44px;
    flex: none;
  }
  ${screenMadeStyle}
  .offset {
    font-size: var(--type-head);
  }
  .note {
    min-height: 48px;
    justify-self: start;
  }
  .strokes {
    font-size: var(--type-head);
    font-weight: 650;
  }
  .offset-diagram {
    width: min(100%, 230px);
    margin: var(--space-2) 0;
  }
  .pair {
    display: flex;
    gap: var(--space-8);
    min-height: calc(26vh + 50px);
  }
  .pair figure {
    flex: 0 1 auto;
    min-width: 0;
    margin: 0;
  }
  figure .print {
    display: block;
    width: auto;
    max-width: 100%;
    height: 26vh;
    min-height: 170px;
    margin: 0;
    background: var(--stock);
    box-shadow: var(--shadow);
  }
  figcaption {
    max-width: 34ch;
    margin-top: var(--space-3);
  }
  .take {
    grid-column: 2;
    grid-row: 2;
    display: grid;
    gap: var(--space-7);
    align-content: start;
    min-width: 0;
  }
  footer {
    grid-column: 1 / -1;
    position: sticky;
    bottom: 0;
    z-index: 4;
    display: grid;
    grid-template-columns: auto auto minmax(0, 1fr) auto;
    align-items: center;
    gap: var(--space-3) var(--space-8);
    min-height: 76px;
    margin: 0 calc(-1 * var(--space-8));
    padding: var(--space-4) var(--space-8);
    border-top: 1px solid var(--ink);
    background: var(--sheet);
    font-variant-numeric: tabular-nums;
  }
  footer .stands {
    min-width: 11ch;
    font-size: var(--type-lead);
    font-weight: 650;
  }
  footer .late {
    min-width: 10ch;
    font-weight: 600;
  }
  footer button {
    grid-column: 4;
    min-height: 56px;
    min-width: 150px;
  }
  /* What is on the press stays in view beside many sheets. */
  @media (min-width: 761px) and (min-height: 700px) {
    .frame {
      position: sticky;
      top: var(--space-7);
      align-self: start;
    }
  }
  /* Where there is room, the states are read from the other side of the bed. */
  @media (min-width: 1200px) and (min-height: 800px) {
    .pair {
      min-height: calc(37vh + 50px);
    }
    figure .print {
      height: 37vh;
    }
  }
  @media (max-height: 519px) {
    footer {
      position: static;
    }
  }
  @media (max-width: 760px) {
    .face {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: none;
      align-content: start;
      padding: var(--space-6) var(--space-6) 0;
    }
    header h2,
    .beds {
      flex: 1 1 100%;
    }
    header h2 {
      font-size: var(--type-head);
    }
    header button,
    header .beds button {
      flex: 1 1 auto;
      padding: var(--space-2) var(--space-4);
    }
    .frame {
      grid-template-columns: minmax(0, 1fr) 110px;
      gap: var(--space-1) var(--space-6);
    }
    .frame > * {
      grid-column: 1;
    }
    /* What is read in sentences runs under the diagram, over the whole width. */
    .frame > .offset ~ * {
      grid-column: 1 / -1;
    }
    .frame > .offset-diagram {
      grid-column: 2;
      grid-row: 1 / 5;
    }
    /* Too small to be read here, and said in words beside it. */
    .offset-diagram text {
      display: none;
    }
    .take {
      grid-column: 1;
      grid-row: auto;
    }
    /* The sheets to tick come before the pictures. */
    press-sheet-tiles {
      order: -1;
    }
    .pair {
      gap: var(--space-6);
      min-height: 0;
    }
    .pair figure {
      flex: 1 1 0;
    }
    figure .print {
      width: 100%;
      height: auto;
      min-height: 0;
    }
    footer {
      grid-template-columns: minmax(0, 1fr) auto;
      margin: 0 calc(-1 * var(--space-6));
      padding: var(--space-4) var(--space-6);
    }
    footer .late {
      max-width: 46vw;
      text-align: right;
    }
    footer .next {
      grid-column: 1;
    }
    footer .when {
      display: none;
    }
    footer button {
      grid-column: 2;
      min-width: 120px;
    }
    .screen {
      font-size: var(--type-title);
    }
    .ink {
      font-size: var(--type-head);
    }
  }
`;
