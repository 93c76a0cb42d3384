import { css } from 'lit';

export const lessonStyles = css`
  .room {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-8);
    max-width: none;
    padding-top: var(--space-8);
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-5) var(--space-8);
  }
  .headline {
    margin-right: auto;
  }
  .lead {
    margin: var(--space-2) 0 var(--space-6);
    max-width: 66ch;
  }
  .stale {
    margin-top: var(--space-6);
  }
  .why h2,
  .two h2 {
    margin-bottom: var(--space-5);
  }
  .whys {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 420px);
    gap: var(--space-8) var(--space-11);
    align-items: start;
  }
  .reasons {
    display: grid;
    gap: var(--space-3);
    max-width: 66ch;
    margin: 0 0 var(--space-8);
    padding: 0;
    list-style: none;
    text-wrap: pretty;
  }
  ps-order-graph {
    grid-template-columns: minmax(0, 1fr);
    justify-items: center;
    --graph-width: 300px;
  }
  @media (max-width: 900px) {
    .whys {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;
