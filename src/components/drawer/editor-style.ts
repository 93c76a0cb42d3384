import { css } from 'lit';
import { nameInput, closeStackHost } from '../ui/layout-style.ts';

export const editorStyles = css`
  ${closeStackHost}
  ${nameInput}
  header {
    display: flex;
    align-items: baseline;
    gap: var(--space-6);
  }
  .number {
    font-size: var(--type-display);
    font-weight: 700;
    letter-spacing: -0.03em;
    line-height: 1;
  }
  .name {
    flex: 1;
    min-width: 0;
  }
  .bench {
    justify-content: space-between;
    margin-top: calc(-1 * var(--space-2));
  }
  sheet-preview {
    width: min(100%, 330px);
    margin: var(--space-2) auto var(--space-3);
  }
  section {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-5);
    padding-top: var(--space-6);
    border-top: 1px solid var(--line);
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: var(--space-5) var(--space-6);
    align-items: end;
  }
  .fields p {
    grid-column: 1 / -1;
  }
  h3 {
    overflow-wrap: anywhere;
  }
  .pieces {
    gap: var(--space-3);
  }
  .pieces button {
    max-width: 100%;
    overflow: hidden;
    text-overflow: ellipsis;
    padding: var(--space-2) var(--space-5);
  }
  .add select {
    flex: 1;
    min-width: 8em;
  }
  .take {
    justify-self: start;
    margin-left: calc(-1 * var(--space-4));
  }
  .problem {
    color: var(--accent);
  }
  .actions {
    margin-top: var(--space-1);
    padding-top: var(--space-5);
    border-top: 1px solid var(--line);
  }
  .actions .quiet {
    margin-left: calc(-1 * var(--space-4));
  }
`;
