import { css } from 'lit';

export const whatNextStyle = css`
  dialog[open] {
    display: grid;
    grid-template: auto minmax(var(--least), 1fr) auto / 270px minmax(0, 1fr);
  }
  header,
  footer {
    grid-column: 1 / -1;
    display: flex;
    align-items: center;
    gap: var(--space-7);
    padding: var(--space-5) var(--space-8);
    background: var(--table);
  }
  header {
    justify-content: space-between;
    border-bottom: 1px solid var(--line);
  }
  h2 .soft {
    font-weight: 400;
  }
  /* Why nothing can be asked stands above all that is asked, where it is seen at any size. */
  header {
    flex-wrap: wrap;
  }
  h2 {
    flex: 1;
    min-width: 0;
  }
  header ps-problem {
    flex: 1 0 100%;
    font-size: var(--type-label);
  }
  /* Both beside each other, or where it is narrow one below the other. */
  .middle {
    display: contents;
  }
  .ask,
  .found {
    display: grid;
    align-content: start;
    gap: var(--space-7);
    min-width: 0;
    padding: var(--space-7) var(--space-8) var(--space-9);
    overflow-y: auto;
  }
  .ask {
    gap: var(--space-5);
    background: var(--table);
    border-right: 1px solid var(--line);
  }
  .line {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--space-2);
    min-width: 0;
  }
  .line select {
    width: 100%;
    min-width: 0;
  }
  .tick {
    display: flex;
    align-items: center;
    gap: var(--space-4);
    min-height: 36px;
  }
  section {
    display: grid;
    gap: var(--space-4);
  }
  .cards {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
    gap: var(--space-6);
  }
  .card {
    display: grid;
    align-content: start;
    gap: var(--space-3);
    padding: var(--space-4);
    font-size: var(--type-small);
    line-height: 1.3;
  }
  .card ps-picture {
    box-shadow: var(--shadow-low);
  }
  .card > span {
    display: grid;
    gap: var(--space-1);
    overflow-wrap: anywhere;
  }
  .card b {
    font-weight: 600;
  }
  footer {
    border-top: 1px solid var(--ink);
    background: var(--sheet);
  }
  figure {
    flex: none;
    width: 92px;
    margin: 0;
  }
  figure ps-picture {
    box-shadow: var(--shadow-low);
  }
  figcaption {
    padding-top: var(--space-1);
    font-size: var(--type-small);
    color: var(--ink-soft);
  }
  .told {
    flex: 1;
    display: grid;
    gap: var(--space-2);
    min-width: 0;
  }
  footer button {
    flex: none;
    min-height: 56px;
  }
  @media (max-width: 840px) {
    dialog[open] {
      display: flex;
      flex-direction: column;
    }
    .ask {
      flex: none;
      grid-template-columns: repeat(auto-fit, minmax(160px, 1fr));
      max-height: max(34dvh, 200px);
      border-right: 0;
      border-bottom: 1px solid var(--line);
    }
    .ask p {
      order: 1;
      grid-column: 1 / -1;
    }
    .ask .wide,
    .ask ps-fold {
      grid-column: span 2;
    }
    .ask ps-fold {
      order: 2;
    }
    .stand {
      order: 3;
      grid-column: 1 / -1;
      min-height: 44px;
    }
    .found {
      flex: 1 0 0;
      min-height: var(--least);
    }
  }
  @media (max-width: 760px) {
    /* What is asked is scrolled away: the prints need the room. */
    .middle {
      display: block;
      flex: 1;
      min-height: var(--least);
      overflow-y: auto;
    }
    header {
      padding: var(--space-3) var(--space-6);
    }
    header .soft {
      display: block;
      font-size: var(--type-label);
    }
    .ask {
      align-items: end;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      max-height: none;
      padding: var(--space-5) var(--space-6);
    }
    /* As high while it looks as when it has looked. */
    .stand {
      min-height: 100px;
    }
    .ask .wide,
    .ask ps-fold {
      grid-column: 1 / -1;
    }
    .found {
      padding: var(--space-5) var(--space-6);
    }
    .cards {
      grid-template-columns: repeat(auto-fill, minmax(130px, 1fr));
      gap: var(--space-4);
    }
    footer {
      flex-wrap: wrap;
      gap: var(--space-4);
      padding: var(--space-4) var(--space-6);
    }
    footer figure {
      width: 56px;
    }
    .told {
      font-size: var(--type-small);
    }
    .told .small {
      display: none;
    }
    footer button {
      flex: 1 1 100%;
      min-height: 48px;
    }
  }
`;
