import { css } from 'lit';

/** The press mode: read at arm's length, touched with wet hands. */
export const logPressStyle = css`
  dialog {
    position: fixed;
    inset: 0;
    overflow-y: auto;
    overscroll-behavior: contain;
  }
  .face {
    display: grid;
    grid-template-columns: minmax(250px, 320px) minmax(0, 1fr);
    grid-template-rows: auto auto 1fr;
    gap: var(--space-7) var(--space-9);
    min-height: 100%;
    padding: var(--space-7) var(--space-8) var(--space-8);
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
  header button {
    min-height: 52px;
    padding: var(--space-2) var(--space-8);
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
  .offset {
    font-size: var(--type-head);
  }
  .strokes {
    font-size: var(--type-head);
    font-weight: 650;
  }
  .offset-diagram {
    width: min(100%, 170px);
    margin: var(--space-2) 0;
  }
  figure {
    margin: var(--space-3) 0 0;
  }
  figure .print {
    display: block;
    max-width: 100%;
    max-height: 27vh;
    margin: 0;
    background: var(--stock);
    box-shadow: var(--shadow);
  }
  figure div.print {
    width: 200px;
  }
  figcaption {
    margin-top: var(--space-3);
  }
  .take {
    grid-column: 2;
    grid-row: 2 / 4;
    display: grid;
    gap: var(--space-7);
    align-content: start;
    min-width: 0;
  }
  .take h3 {
    margin-bottom: var(--space-4);
    font-size: var(--type-head);
  }
  .sheets {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(128px, 1fr));
    gap: var(--space-6);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .sheets li {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
  }
  .tick {
    min-height: 84px;
    font-size: var(--type-display);
    font-weight: 700;
    border-bottom: 0;
    border-radius: var(--radius) var(--radius) 0 0;
    touch-action: manipulation;
  }
  .tick[aria-checked='true'] {
    background: var(--ink);
    border-color: var(--ink);
    color: var(--sheet);
  }
  .tick .mark {
    font-size: var(--type-title);
  }
  .tick:disabled {
    opacity: 1;
    background: none;
    color: var(--ink-soft);
    font-size: var(--type-head);
    font-weight: 400;
    text-decoration: line-through;
  }
  .more {
    min-width: 0;
    padding: var(--space-2);
    min-height: 46px;
    border-radius: 0 0 var(--radius) var(--radius);
  }
  .all {
    min-height: 60px;
    margin-top: var(--space-6);
    padding: var(--space-2) var(--space-9);
    font-size: var(--type-head);
  }
  .wet {
    font-size: var(--type-lead);
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }
  .done {
    padding: var(--space-6) var(--space-7);
    border-left: 4px solid var(--accent);
    background: var(--table);
    font-size: var(--type-head);
    font-weight: 600;
  }
  @media (max-width: 760px) {
    .face {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: none;
      align-content: start;
      padding: var(--space-6) var(--space-6) var(--space-8);
    }
    header h2 {
      flex: 1 1 100%;
      font-size: var(--type-head);
    }
    header button {
      flex: 1;
      padding: var(--space-2) var(--space-4);
    }
    .frame {
      grid-template-columns: minmax(0, 1fr) 110px;
      gap: var(--space-1) var(--space-6);
    }
    .frame > * {
      grid-column: 1;
    }
    .frame .offset-diagram {
      grid-column: 2;
      grid-row: 1 / 6;
    }
    /* The sheets to tick come before the picture. */
    .take {
      grid-column: 1;
      grid-row: auto;
      order: 1;
    }
    figure {
      order: 2;
    }
    .screen {
      font-size: var(--type-title);
    }
    .ink {
      font-size: var(--type-head);
    }
    .sheets {
      grid-template-columns: repeat(auto-fill, minmax(104px, 1fr));
    }
  }
`;
