import { css } from 'lit';

/** A button of class `fold-mark` at the upper right of its host, where there is no room for all of a line: opens or shuts the rest. */
export const foldMark = css`
  .fold-mark {
    display: none;
  }
  @media (max-width: 760px) {
    .fold-mark {
      display: block;
      position: absolute;
      top: 0;
      right: 0;
      width: 44px;
      height: 44px;
      padding: 0;
      border: 0;
      background: none;
      color: inherit;
      cursor: pointer;
    }
    .fold-mark::before {
      content: '';
      display: inline-block;
      width: 9px;
      height: 9px;
      border: solid currentColor;
      border-width: 0 1.5px 1.5px 0;
      transform: translateY(-3px) rotate(45deg);
    }
    .fold-mark[aria-expanded='true']::before {
      transform: translateY(3px) rotate(225deg);
    }
    /* What it opens lies above it. */
    .fold-mark.up:not([aria-expanded='true'])::before {
      transform: translateY(3px) rotate(225deg);
    }
    .fold-mark.up[aria-expanded='true']::before {
      transform: translateY(-3px) rotate(45deg);
    }
  }
`;
