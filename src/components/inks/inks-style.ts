import { css } from 'lit';

export const inksStyles = css`
  .left {
    gap: 44px;
  }
  header {
    margin-bottom: 14px;
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
  @media (max-width: 999px) {
    header.row {
      gap: 8px;
    }
    header.row button {
      padding: 4px 10px;
    }
    .left {
      gap: 34px;
    }
    .cards {
      grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
      gap: 20px 16px;
    }
  }
`;
