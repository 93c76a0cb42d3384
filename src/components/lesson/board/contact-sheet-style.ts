import { css } from 'lit';

export const contactSheetStyle = css`
  .frame {
    position: relative;
  }
  ul {
    --card: var(--print, 132px);
    gap: var(--space-8) var(--space-8);
    margin: 0;
  }
  ul.small {
    --card: 104px;
  }
  .print {
    display: block;
    width: 100%;
    min-height: 0;
    padding: 0;
    border: 0;
    background: none;
    box-shadow: var(--shadow);
  }
  .print[aria-pressed='true'] {
    box-shadow: var(--edge-ring);
  }
  .layer {
    position: absolute;
    inset: 0;
    overflow: hidden;
    pointer-events: none;
  }
  .layer canvas {
    position: absolute;
    transform-origin: 0 0;
    box-shadow: var(--shadow);
  }
  .below {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    min-height: 36px;
  }
  .compare {
    min-height: 28px;
    padding: 0 var(--space-3);
    font-size: var(--type-small);
    text-decoration: underline;
    text-underline-offset: 3px;
  }
  .orders {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-3) var(--space-5);
  }
  .chip {
    width: 20px;
    height: 20px;
    font-size: var(--type-fine);
  }
  ps-fold {
    font-size: var(--type-small);
  }
  ps-fold .orders {
    padding-top: var(--space-3);
  }
  /* On a phone they lie in a row below the print, so that both are seen together. */
  @media (max-width: 700px) {
    ul,
    ul.small {
      display: flex;
      gap: var(--space-6);
      padding: var(--space-2) var(--space-2) 0;
      overflow-x: auto;
      overscroll-behavior-x: contain;
    }
    li {
      flex: none;
      width: 84px;
    }
    .below {
      flex-direction: column;
      align-items: flex-start;
      font-size: var(--type-small);
    }
    .below .small {
      display: none;
    }
    .orders,
    ps-fold {
      display: none;
    }
  }
  @media (pointer: coarse) {
    .compare {
      min-height: var(--touch);
    }
  }
`;
