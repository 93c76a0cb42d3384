import { css } from 'lit';

export const filmsStyle = css`
  dialog {
    --dialog-width: 980px;
  }
  form {
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: var(--space-7) var(--space-9);
  }
  .asked,
  .shown {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: var(--space-6);
  }
  .screens {
    display: grid;
    max-height: 168px;
    overflow: auto;
    padding: var(--space-3) var(--space-5);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    background: var(--sheet);
  }
  .screens label {
    min-height: 30px;
  }
  .screens .name {
    min-width: 0;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .screens .soft {
    margin-left: auto;
    font-size: var(--type-small);
    white-space: nowrap;
  }
  .screens label {
    width: 100%;
  }
  .screens input {
    flex: none;
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--space-2);
  }
  .top h3 {
    flex: 1;
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: var(--space-5) var(--space-7);
  }
  .sheet {
    display: grid;
    place-items: center;
    height: 420px;
    padding: var(--space-6);
    background: var(--wall-deep);
    border-radius: var(--radius);
    box-shadow: var(--shadow-well);
  }
  .sheet[data-old] svg {
    opacity: 0.5;
  }
  .sheet svg {
    width: 100%;
    height: 396px;
  }
  .sheet svg > rect {
    fill: var(--film);
  }
  .sheet path,
  .sheet text {
    fill: var(--film-ink);
  }
  .sheet path.line {
    fill: none;
    stroke: var(--film-ink);
  }
  .pager {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: var(--space-4);
    min-height: 36px;
  }
  .pager span {
    min-width: 0;
    overflow-wrap: anywhere;
  }
  .foot {
    grid-column: 1 / -1;
  }
  .noting {
    margin-right: auto;
  }
  .foot:not(.buttons) {
    display: grid;
    gap: var(--space-5);
  }
  @media (max-width: 760px) {
    dialog {
      padding: var(--space-7);
    }
    form {
      grid-template-columns: minmax(0, 1fr);
    }
    .sheet {
      height: 300px;
    }
    .sheet svg {
      height: 276px;
    }
    .screens label {
      min-height: var(--touch);
    }
  }
`;
