import { css } from 'lit';

export const wallSettingsStyle = css`
  .more {
    margin-top: calc(-1 * var(--space-4));
  }
  .more button {
    min-height: 30px;
    margin-left: var(--space-2);
  }
  .seed {
    display: grid;
    gap: var(--space-3);
  }
  .seed label {
    display: grid;
    gap: var(--space-2);
  }
  .seed input {
    width: 100%;
  }
  .seed div {
    display: grid;
    grid-template-columns: 1fr auto;
    gap: var(--space-4);
  }
  .problem {
    border-left: 3px solid var(--accent);
    padding-left: var(--space-5);
    font-size: var(--type-label);
  }
  .tick {
    min-height: 32px;
  }
  .inks {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(108px, 1fr));
    gap: var(--space-1) var(--space-4);
    margin: var(--space-1) 0 0 var(--space-9);
    padding: 0;
  }
  .inks button {
    justify-content: flex-start;
    gap: var(--space-4);
    min-height: 34px;
    padding: var(--space-1) var(--space-3) var(--space-1) var(--space-2);
    border-color: transparent;
    background: none;
    box-shadow: none;
    font-size: var(--type-label);
    overflow: hidden;
  }
  .inks button:hover {
    border-color: var(--line);
  }
  .inks button[aria-pressed='false'] {
    color: var(--ink-soft);
    text-decoration: line-through;
  }
  .inks button[aria-pressed='false'] .chip {
    opacity: 0.35;
  }
  @media (pointer: coarse) {
    .tick,
    .inks button {
      min-height: var(--touch);
    }
  }
`;
