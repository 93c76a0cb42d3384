import { css } from 'lit';
import { stackHost } from '../../ui/layout-style.ts';
import { markStyles } from '../overprint/marked-swatch.ts';

export const matchStyles = css`
  ${markStyles}
  ${stackHost}
  .part {
    display: grid;
    gap: var(--space-5);
  }
  .choices {
    gap: var(--space-3);
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-5) var(--space-7);
    align-items: end;
  }
  .field {
    display: grid;
    gap: var(--space-2);
    justify-items: start;
    min-width: 0;
  }
  .field span {
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .problem {
    color: var(--accent);
  }
  .target {
    height: 40px;
    box-shadow: var(--edge);
  }
  .answers {
    display: grid;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .answers li {
    display: grid;
    grid-template-columns: 184px minmax(0, 1fr);
    gap: var(--space-3) var(--space-7);
    padding: var(--space-6) 0;
    border-top: 1px solid var(--line);
  }
  .pair {
    display: grid;
    grid-template-columns: repeat(4, 1fr);
    height: 64px;
    box-shadow: var(--edge);
  }
  .under {
    display: grid;
    grid-template-columns: repeat(4, 1fr);
    font-size: var(--type-fine);
    color: var(--ink-soft);
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: var(--type-label);
  }
  th,
  td {
    padding: 1px 0 1px var(--space-5);
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
    font-size: var(--type-fine);
    color: var(--ink-soft);
  }
  .keep {
    justify-self: start;
    margin-top: var(--space-3);
  }
`;
