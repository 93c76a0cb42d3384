import { css } from 'lit';

/** Tiles that are ticked with wet hands; each keeps its size and place whatever is written on it. */
export const sheetTilesStyle = css`
  :host {
    display: grid;
    gap: var(--space-7);
    align-content: start;
    min-width: 0;
  }
  /* Recipes with a sheet or two stand beside each other. */
  .sections {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-7) var(--space-6);
  }
  .sections section {
    flex: 1 1 calc(var(--tiles) * 150px);
    max-width: calc(var(--tiles) * 220px);
    min-width: min(100%, 170px);
  }
  h3 {
    margin-bottom: var(--space-4);
    font-size: var(--type-head);
  }
  .sheets {
    position: relative;
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(136px, 1fr));
    gap: var(--space-6);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .sheets li {
    --touched: 142px;
    display: block;
    min-width: 0;
  }
  .sheets li > button {
    display: flex;
    width: 100%;
  }
  .tick {
    position: relative;
    flex-direction: column;
    gap: 0;
    padding: 0 var(--space-1);
    height: 92px;
    font-size: var(--type-display);
    font-weight: 700;
    line-height: 1.1;
    border-bottom: 0;
    border-radius: var(--radius) var(--radius) 0 0;
    touch-action: manipulation;
  }
  .tick .use {
    position: absolute;
    top: 9px;
    left: 11px;
    font-size: var(--type-small);
    font-weight: 600;
    letter-spacing: 0;
    line-height: 1.2;
  }
  .tick.proof,
  .tick.over {
    padding-top: 18px;
  }
  /* A proof has a second edge, an over a corner cut off: told apart without a colour, also when they are ticked. */
  .tick.proof {
    outline: 1.5px solid currentColor;
    outline-offset: -6px;
  }
  .tick.over {
    clip-path: polygon(0 0, calc(100% - 22px) 0, 100% 22px, 100% 100%, 0 100%);
    background-image: linear-gradient(to bottom left, var(--ink-soft) 16px, transparent 17px);
  }
  .tick[aria-checked='true'] {
    background: var(--ink);
    border-color: var(--ink);
    color: var(--sheet);
  }
  .tick .mark {
    display: inline-block;
    min-width: 0;
    margin-left: var(--space-3);
    font-size: var(--type-title);
  }
  .tick small {
    min-height: 18px;
    overflow: hidden;
    max-width: 100%;
    font-size: var(--type-small);
    font-weight: 600;
    line-height: 18px;
    letter-spacing: 0;
    white-space: nowrap;
    text-overflow: ellipsis;
  }
  /* What speaks against a tick is read to its end. */
  .tick small.warn {
    max-height: 30px;
    line-height: 15px;
    white-space: normal;
    color: var(--accent);
  }
  .tick.proof small.warn {
    margin-bottom: 5px;
    line-height: 13px;
  }
  .tick:disabled {
    opacity: 1;
    background: none;
    color: var(--ink-soft);
    font-size: var(--type-head);
    font-weight: 400;
    text-decoration: line-through;
  }
  /* The number is struck out, not what became of it. */
  .tick:disabled small {
    display: inline-block;
  }
  .test-row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-4);
  }
  .torn {
    min-height: 60px;
    touch-action: manipulation;
  }
  .test {
    flex: 1 1 320px;
    display: flex;
    flex-wrap: wrap;
    justify-content: start;
    gap: 0 var(--space-5);
    min-height: 60px;
    padding: var(--space-2) var(--space-6);
    font-size: var(--type-head);
    text-align: left;
    touch-action: manipulation;
  }
  .test .mark {
    min-width: 1ch;
    margin-left: auto;
  }
  .test[aria-checked='true'] {
    background: var(--ink);
    border-color: var(--ink);
    color: var(--sheet);
  }
  .more {
    min-width: 0;
    padding: 0 var(--space-2);
    height: 46px;
    font-size: var(--type-small);
    line-height: 1.2;
    border-radius: 0 0 var(--radius) var(--radius);
    touch-action: manipulation;
  }
  .all {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-6);
    margin-top: var(--space-6);
    --touched: 70px;
  }
  .all press-tick-question {
    top: 100%;
  }
  .all button {
    min-height: 60px;
    padding: var(--space-2) var(--space-8);
    font-size: var(--type-head);
    touch-action: manipulation;
  }
  /* Wide enough for whatever it says: its neighbour must not move. */
  .all button[data-where] {
    min-width: 250px;
  }
  .wet {
    font-size: var(--type-lead);
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }
  /* With many sheets each row counts: what is said of all stands beside their name. */
  @media (min-width: 1000px) {
    .many {
      display: grid;
      grid-template-columns: minmax(0, 1fr) auto;
      align-items: center;
      gap: var(--space-4) var(--space-6);
    }
    .many h3 {
      margin: 0;
    }
    .many .all {
      --touched: 56px;
      grid-area: 1 / 2;
      margin: 0;
    }
    .many .all button {
      min-height: 48px;
      font-size: var(--type-lead);
    }
    .many .sheets {
      grid-area: 2 / 1 / 3 / 3;
    }
  }
  @media (max-width: 760px) {
    .sheets {
      grid-template-columns: repeat(auto-fill, minmax(106px, 1fr));
      gap: var(--space-5);
    }
    .sections {
      gap: var(--space-7) var(--space-5);
    }
    .sections section {
      flex: 0 0 auto;
      width: min(100%, calc(var(--tiles) * 106px + (var(--tiles) - 1) * var(--space-5)));
      min-width: 0;
    }
    .sections .many,
    .sections section:has(.all) {
      width: 100%;
    }
    /* Alone it has room for its name in a line. */
    .sections section:only-child {
      width: 100%;
      max-width: none;
    }
    /* A time is read to its end too. */
    .tick small {
      max-height: 30px;
      line-height: 15px;
      letter-spacing: -0.02em;
      white-space: normal;
    }
    .tick.proof small,
    .tick.over small {
      line-height: 13px;
    }
    .all button,
    .all button[data-where] {
      flex: 1 1 100%;
      padding: var(--space-2) var(--space-5);
    }
  }
`;
