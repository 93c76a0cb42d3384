import { say } from '../../words/en/project/commands.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to the project as a whole. */
export type TitleCommand = { kind: 'rename'; title: string };

/** How it is done. */
export const TITLE_RULES: RulesOf<TitleCommand> = {
  rename: {
    label: say.renameProject,
    mergeKey: ({ kind }) => kind,
    change(draft, { title }) {
      draft.title = title;
    },
  },
};
