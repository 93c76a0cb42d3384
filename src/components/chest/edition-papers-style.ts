import { css } from 'lit';

export const editionPapersStyle = css`
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(210px, 1fr));
    gap: var(--space-6) var(--space-7);
  }
  .stacked {
    display: grid;
    gap: var(--space-2);
  }
  input,
  .fields select {
    width: 100%;
  }
  legend {
    margin-bottom: var(--space-2);
    padding: 0;
    font-weight: 650;
  }
  .fate {
    display: grid;
    grid-template-columns: minmax(110px, 1.2fr) 120px minmax(0, 1fr) minmax(0, 1fr);
    gap: var(--space-3) var(--space-6);
    align-items: center;
    padding: var(--space-3) 0;
    border-top: 1px solid var(--line);
  }
  @media (max-width: 620px) {
    .fate {
      grid-template-columns: 1fr 1fr;
    }
  }
`;
