import { css } from 'lit';

export const drawerStyles = css`
  .room {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    min-height: 100%;
  }
  .left {
    display: grid;
    gap: 40px;
    align-content: start;
    padding: 28px 32px 64px;
    min-width: 0;
  }
  section {
    min-width: 0;
  }
  header {
    margin-bottom: 12px;
  }
  header h2 + .soft {
    margin-left: -6px;
  }
  .fill {
    flex: 1;
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
  .side {
    min-width: 0;
    padding: 20px 24px 40px;
    background: var(--table);
  }
  @media (min-width: 1000px) {
    .room {
      height: 100%;
      overflow: hidden;
      grid-template-columns: minmax(0, 1fr);
    }
    .room.open {
      grid-template-columns: minmax(0, 1fr) 420px;
    }
    .left,
    .side {
      overflow: auto;
    }
    .side {
      border-left: 1px solid var(--line);
    }
    .back {
      display: none;
    }
  }
  @media (max-width: 999px) {
    .room.open .left {
      display: none;
    }
    .left {
      gap: 32px;
      padding: 18px 16px 40px;
    }
    .side {
      padding: 8px 16px 40px;
    }
    .sizes {
      order: 1;
      flex-basis: 100%;
    }
    .back {
      margin: 0 0 8px -8px;
    }
    .tray {
      padding: 10px 10px 20px;
    }
  }
`;
