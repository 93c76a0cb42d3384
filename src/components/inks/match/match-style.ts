import { css } from 'lit';
import { markStyles } from '../overprint/marked-swatch.ts';

export const matchStyles = css`
  ${markStyles}
  :host {
    display: grid;
    gap: 18px;
    align-content: start;
  }
  .part {
    display: grid;
    gap: 10px;
  }
  .choices {
    gap: 6px;
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: 10px 18px;
    align-items: end;
  }
  .field {
    display: grid;
    gap: 3px;
    justify-items: start;
    min-width: 0;
  }
  .field span {
    font-size: 13px;
    color: var(--ink-soft);
  }
  .problem {
    color: var(--accent);
  }
  progress {
    width: 120px;
    accent-color: var(--accent);
  }
  .target {
    height: 40px;
    box-shadow: 0 0 0 1px color-mix(in srgb, var(--ink) 12%, transparent);
  }
  .answers {
    display: grid;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .answers li {
    display: grid;
    grid-template-columns: 104px minmax(0, 1fr);
    gap: 6px 16px;
    padding: 14px 0;
    border-top: 1px solid var(--line);
  }
  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    height: 64px;
    box-shadow: 0 0 0 1px color-mix(in srgb, var(--ink) 12%, transparent);
  }
  .under {
    display: grid;
    grid-template-columns: 1fr 1fr;
    font-size: 12px;
    color: var(--ink-soft);
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: 14px;
  }
  th,
  td {
    padding: 1px 0 1px 10px;
    text-align: right;
    font-weight: 400;
    white-space: nowrap;
  }
  th:first-child {
    text-align: left;
    padding-left: 0;
    white-space: normal;
    overflow-wrap: anywhere;
  }
  thead th {
    font-size: 12px;
    color: var(--ink-soft);
  }
  .keep {
    justify-self: start;
    margin-top: 6px;
  }
`;
