import { EngineError } from '../../base/error.ts';
import { LESSON_PULLS } from '../../base/limits.ts';
import type { Pull } from '../../stack/types.ts';
import { checkedPull } from './checks.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to the Lesson. */
export type LessonCommand = {
  kind: 'set-lesson';
  pulls: Pull[];
  /** Names the drag or run of keys that this is a part of: what has one name is undone as one. */
  move?: string;
};

/** How it is done. */
export const LESSON_RULES: RulesOf<LessonCommand> = {
  'set-lesson': {
    label: 'change the lesson',
    mergeKey: ({ kind, move }) => (move === undefined ? null : `${kind}:${move}`),
    change(draft, { pulls }) {
      if (pulls.length > LESSON_PULLS.most) {
        throw new EngineError('command.lesson', 'A lesson compares two to six pulls; take one out before adding another.');
      }
      draft.lesson = pulls.map((pull) => checkedPull(draft, pull));
    },
  },
};
