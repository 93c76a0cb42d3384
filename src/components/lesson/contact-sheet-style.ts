import { css } from 'lit';

export const contactSheetStyle = css`
  ul {
    --card: var(--print, 190px);
    gap: var(--space-9) var(--space-9);
    margin: 0;
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
  .how-many {
    display: block;
    padding: var(--space-5) 0 var(--space-4);
    font-weight: 600;
  }
  .orders {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-5) var(--space-7);
  }
  ps-fold {
    margin-top: var(--space-4);
    font-size: var(--type-small);
  }
  ps-fold .orders {
    padding-top: var(--space-3);
  }
`;
