import { css } from 'lit';

/** Rows of what is kept: what each is, over the buttons that do something with it. */
export const keptRowsStyle = css`
  ul {
    display: grid;
    gap: var(--space-5);
  }
  li {
    gap: var(--space-2) var(--space-4);
    padding-top: var(--space-4);
    border-top: 1px solid var(--line);
  }
  li p,
  li label {
    flex: 1 1 100%;
    overflow-wrap: anywhere;
  }
  input {
    width: 100%;
  }
`;
