import { css } from 'lit';

/** What all ways to look have: a surface that fills its place, and a line of controls under it. */
export const lookStyle = css`
  :host {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    min-height: 0;
  }
  .surface {
    position: relative;
    min-height: 0;
    overflow: hidden;
  }
  .line {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-4) var(--space-8);
    padding: var(--space-5) var(--space-8);
    background: var(--table);
    border-top: 1px solid var(--line);
  }
  .line label {
    display: flex;
    align-items: center;
    gap: var(--space-5);
  }
  input[type='range'] {
    width: min(260px, 40vw);
  }
  @media (max-width: 760px) {
    .line {
      padding: var(--space-4) var(--space-6);
    }
  }
`;
