import { css } from 'lit';
import { nameInput, closeStackHost } from '../../ui/layout-style.ts';

export const editorStyles = css`
  ${closeStackHost}
  ${nameInput}
  .name {
    display: block;
  }
  header input[type='text'] {
    font-size: var(--type-title);
    font-weight: 700;
    letter-spacing: -0.02em;
  }
  .strokes {
    margin: 0;
  }
  .strip {
    display: grid;
    grid-template-columns: repeat(3, 1fr);
    gap: 5%;
    padding: var(--space-6) 7% var(--space-6);
    height: 148px;
    background: linear-gradient(var(--card-white) 0 58%, var(--card-black) 58%);
    forced-color-adjust: none;
    box-shadow: var(--shadow);
  }
  .column {
    display: grid;
    grid-template-rows: 59% 1fr;
  }
  figcaption {
    display: grid;
    grid-template-columns: repeat(3, 1fr);
    gap: 5%;
    padding: var(--space-3) 7% 0;
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  section {
    display: grid;
    gap: var(--space-6);
    padding-top: var(--space-6);
    border-top: 1px solid var(--line);
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-5) var(--space-8);
  }
  .mix {
    width: 100%;
    border-collapse: collapse;
  }
  .mix th,
  .mix td {
    padding: 1px 0;
    font-weight: 400;
    text-align: left;
  }
  .mix td {
    text-align: right;
  }
  .moved {
    color: var(--ink);
  }
  .actions {
    padding-top: var(--space-5);
    border-top: 1px solid var(--line);
  }
  .actions .quiet:first-child {
    margin-left: calc(-1 * var(--space-4));
  }
`;
