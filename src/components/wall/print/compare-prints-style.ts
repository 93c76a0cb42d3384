import { css } from 'lit';

export const comparePrintsStyle = css`
  header {
    gap: var(--space-3) var(--space-8);
  }
  header h2 {
    flex: 1;
    white-space: nowrap;
  }
  ul {
    grid-auto-flow: column;
    grid-auto-columns: minmax(0, 1fr);
  }
  li {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    gap: var(--space-5);
    min-height: 0;
    min-width: 0;
  }
  li.both {
    grid-template-rows: minmax(0, 1fr) minmax(0, 1fr) auto;
  }
  ps-picture {
    width: min(100cqw, 100cqh * var(--aspect));
  }
  .hung {
    display: grid;
    place-items: start center;
    min-height: 0;
    container-type: size;
  }
  .figures {
    min-height: 3.2em;
    font-size: var(--type-label);
  }
  .ramp {
    display: inline-block;
    width: 110px;
    height: 10px;
    vertical-align: middle;
    margin: 0 var(--space-3);
  }
  @media (max-width: 760px) {
    ul {
      grid-auto-flow: row;
      grid-template-columns: repeat(2, minmax(0, 1fr));
      grid-auto-rows: max-content;
      align-content: start;
      overflow-y: auto;
      gap: var(--space-6);
      padding: var(--space-6);
    }
    li,
    li.both {
      grid-template-rows: none;
      grid-auto-rows: max-content;
      align-content: start;
    }
    li.between {
      order: 1;
    }
    .hung {
      container-type: inline-size;
    }
    ps-picture {
      width: 100cqw;
    }
    header {
      padding: var(--space-4) var(--space-6);
    }
    header h2 {
      flex-basis: 60%;
    }
    .scale {
      display: none;
    }
  }
  .limit {
    width: 5em;
    text-align: right;
  }
`;
