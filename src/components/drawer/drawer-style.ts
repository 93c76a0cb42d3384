import { css } from 'lit';

export const drawerStyles = css`
  .left {
    gap: var(--space-10);
  }
  section {
    min-width: 0;
  }
  header {
    margin-bottom: var(--space-6);
  }
  .compose {
    display: grid;
    grid-template-rows: auto minmax(0, 1fr);
    height: 100%;
  }
  .compose > p {
    padding: var(--space-2) var(--space-6) 0;
  }
  .reading:empty {
    display: none;
  }
  .tray {
    padding: var(--space-6) var(--space-6) var(--space-8);
    background: var(--wall-deep);
    border-radius: var(--radius);
    box-shadow: var(--shadow-well);
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
    border-radius: 0 0 var(--radius) var(--radius);
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
    padding: var(--space-5) var(--space-1);
    border-bottom: 1px solid var(--line);
  }
  .report {
    margin-top: var(--space-7);
    padding-left: var(--space-6);
    border-left: 3px solid var(--accent);
  }
  .report .top {
    display: flex;
    align-items: center;
    gap: var(--space-6);
  }
  .report h3 {
    flex: 1;
    min-width: 0;
  }
  .report .quiet {
    flex: none;
  }
  .report .top + .row {
    margin: var(--space-2) 0 var(--space-5);
  }
  .report .unsized,
  .report .whites {
    align-items: end;
    margin-bottom: var(--space-6);
  }
  .report .unsized .soft {
    padding-bottom: var(--space-4);
  }
  .parts {
    margin: 0 0 var(--space-6);
    padding: 0;
    border: 0;
    min-width: 0;
  }
  .parts legend {
    padding: 0 0 var(--space-3);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-5);
  }
  .way {
    display: grid;
    min-width: 9.5em;
    justify-items: center;
    gap: var(--space-2);
    padding: var(--space-4);
    cursor: pointer;
    background: var(--wall-deep);
    border-radius: var(--radius);
  }
  .way svg {
    width: 104px;
    height: 78px;
  }
  .tone0 {
    fill: var(--ink);
  }
  .tone1 {
    fill: var(--accent);
  }
  .tone2 {
    fill: var(--ink-soft);
  }
  .tone3 {
    fill: var(--ink);
    opacity: 0.4;
  }
  .tone4 {
    fill: var(--accent);
    opacity: 0.5;
  }
  .report ul {
    display: grid;
    gap: var(--space-3);
    max-height: 260px;
    overflow: auto;
    margin: var(--space-2) 0 0;
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
    gap: var(--space-4);
    justify-items: center;
    padding: 72px var(--space-8);
    text-align: center;
    background: var(--wall-deep);
    border-radius: var(--radius);
    box-shadow: var(--shadow-well);
  }
  .empty p {
    max-width: 46ch;
  }
  @media (max-width: 999px) {
    .compose {
      height: auto;
    }
    .left {
      gap: var(--space-9);
    }
    .sizes {
      order: 1;
      flex-basis: 100%;
    }
    .tray {
      padding: var(--space-5) var(--space-5) var(--space-8);
    }
  }
`;
