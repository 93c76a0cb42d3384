import { css } from 'lit';

export const thisOrThatStyle = css`
  .told {
    flex: 1;
    padding-left: var(--space-5);
  }
  ul {
    grid: minmax(0, 1fr) / 1fr 1fr;
  }
  ul[aria-busy='true'] {
    opacity: 0.6;
  }
  li {
    display: grid;
    min-height: 0;
    min-width: 0;
  }
  li button {
    display: grid;
    grid: minmax(0, 1fr) auto / minmax(0, 1fr);
    gap: var(--space-4);
    padding: var(--space-5);
    border-width: 2px;
    border-color: transparent;
    background: none;
  }
  .hung {
    display: grid;
    place-items: center;
    min-height: 0;
    height: 100%;
    container-type: size;
  }
  ps-picture {
    width: min(100cqw, 100cqh * var(--aspect));
    box-shadow: var(--shadow);
  }
  .over {
    padding: var(--space-9);
  }
  @media (max-width: 760px) {
    header {
      padding: var(--space-3) var(--space-5);
    }
    header :is(h2, .told) {
      flex: 1 0 100%;
      padding-left: 0;
    }
    header button:last-child {
      margin-left: auto;
    }
    ul {
      padding: var(--space-4);
      gap: var(--space-2);
    }
  }
  @media (max-width: 760px) and (orientation: portrait) {
    ul {
      grid: minmax(0, 1fr) minmax(0, 1fr) / minmax(0, 1fr);
    }
    li button {
      padding: var(--space-2);
    }
  }
  header [aria-disabled='true'] {
    opacity: 0.45;
    cursor: default;
  }
`;
