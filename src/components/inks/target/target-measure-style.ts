import { css } from 'lit';

export const measureStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 18px;
    padding-top: 10px;
  }
  .entry {
    display: flex;
    flex-wrap: wrap;
    gap: 20px 36px;
    align-items: start;
  }
  .rows {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    flex: 3 1 440px;
    min-width: 0;
  }
  .file {
    display: grid;
    gap: 8px;
    flex: 1 1 240px;
    min-width: 0;
  }
  .words {
    max-width: 62ch;
  }
  .file > button {
    justify-self: start;
  }
  .rows section {
    border-bottom: 1px solid var(--line);
  }
  .head {
    width: 100%;
    justify-content: start;
    gap: 12px;
    padding-left: 0;
  }
  .head:hover:not(:disabled) {
    border-color: transparent;
    text-decoration: underline;
    text-underline-offset: 4px;
  }
  .head::before {
    content: '';
    width: 7px;
    height: 7px;
    margin: 0 4px 0 2px;
    flex: none;
    border: solid var(--ink-soft);
    border-width: 0 1.5px 1.5px 0;
    transform: rotate(-45deg);
  }
  .head[aria-expanded='true']::before {
    transform: rotate(45deg) translate(-1px, -1px);
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(250px, 1fr));
    gap: 10px 24px;
    align-items: start;
    padding: 4px 0 18px;
  }
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto 52px;
    gap: 2px 10px;
    align-items: end;
  }
  .field label {
    display: grid;
    gap: 3px;
  }
  .name {
    font-size: 13px;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .field input {
    width: 100%;
    min-width: 0;
  }
  .field input[aria-invalid] {
    border-color: var(--accent);
  }
  .far {
    padding-bottom: 8px;
    white-space: nowrap;
  }
  .chips {
    display: flex;
    height: 36px;
  }
  .chips .swatch {
    width: 22px;
    box-shadow: 0 0 0 1px color-mix(in srgb, var(--ink) 18%, transparent);
  }
  @media (pointer: coarse) {
    .chips {
      height: var(--touch);
    }
    .far {
      padding-bottom: 12px;
    }
  }
  .problem {
    color: var(--accent);
    overflow-wrap: anywhere;
  }
  .field .problem {
    grid-column: 1 / -1;
  }
  .found {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 14px;
    padding-top: 18px;
    border-top: 1px solid var(--line);
  }
  .found summary {
    cursor: pointer;
    width: fit-content;
    min-height: 32px;
    align-content: center;
  }
  .scroll {
    max-height: 320px;
    overflow: auto;
  }
  .found table {
    border-collapse: collapse;
    font-size: 13px;
  }
  .found th,
  .found td {
    padding: 3px 20px 3px 0;
    text-align: left;
    font-weight: 400;
  }
  .found td {
    text-align: right;
  }
`;
