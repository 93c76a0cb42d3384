import { css } from 'lit';

/** The press mode: read at arm's length, touched with wet hands. */
export const logPressStyle = css`
  dialog {
    position: fixed;
    inset: 0;
    width: 100vw;
    max-width: none;
    height: 100dvh;
    max-height: none;
    margin: 0;
    padding: 0;
    border: 0;
    background: var(--wall);
    color: var(--ink);
    overflow-y: auto;
    overscroll-behavior: contain;
  }
  .face {
    display: grid;
    grid-template-columns: minmax(250px, 320px) minmax(0, 1fr);
    grid-template-rows: auto auto 1fr;
    gap: 16px 32px;
    min-height: 100%;
    padding: 16px 24px 24px;
  }
  header {
    grid-column: 1 / -1;
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 14px;
  }
  header h2 {
    margin-right: auto;
    font-size: 26px;
  }
  header button {
    min-height: 52px;
    padding: 4px 20px;
  }
  .frame {
    display: grid;
    gap: 6px;
    align-content: start;
  }
  .screen {
    font-size: 38px;
    font-weight: 700;
    line-height: 1.1;
    letter-spacing: -0.02em;
  }
  .ink {
    display: flex;
    align-items: center;
    gap: 12px;
    font-size: 26px;
    font-weight: 600;
  }
  .ink ps-ink-chip {
    width: 44px;
    flex: none;
  }
  .lay-words {
    font-size: 19px;
  }
  .strokes {
    font-size: 19px;
    font-weight: 650;
  }
  .lay {
    width: min(100%, 170px);
    margin: 4px 0;
  }
  figure {
    margin: 6px 0 0;
  }
  figure .print {
    display: block;
    max-width: 100%;
    max-height: 27vh;
    margin: 0;
    background: #fffdf9;
    box-shadow: var(--shadow);
  }
  figure div.print {
    width: 200px;
  }
  figcaption {
    margin-top: 6px;
  }
  .take {
    grid-column: 2;
    grid-row: 2 / 4;
    display: grid;
    gap: 18px;
    align-content: start;
    min-width: 0;
  }
  .take h3 {
    margin-bottom: 8px;
    font-size: 19px;
  }
  .sheets {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(128px, 1fr));
    gap: 12px;
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
    font-size: 34px;
    font-weight: 700;
    border-bottom: 0;
    border-radius: 3px 3px 0 0;
    touch-action: manipulation;
  }
  .tick[aria-checked='true'] {
    background: var(--ink);
    border-color: var(--ink);
    color: var(--sheet);
  }
  .tick .mark {
    font-size: 26px;
  }
  .tick:disabled {
    opacity: 1;
    background: none;
    color: var(--ink-soft);
    font-size: 19px;
    font-weight: 400;
    text-decoration: line-through;
  }
  .more {
    min-width: 0;
    padding: 4px;
    min-height: 46px;
    border-radius: 0 0 3px 3px;
  }
  .all {
    min-height: 60px;
    margin-top: 12px;
    padding: 4px 26px;
    font-size: 19px;
  }
  .wet {
    font-size: 17px;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }
  .done {
    padding: 12px 16px;
    border-left: 4px solid var(--accent);
    background: var(--table);
    font-size: 19px;
    font-weight: 600;
  }
  @media (max-width: 760px) {
    .face {
      grid-template-columns: minmax(0, 1fr);
      grid-template-rows: none;
      align-content: start;
      padding: 12px 14px 24px;
    }
    header h2 {
      flex: 1 1 100%;
      font-size: 22px;
    }
    header button {
      flex: 1;
      padding: 4px 8px;
    }
    .frame {
      grid-template-columns: minmax(0, 1fr) 110px;
      gap: 2px 12px;
    }
    .frame > * {
      grid-column: 1;
    }
    .frame .lay {
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
      font-size: 30px;
    }
    .ink {
      font-size: 21px;
    }
    .sheets {
      grid-template-columns: repeat(auto-fill, minmax(104px, 1fr));
    }
  }
`;
