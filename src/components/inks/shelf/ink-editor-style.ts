import { css } from 'lit';

export const editorStyles = css`
  :host {
    display: grid;
    gap: 14px;
    align-content: start;
  }
  .name {
    display: block;
  }
  header input[type='text'] {
    width: 100%;
    padding: 2px 0;
    font-size: 26px;
    font-weight: 700;
    letter-spacing: -0.02em;
    background: none;
    border-color: transparent;
    border-bottom-color: var(--line);
    border-radius: 0;
  }
  header input[type='text']:hover,
  header input[type='text']:focus {
    border-bottom-color: var(--ink);
  }
  .strokes {
    margin: 0;
  }
  .strip {
    display: grid;
    grid-template-columns: repeat(3, 1fr);
    gap: 5%;
    padding: 14px 7% 12px;
    height: 148px;
    background: linear-gradient(var(--card-white) 0 58%, var(--card-black) 58%);
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
    padding: 6px 7% 0;
    font-size: 13px;
    color: var(--ink-soft);
  }
  section {
    display: grid;
    gap: 14px;
    padding-top: 14px;
    border-top: 1px solid var(--line);
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: 10px 24px;
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
    padding-top: 10px;
    border-top: 1px solid var(--line);
  }
  .actions .quiet:first-child {
    margin-left: -8px;
  }
`;
