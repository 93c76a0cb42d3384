import { css } from 'lit';

export const pressStyles = css`
  :host {
    display: block;
  }
  .room {
    max-width: 1640px;
    margin: 0 auto;
    padding: 36px 40px 80px;
  }
  .room > section + section {
    margin-top: 56px;
  }
  .lead {
    max-width: 62ch;
    margin-top: 6px;
  }
  ps-visit-runs {
    margin-top: 26px;
  }
  .start {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 12px 22px;
    margin-top: 34px;
  }
  .start button {
    min-height: 48px;
    padding: 4px 22px;
  }
  .total {
    font-weight: 600;
  }
  ps-studio-figures {
    margin-top: 14px;
  }
  .warn {
    margin-top: 8px;
    padding-left: 12px;
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
    gap: 16px 40px;
    margin-bottom: 22px;
  }
  .result > div {
    max-width: 1000px;
  }
  .headline {
    margin: 6px 0 6px;
    font-size: 26px;
    text-wrap: balance;
    line-height: 1.2;
    font-weight: 650;
    letter-spacing: -0.02em;
  }
  .result details {
    margin-top: 8px;
  }
  .result summary {
    padding: 6px 0;
    cursor: pointer;
  }
  .stale {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px 14px;
    margin-top: 12px;
    padding: 4px 6px 4px 14px;
    border-left: 3px solid var(--accent);
    background: var(--table);
    font-weight: 600;
  }
  .days {
    max-width: 1200px;
    margin-bottom: 34px;
  }
  .days h3 {
    margin-bottom: 8px;
  }
  .bench {
    display: grid;
    grid-template-columns: minmax(0, max-content) minmax(380px, 1fr);
    gap: 28px 44px;
    align-items: start;
  }
  ps-set-up-card {
    position: sticky;
    top: 24px;
    max-width: 620px;
  }
  .supply {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr));
    gap: 48px 64px;
  }
  .supply > div {
    min-width: 0;
  }
  .start progress {
    width: 120px;
    height: 6px;
    accent-color: var(--accent);
  }
  .start label {
    font-variant-numeric: tabular-nums;
  }
  .supply h2.next {
    margin-top: 40px;
  }
  .supply h2,
  .safe h2 {
    margin-bottom: 10px;
  }
  .supply p {
    margin-top: 10px;
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
    margin: 0 0 10px;
    padding-left: 20px;
    max-width: 86ch;
  }
  .safe li + li {
    margin-top: 4px;
  }
  .empty {
    max-width: 46ch;
    padding: 40px 0;
    font-size: 17px;
  }
  .empty .row {
    margin-top: 18px;
  }
  @media (max-width: 1180px) {
    .room {
      padding: 28px 28px 64px;
    }
    .bench {
      grid-template-columns: minmax(0, 1fr);
    }
    ps-set-up-card {
      position: static;
      max-width: none;
    }
  }
  @media (max-width: 760px) {
    .room {
      padding: 20px 16px 48px;
    }
    .room > section + section {
      margin-top: 40px;
    }
    .headline {
      font-size: 21px;
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
