import type { RulesOf } from './rule.ts';

/** What can be done to the project as a whole. */
export type TitleCommand = { kind: 'rename'; title: string };

/** How it is done. */
export const TITLE_RULES: RulesOf<TitleCommand> = {
  rename: {
    label: 'rename the project',
    mergeKey: ({ kind }) => kind,
    change(draft, { title }) {
      draft.title = title;
    },
  },
};
