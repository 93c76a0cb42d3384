import { css } from 'lit';

export const measureStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-7);
    padding-top: var(--space-5);
  }
  .entry {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-8) var(--space-10);
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
    gap: var(--space-4);
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
    gap: var(--space-6);
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
    margin: 0 var(--space-2) 0 var(--space-1);
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
    gap: var(--space-5) var(--space-8);
    align-items: start;
    padding: var(--space-2) 0 var(--space-7);
  }
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto 52px;
    gap: var(--space-1) var(--space-5);
    align-items: end;
  }
  .field label {
    display: grid;
    gap: var(--space-2);
  }
  .name {
    font-size: var(--type-small);
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
    padding-bottom: var(--space-4);
    white-space: nowrap;
  }
  .chips {
    display: flex;
    height: 36px;
  }
  .chips .swatch {
    width: 22px;
    box-shadow: var(--edge);
  }
  @media (pointer: coarse) {
    .chips {
      height: var(--touch);
    }
    .far {
      padding-bottom: var(--space-6);
    }
  }
  .problem {
    color: var(--accent);
    overflow-wrap: anywhere;
  }
  .field .problem {
    grid-column: 1 / -1;
  }
`;
