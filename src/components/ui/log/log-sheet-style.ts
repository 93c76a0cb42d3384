import { css } from 'lit';

/** What is said of a sheet, with wet hands: large fields in rows. */
export const logSheetStyle = css`
  fieldset {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(190px, 1fr));
    gap: var(--space-6);
  }
  legend {
    margin-bottom: var(--space-4);
    padding: 0;
    font-weight: 650;
  }
  input:not([type='checkbox']),
  select,
  button {
    min-height: 48px !important;
  }
  input[type='text'],
  input[type='number'],
  select {
    width: 100%;
  }
  input[type='checkbox'] {
    width: 26px;
    height: 26px;
  }
  .buttons {
    flex-wrap: wrap;
  }
  ul {
    display: grid;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    display: flex;
    align-items: center;
    gap: var(--space-6);
    min-height: 48px;
    border-top: 1px solid var(--line);
  }
  li span {
    flex: 1;
  }
  section + section,
  form + section {
    margin-top: var(--space-8);
  }
  h3 {
    margin-bottom: var(--space-3);
  }
  .many {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-3);
    margin-bottom: var(--space-6);
  }
  .many legend {
    float: left;
    width: 100%;
  }
  .many label {
    min-width: 76px;
    min-height: 48px;
    padding: 0 var(--space-5);
    border: 1px solid var(--line);
    border-radius: var(--radius);
    font-variant-numeric: tabular-nums;
  }
`;
