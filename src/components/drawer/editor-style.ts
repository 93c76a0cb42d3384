import { css } from 'lit';

export const editorStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 14px;
    align-content: start;
  }
  header {
    display: flex;
    align-items: baseline;
    gap: 12px;
  }
  .number {
    font-size: 34px;
    font-weight: 700;
    letter-spacing: -0.03em;
    line-height: 1;
  }
  .name {
    flex: 1;
    min-width: 0;
  }
  header input[type='text'] {
    width: 100%;
    padding: 2px 0;
    font-size: 20px;
    font-weight: 650;
    letter-spacing: -0.01em;
    background: none;
    border-color: transparent;
    border-bottom-color: var(--line);
    border-radius: 0;
  }
  header input[type='text']:hover,
  header input[type='text']:focus {
    border-bottom-color: var(--ink);
  }
  .bench {
    justify-content: space-between;
    margin-top: -4px;
  }
  sheet-preview {
    width: min(100%, 330px);
    margin: 4px auto 6px;
  }
  section {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
    padding-top: 14px;
    border-top: 1px solid var(--line);
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 10px 14px;
    align-items: end;
  }
  .fields p {
    grid-column: 1 / -1;
  }
  h3 {
    overflow-wrap: anywhere;
  }
  .pieces {
    gap: 6px;
  }
  .pieces button {
    max-width: 100%;
    overflow: hidden;
    text-overflow: ellipsis;
    padding: 4px 10px;
  }
  .add select {
    flex: 1;
    min-width: 8em;
  }
  .take {
    justify-self: start;
    margin-left: -8px;
  }
  .problem {
    color: var(--accent);
  }
  .actions {
    margin-top: 2px;
    padding-top: 10px;
    border-top: 1px solid var(--line);
  }
  .actions .quiet {
    margin-left: -8px;
  }
`;
