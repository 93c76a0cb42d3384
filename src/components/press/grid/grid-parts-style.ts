import { css } from 'lit';

/** The set-up grid of a long order, whose parts are tables of their own. */
export const gridPartsStyle = css`
  /* The columns of all meet: what stands in one table does not widen it. */
  .long {
    table-layout: fixed;
    width: 1px;
  }
  col {
    width: 30px;
    font-size: var(--type-fine);
  }
  .names {
    width: 401px;
  }
  .test {
    width: 48px;
  }
  .long .name {
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .top {
    position: sticky;
    top: 0;
    z-index: 3;
  }
  .part {
    content-visibility: auto;
    width: max-content;
  }
  .part + .part tbody tr:first-child > * {
    border-top: 1px solid color-mix(in srgb, var(--line) 55%, transparent);
  }
  .part + .part tbody tr.mount:first-child > * {
    border-top-color: var(--ink-soft);
  }
  /* Each part has the head of all for those who hear it. */
  .part thead * {
    position: static !important;
    height: 0 !important;
    padding: 0 !important;
    border-block: 0 !important;
    clip-path: inset(50%);
    line-height: 0;
  }
  .part thead .visually-hidden {
    position: absolute !important;
  }
  @media screen and (min-width: 761px) {
    .close col {
      width: 21px;
    }
    .close .names {
      width: 321px;
    }
    .close col.test {
      width: 48px;
    }
  }
  @media screen and (max-width: 760px) {
    .names {
      width: 191px;
    }
  }
`;
