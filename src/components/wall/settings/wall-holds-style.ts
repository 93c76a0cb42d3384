import { css } from 'lit';

/** How the stack that a wall starts from is listed. */
export const wallHoldsStyle = css`
  :host {
    display: block;
  }
  ol {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  li {
    padding: var(--space-2) 0;
  }
  .pull {
    display: grid;
    grid-template-columns: 1.9em 22px minmax(0, 1fr) fit-content(128px);
    align-items: center;
    gap: var(--space-4);
  }
  .ink {
    min-height: 32px;
    padding: 0;
    border: 0;
    background: none;
  }
  .ink[aria-pressed='true'] {
    box-shadow: none;
  }
  .ink[aria-pressed='true'] .chip {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .number {
    color: var(--ink-soft);
    text-align: right;
  }
  .name {
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  li[data-out] .name {
    text-decoration: line-through;
    color: var(--ink-soft);
  }
  select {
    field-sizing: content;
    min-width: 0;
    border-color: transparent;
    background: none;
    color: var(--ink-soft);
    font-size: var(--type-small);
    padding: var(--space-2) var(--space-1);
    text-overflow: ellipsis;
  }
  select:hover {
    border-color: var(--line);
  }
  select[data-held] {
    color: var(--ink);
    font-weight: 600;
  }
  select[data-bad] {
    border-color: var(--accent);
  }
  .more {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--space-4);
    padding-left: calc(1.9em + 38px);
    font-size: var(--type-small);
    font-weight: 600;
  }
  .more button {
    min-height: 28px;
    padding: 0 var(--space-3);
    font-size: var(--type-small);
  }
  .note {
    margin: var(--space-4) 0;
    color: var(--ink-soft);
    font-size: var(--type-small);
  }
  .problem {
    border-left: 3px solid var(--accent);
    padding: var(--space-2) 0 var(--space-2) var(--space-5);
    margin: var(--space-4) 0;
    font-size: var(--type-label);
  }
`;
