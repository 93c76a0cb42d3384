import { css } from 'lit';

export const lessonStyles = css`
  :host {
    display: block;
  }
  .room {
    max-width: 1640px;
    margin: 0 auto;
    padding: 36px 40px 80px;
  }
  .lead {
    margin: 4px 0 14px;
    max-width: 66ch;
  }
  .stale {
    margin-top: 12px;
  }
  .result {
    margin-top: 44px;
    scroll-margin-top: 16px;
  }
  .headline {
    font-size: 26px;
    line-height: 1.2;
    font-weight: 650;
    letter-spacing: -0.02em;
    text-wrap: balance;
  }
  .why {
    max-width: 72ch;
    text-wrap: pretty;
    margin-top: 8px;
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 12px 32px;
    margin: 20px 0 28px;
  }
  .modes {
    display: flex;
  }
  .modes button + button {
    margin-left: -1px;
  }
  .threshold input {
    width: 180px;
  }
  .where ps-number {
    width: 8.6em;
  }
  .threshold output {
    min-width: 2.4em;
    font-weight: 600;
  }
  .columns {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(340px, 430px);
    gap: 40px 56px;
    align-items: start;
  }
  .behind ps-contact-sheet {
    opacity: 0.6;
  }
  aside {
    position: sticky;
    top: 24px;
  }
  .move {
    display: grid;
    gap: 14px;
  }
  .count-here {
    display: none;
    font-weight: 650;
    font-size: 17px;
  }
  .where {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 10px 18px;
  }
  .chosen {
    display: flex;
    align-items: center;
    gap: 10px;
    font-weight: 600;
  }
  ps-order-graph {
    grid-template-columns: minmax(0, 1fr);
    justify-items: center;
    margin-top: 16px;
    --graph-width: 300px;
  }
  .two {
    margin-top: 64px;
  }
  .empty {
    max-width: 46ch;
    padding: 40px 0;
    font-size: 17px;
  }
  .empty .row {
    margin-top: 18px;
  }
  @media (max-width: 1180px) {
    .columns {
      grid-template-columns: minmax(0, 1fr) minmax(300px, 36vw);
      gap: 32px;
    }
    ps-contact-sheet {
      --print: 150px;
    }
  }
  @media (max-width: 900px) {
    .room {
      padding: 28px 28px 64px;
    }
    .columns {
      grid-template-columns: minmax(0, 1fr);
    }
    aside {
      display: contents;
    }
    .move {
      order: -1;
      max-width: 460px;
    }
    .count-here {
      display: block;
    }
    ps-order-graph {
      order: 1;
    }
  }
  @media (max-width: 760px) {
    .room {
      padding: 20px 16px 48px;
    }
    .headline {
      font-size: 21px;
    }
    .threshold {
      flex-wrap: wrap;
    }
    ps-contact-sheet {
      --print: 140px;
    }
  }
`;
