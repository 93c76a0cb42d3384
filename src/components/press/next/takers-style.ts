import { css } from 'lit';

export const takersStyle = css`
  dialog {
    --dialog-width: 1080px;
  }
  ul {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(300px, 1fr));
    gap: var(--space-6);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li label {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr) minmax(0, 1fr);
    gap: var(--space-4);
    align-items: start;
    padding: var(--space-4);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    background: var(--sheet);
    cursor: pointer;
  }
  li label:has(:checked) {
    box-shadow: var(--edge-chosen);
  }
  @media (forced-colors: active) {
    li label:has(:checked) {
      outline: 3px solid Highlight;
    }
  }
  li input {
    width: 24px;
    height: 24px;
  }
  li ps-picture {
    box-shadow: var(--shadow-low);
  }
  li .words {
    grid-column: 1 / -1;
    font-size: var(--type-small);
  }
  .words b {
    font-size: var(--type-label);
  }
  .warn {
    color: var(--accent);
    font-weight: 600;
  }
  .line {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-4);
  }
  .line label {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2) var(--space-4);
    min-width: 0;
    max-width: 100%;
  }
  .line select {
    min-width: 0;
    max-width: 100%;
  }
  .buttons ps-progress {
    flex: 1;
  }
  form {
    margin-top: var(--space-6);
  }
  .buttons {
    position: sticky;
    bottom: calc(-1 * var(--space-8));
    flex-wrap: wrap;
    align-items: center;
    margin: 0 calc(-1 * var(--space-8)) calc(-1 * var(--space-8));
    padding: var(--space-5) var(--space-8);
    background: var(--table);
    border-top: 1px solid var(--line);
  }
  .buttons p {
    flex: 1 1 260px;
  }
  .buttons button {
    min-height: 48px;
  }
`;
