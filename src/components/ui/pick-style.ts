import { css } from 'lit';

/** Cards of which one is picked: a label of class `pick` around a radio button that is not seen. */
export const pickStyle = css`
  .pick {
    position: relative;
    border-radius: var(--radius);
    cursor: pointer;
  }
  .pick input {
    position: absolute;
    opacity: 0;
    width: 1px;
    height: 1px;
  }
  .pick:hover {
    background: color-mix(in srgb, var(--ink) 7%, transparent);
  }
  .pick:has(:checked) {
    box-shadow: var(--edge-chosen);
  }
  @media (forced-colors: active) {
    .pick:has(:checked) {
      outline: 3px solid Highlight;
      outline-offset: -3px;
    }
  }
  .pick:has(:focus-visible) {
    outline: 2px solid var(--accent);
    outline-offset: 1px;
  }
`;
