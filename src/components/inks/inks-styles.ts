import { css } from 'lit';

export const inksStyles = css`
  .room {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    min-height: 100%;
  }
  .left {
    display: grid;
    gap: 44px;
    align-content: start;
    padding: 28px 32px 64px;
    min-width: 0;
  }
  header {
    margin-bottom: 14px;
  }
  header h2 + .soft {
    margin-left: -6px;
  }
  .fill {
    flex: 1;
  }
  .words {
    max-width: 62ch;
    margin: 2px 0 12px;
  }
  .cards {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(190px, 1fr));
    gap: 26px 22px;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .cards button {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    justify-content: stretch;
    gap: 8px;
    width: 100%;
    padding: 0;
    border: 0;
    background: none;
    text-align: left;
  }
  .cards button[aria-pressed='true'] {
    box-shadow: none;
  }
  .label {
    display: flex;
    flex-wrap: wrap;
    gap: 0 10px;
    align-items: baseline;
    padding-bottom: 3px;
    border-bottom: 2px solid transparent;
  }
  .cards button:hover .label {
    border-color: var(--line);
  }
  .cards button[aria-pressed='true'] .label {
    border-color: var(--accent);
  }
  .ink-name {
    font-weight: 650;
    font-size: 16px;
  }
  .stocks {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
    gap: 6px 22px;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .stocks button {
    display: grid;
    grid-template-columns: 34px minmax(0, 1fr);
    justify-content: stretch;
    gap: 10px;
    width: 100%;
    padding: 2px 0;
    border: 0;
    border-bottom: 2px solid transparent;
    border-radius: 0;
    background: none;
    text-align: left;
  }
  .stocks button:hover {
    border-color: var(--line);
  }
  .stocks button[aria-pressed='true'] {
    box-shadow: none;
    border-color: var(--accent);
  }
  .stocks .swatch {
    height: 24px;
    box-shadow: 0 0 0 1px color-mix(in srgb, var(--ink) 14%, transparent);
  }
  .relative {
    display: flex;
    gap: 6px;
  }
  .relative button {
    font-size: 13px;
  }
  .gain {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 28px;
    align-items: end;
    margin-top: 10px;
  }
  .gain .words {
    margin: 0 0 4px;
    flex: 1 1 260px;
  }
  paper-form {
    margin-top: 12px;
  }
  .side {
    min-width: 0;
    padding: 20px 24px 40px;
    background: var(--table);
  }
  @media (min-width: 1000px) {
    .room {
      height: 100%;
      overflow: hidden;
    }
    .room.open {
      grid-template-columns: minmax(0, 1fr) 420px;
    }
    .left,
    .side {
      overflow: auto;
    }
    .side {
      border-left: 1px solid var(--line);
    }
    .back {
      display: none;
    }
  }
  @media (max-width: 999px) {
    .room.open .left {
      display: none;
    }
    header.row {
      gap: 8px;
    }
    header.row button {
      padding: 4px 10px;
    }
    .left {
      gap: 34px;
      padding: 18px 16px 40px;
    }
    .cards {
      grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
      gap: 20px 16px;
    }
    .side {
      padding: 8px 16px 40px;
    }
    .back {
      margin: 0 0 8px -8px;
    }
  }
`;
