import { css } from 'lit';
import { cardGrid } from '../ui/layout-style.ts';

export const inksStyles = css`
  ${cardGrid}
  .left {
    gap: var(--space-10);
  }
  header {
    margin-bottom: var(--space-6);
  }
  .words {
    max-width: 62ch;
    margin: var(--space-1) 0 var(--space-6);
  }
  .cards {
    --card: 190px;
    gap: var(--space-9) var(--space-8);
  }
  .cards button {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    justify-content: stretch;
    gap: var(--space-4);
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
    gap: 0 var(--space-5);
    align-items: baseline;
    padding-bottom: var(--space-2);
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
    font-size: var(--type-lead);
  }
  .stocks {
    --card: 150px;
    gap: var(--space-3) var(--space-8);
  }
  .stocks button {
    display: grid;
    grid-template-columns: 34px minmax(0, 1fr);
    justify-content: stretch;
    gap: var(--space-5);
    width: 100%;
    padding: var(--space-1) 0;
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
    box-shadow: var(--edge);
  }
  .relative {
    display: flex;
    gap: var(--space-3);
  }
  .relative button {
    font-size: var(--type-small);
  }
  .gain {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-4) var(--space-9);
    align-items: end;
    margin-top: var(--space-5);
  }
  .gain .words {
    margin: 0 0 var(--space-2);
    flex: 1 1 260px;
  }
  paper-form {
    margin-top: var(--space-6);
  }
  @media (forced-colors: active) {
    .label,
    .stocks button {
      border-color: Canvas;
    }
  }
  @media (max-width: 999px) {
    header.row {
      gap: var(--space-4);
    }
    header.row button {
      padding: var(--space-2) var(--space-5);
    }
    .left {
      gap: var(--space-9);
    }
    .cards {
      --card: min(150px, 44%);
      gap: var(--space-8) var(--space-7);
    }
  }
`;
