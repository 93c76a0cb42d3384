import { css } from 'lit';

/** Buttons, fields and words as every room shows them. */
export const controls = css`
  :host {
    box-sizing: border-box;
  }
  :host([hidden]) {
    display: none !important;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h1,
  h2,
  h3,
  p {
    margin: 0;
  }
  h1 {
    font-size: var(--type-title);
  }
  h2 {
    font-size: var(--type-head);
    font-weight: 650;
    letter-spacing: -0.01em;
  }
  h3 {
    font-size: var(--type-text);
    font-weight: 650;
  }
  fieldset {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .soft {
    color: var(--ink-soft);
  }
  .small {
    font-size: var(--type-small);
  }
  button,
  select,
  input,
  textarea {
    font: inherit;
    color: inherit;
  }
  button,
  .button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    gap: var(--space-3);
    min-height: var(--control, 36px);
    padding: var(--space-2) var(--space-6);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    background: var(--sheet);
    cursor: pointer;
  }
  button:hover:not(:disabled),
  .button:hover {
    border-color: var(--ink);
  }
  button:disabled {
    opacity: 0.45;
    cursor: default;
  }
  button.main {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--on-accent);
    font-weight: 600;
  }
  button.quiet {
    background: none;
    border-color: transparent;
    padding: var(--space-2) var(--space-4);
  }
  button[aria-pressed='true'] {
    border-color: var(--accent);
    box-shadow: var(--edge-pressed);
  }
  input:not([type='checkbox'], [type='radio'], [type='range'], [type='color'], [type='file']),
  select,
  textarea {
    min-height: var(--control, 36px);
    padding: var(--space-2) var(--space-4);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    background: var(--sheet);
    max-width: 100%;
  }
  input[type='number'] {
    width: 5.5em;
    text-align: right;
  }
  input[type='checkbox'],
  input[type='radio'] {
    width: 18px;
    height: 18px;
    margin: 0;
    accent-color: var(--accent);
  }
  input[type='range'] {
    accent-color: var(--accent);
  }
  label {
    display: inline-flex;
    align-items: center;
    gap: var(--space-4);
  }
  :focus-visible {
    outline: 2px solid var(--accent);
    outline-offset: 2px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-4) var(--space-6);
  }
  .visually-hidden {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  /* What carries a colour keeps it where a person's own few colours replace the page's. */
  [style*='background'] {
    forced-color-adjust: none;
  }
  @media (forced-colors: active) {
    [aria-pressed='true'],
    [aria-checked='true'],
    [aria-selected='true'] {
      outline: 3px solid Highlight;
      outline-offset: -3px;
    }
    :focus-visible {
      outline: 3px double CanvasText;
      outline-offset: 2px;
    }
  }
  @media (pointer: coarse) {
    button,
    .button,
    select,
    input:not([type='checkbox'], [type='radio'], [type='range'], [type='color'], [type='file']) {
      min-height: var(--touch);
    }
  }
`;
