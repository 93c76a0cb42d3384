import { css } from 'lit';
import { closeStackHost } from '../../ui/layout-style.ts';
import { markStyles } from '../overprint/marked-swatch.ts';

export const letdownStyles = css`
  ${markStyles}
  ${closeStackHost}
  .ladder {
    display: grid;
    grid-template-columns: repeat(7, minmax(0, 1fr));
    background: var(--paper);
    box-shadow: var(--shadow);
    padding: var(--space-5) var(--space-4) 0;
    color: var(--on-stock);
  }
  .ladder button {
    display: grid;
    gap: var(--space-1);
    min-height: 0;
    padding: 0 var(--space-2) var(--space-2);
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
    padding: var(--space-1) 0;
    background: var(--stock);
    forced-color-adjust: none;
  }
  .row {
    align-items: end;
  }
  .back {
    margin-left: calc(-1 * var(--space-4));
  }
  .found {
    display: grid;
    gap: var(--space-4);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .found li {
    display: grid;
    grid-template-columns: 84px minmax(0, 1fr) auto;
    gap: var(--space-6);
    align-items: center;
  }
  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    height: 40px;
    box-shadow: var(--edge);
  }
`;
