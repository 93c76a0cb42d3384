import { css } from 'lit';

export const numberFieldStyle = css`
  label {
    margin-bottom: var(--space-2);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .field {
    display: flex;
    align-items: center;
    gap: var(--space-3);
    width: 100%;
  }
  input {
    width: var(--number-width, 5.2em);
    padding-inline: var(--number-pad, 8px);
    min-width: 0;
    flex: 0 1 auto;
    text-align: right;
  }
  ps-problem {
    margin-top: var(--space-2);
  }
  .steps {
    gap: 0;
  }
  .steps input {
    width: 3em;
    margin: 0 -1px;
    border-radius: 0;
    text-align: center;
  }
  .steps button {
    min-width: 36px;
    padding: 0;
    font-size: var(--type-lead);
    line-height: 1;
  }
  .steps button:first-child {
    border-radius: var(--radius) 0 0 var(--radius);
  }
  .steps button:last-of-type {
    border-radius: 0 var(--radius) var(--radius) 0;
  }
  [aria-disabled='true'] {
    color: var(--ink-soft);
    cursor: default;
  }
  @media (pointer: coarse) {
    .steps button {
      min-width: var(--touch);
    }
  }
  /* With nothing said before the field, its unit is its label and stands off as one. */
  :host([label-hidden]) .soft {
    padding-left: var(--space-5);
  }
  .unit {
    flex: none;
    min-width: 2.4em;
    min-height: 0;
    padding: var(--space-2) var(--space-1);
    border: 0;
    background: none;
    color: var(--ink-soft);
    text-align: left;
    text-decoration: underline dotted;
    text-underline-offset: 3px;
  }
  .unit:hover {
    color: var(--ink);
  }
  @media (pointer: coarse) {
    .unit {
      min-height: var(--touch);
    }
  }
`;
