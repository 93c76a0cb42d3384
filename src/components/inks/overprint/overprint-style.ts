import { css } from 'lit';

/** The square of a colour that no ink has by itself: a light line inside a dark one. */
export const overprintMarkStyles = css`
  .own::before {
    content: '';
    position: absolute;
    inset: 2px;
    border: 2px solid var(--stock);
    outline: 1px solid var(--edge-dark);
    box-shadow: var(--edge-dark-inside);
    pointer-events: none;
  }
`;

/** A head that is read from below. */
const upright = css`
  writing-mode: vertical-rl;
  transform: rotate(180deg);
  max-width: none;
  padding: var(--space-2) 0 0;
  text-align: left;
  white-space: nowrap;
`;

export const gridStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  .scroll {
    max-width: 100%;
    max-height: min(78vh, 760px);
    overflow: auto;
    padding: 0 var(--space-2) var(--space-2) 0;
  }
  table {
    border-collapse: separate;
    border-spacing: 2px;
  }
  th {
    font-weight: 400;
    font-size: var(--type-small);
    color: var(--ink-soft);
    background: var(--wall);
  }
  thead th {
    position: sticky;
    top: 0;
    z-index: 3;
  }
  th[scope='col'] {
    max-width: 64px;
    overflow: hidden;
    text-overflow: ellipsis;
    vertical-align: bottom;
    padding: 0 var(--space-1) var(--space-2);
  }
  th[scope='row'] {
    position: sticky;
    left: 0;
    z-index: 2;
    text-align: right;
    max-width: 110px;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
    padding: 0 var(--space-4) 0 0;
  }
  thead th.axes {
    left: 0;
    z-index: 4;
    font-size: var(--type-fine);
    text-align: right;
    line-height: 1.25;
    white-space: nowrap;
    padding: 0 var(--space-4) var(--space-2) 0;
  }
  th.lit {
    color: var(--ink);
    font-weight: 650;
  }
  td {
    position: relative;
    width: 64px;
    min-width: 64px;
    height: 46px;
    padding: 0;
    cursor: pointer;
    scroll-margin: 60px 8px 8px 120px;
    box-shadow: var(--edge);
  }
  td:focus-visible,
  td[aria-selected='true'] {
    outline: 2px solid var(--accent);
    outline-offset: 0;
    z-index: 1;
  }
  .hatched td.outside {
    background-image: repeating-linear-gradient(135deg, var(--black) 0 1.4px, var(--white) 1.4px 2.2px, transparent 2.2px 7px);
  }
  .many td {
    width: 34px;
    min-width: 34px;
    height: 30px;
  }
  .many th[scope='col'] {
    ${upright}
    max-height: 96px;
  }
  @media (max-width: 760px) {
    .scroll {
      max-height: 70vh;
    }
    td {
      width: 44px;
      min-width: 44px;
      height: 44px;
      scroll-margin: 90px 8px 8px 80px;
    }
    th[scope='col'] {
      ${upright}
      max-height: 84px;
    }
    th[scope='row'] {
      max-width: 68px;
      padding-right: var(--space-2);
    }
    thead th.axes {
      font-size: var(--type-fine);
      white-space: normal;
      padding-right: var(--space-2);
    }
  }
`;
