import { css } from 'lit';
import { markStyles } from '../overprint/marked-swatch.ts';

export const letdownStyles = css`
  ${markStyles}
  :host {
    display: grid;
    gap: 12px;
  }
  .ladder {
    display: grid;
    grid-template-columns: repeat(7, minmax(0, 1fr));
    background: var(--paper);
    box-shadow: var(--shadow);
    padding: 10px 8px 0;
    color: #1d1b18;
  }
  .ladder button {
    display: grid;
    gap: 2px;
    min-height: 0;
    padding: 0 3px 4px;
    border: 0;
    border-bottom: 3px solid transparent;
    border-radius: 0;
    background: none;
    justify-content: stretch;
    text-align: center;
    color: inherit;
  }
  .ladder button[aria-pressed='true'] {
    box-shadow: none;
    border-bottom-color: var(--accent);
  }
  .ladder .sheet {
    display: grid;
    grid-template-rows: 34px 34px;
  }
  .ladder .small {
    padding: 2px 0;
    background: #fffdf9;
  }
  .row {
    align-items: end;
  }
  .back {
    margin-left: -8px;
  }
  .found {
    display: grid;
    gap: 8px;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .found li {
    display: grid;
    grid-template-columns: 84px minmax(0, 1fr) auto;
    gap: 14px;
    align-items: center;
  }
  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    height: 40px;
    box-shadow: 0 0 0 1px color-mix(in srgb, var(--ink) 12%, transparent);
  }
`;
