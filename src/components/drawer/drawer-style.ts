import { css } from 'lit';

export const drawerStyles = css`
  .left {
    gap: 40px;
  }
  section {
    min-width: 0;
  }
  header {
    margin-bottom: 12px;
  }
  .reading:empty {
    display: none;
  }
  .tray {
    padding: 14px 14px 22px;
    background: var(--wall-deep);
    border-radius: 3px;
    box-shadow: inset 0 10px 14px -10px rgb(30 20 10 / 0.45);
    position: relative;
  }
  .tray::after {
    content: '';
    position: absolute;
    left: 50%;
    bottom: 7px;
    width: 96px;
    height: 7px;
    transform: translateX(-50%);
    border-radius: 0 0 5px 5px;
    background: var(--line);
  }
  .chosen strong {
    min-width: 0;
    max-width: min(36ch, 100%);
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .chosen {
    padding: 10px 2px;
    border-bottom: 1px solid var(--line);
  }
  .report {
    margin-top: 16px;
    padding-left: 14px;
    border-left: 3px solid var(--accent);
  }
  .report .top {
    display: flex;
    align-items: center;
    gap: 12px;
  }
  .report h3 {
    flex: 1;
    min-width: 0;
  }
  .report .quiet {
    flex: none;
  }
  .report .top + .row {
    margin: 4px 0 10px;
  }
  .report ul {
    display: grid;
    gap: 6px;
    max-height: 260px;
    overflow: auto;
    margin: 4px 0 0;
    padding: 0;
    list-style: none;
    overflow-wrap: anywhere;
  }
  .report li {
    color: var(--ink-soft);
  }
  .report .refused {
    color: var(--ink);
  }
  .empty {
    display: grid;
    gap: 8px;
    justify-items: center;
    padding: 72px 24px;
    text-align: center;
    background: var(--wall-deep);
    border-radius: 3px;
    box-shadow: inset 0 10px 14px -10px rgb(30 20 10 / 0.45);
  }
  .empty p {
    max-width: 46ch;
  }
  @media (max-width: 999px) {
    .left {
      gap: 32px;
    }
    .sizes {
      order: 1;
      flex-basis: 100%;
    }
    .tray {
      padding: 10px 10px 20px;
    }
  }
`;
