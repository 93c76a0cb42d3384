import { css } from 'lit';

export const pressStyles = css`
  .stock {
    margin: var(--space-5) 0;
    gap: var(--space-5) var(--space-8);
  }
  .stencils .paper .box {
    display: none;
  }
  /* On a phone the table scrolls under its title. */
  .stencils .paper .title span {
    position: sticky;
    left: 0;
    display: inline-block;
    max-width: calc(100vw - 40px);
  }
  .stencils table.paper {
    min-width: 640px;
    --paper-head: var(--type-lead);
    --paper-small: var(--type-small);
    --paper-text: var(--type-text);
  }
  .room > section + section {
    margin-top: var(--space-11);
  }
  .lead {
    max-width: 62ch;
    margin-top: var(--space-3);
  }
  press-visit-runs {
    margin-top: var(--space-9);
  }
  .start {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-6) var(--space-8);
    margin-top: var(--space-9);
  }
  .start button {
    min-height: 48px;
    padding: var(--space-2) var(--space-8);
  }
  .total {
    font-weight: 600;
  }
  press-studio-figures {
    margin-top: var(--space-6);
  }
  .warn {
    margin-top: var(--space-4);
    padding-left: var(--space-6);
    border-left: 3px solid var(--accent);
    font-weight: 600;
  }
  .start .warn {
    margin: 0;
  }
  .result {
    display: flex;
    flex-wrap: wrap;
    align-items: start;
    justify-content: space-between;
    gap: var(--space-7) var(--space-10);
    margin-bottom: var(--space-8);
  }
  .result > div {
    max-width: 1000px;
  }
  .headline {
    margin: var(--space-3) 0 var(--space-3);
  }
  .result ps-fold {
    margin-top: var(--space-4);
  }
  .stale {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-3) var(--space-6);
    margin: var(--space-6) 0;
    padding: var(--space-5) var(--space-7);
    border-left: 3px solid var(--accent);
    background: var(--table);
    font-weight: 600;
  }
  press-fit-choices,
  press-advice {
    margin-top: var(--space-10);
    max-width: 1000px;
  }
  press-advice {
    margin-bottom: var(--space-11);
  }
  .days {
    max-width: 1200px;
    margin-bottom: var(--space-9);
  }
  .days h3 {
    margin-bottom: var(--space-4);
  }
  .bench {
    display: grid;
    grid-template-columns: minmax(0, max-content) minmax(380px, 1fr);
    gap: var(--space-9) var(--space-10);
    align-items: start;
  }
  press-set-up-card {
    position: sticky;
    top: 24px;
    max-width: 620px;
  }
  .supply {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr));
    gap: var(--space-10) var(--space-11);
  }
  .supply > div {
    min-width: 0;
  }
  .start ps-progress {
    font-variant-numeric: tabular-nums;
  }
  .supply h2.next {
    margin-top: var(--space-10);
  }
  .supply h2,
  .safe h2 {
    margin-bottom: var(--space-5);
  }
  .supply p {
    margin-top: var(--space-5);
    max-width: 66ch;
  }
  .result {
    scroll-margin-top: 20px;
  }
  .scroll {
    position: relative;
    overflow-x: auto;
  }
  .safe ul {
    margin: 0 0 var(--space-5);
    padding-left: var(--space-8);
    max-width: 86ch;
  }
  .safe li + li {
    margin-top: var(--space-2);
  }
  @media (max-width: 1180px) {
    .bench {
      grid-template-columns: minmax(0, 1fr);
    }
    press-set-up-card {
      position: static;
      max-width: none;
    }
  }
  @media (max-width: 760px) {
    .room > section + section {
      margin-top: var(--space-10);
    }
    .start button {
      flex: 1 1 100%;
    }
  }
  @media print {
    .room {
      display: none;
    }
  }
`;
