import type { Draft } from 'immer';
import { EngineError } from '../../base/error.ts';
import { LESSON_PULLS } from '../../base/limits.ts';
import type { InkChange } from '../../lesson/lesson-sheet.ts';
import type { Pull } from '../../stack/types.ts';
import { say } from '../../words/en/project/commands.ts';
import type { Project } from '../types.ts';
import { checkedPull, find } from './checks.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to the Lesson. */
export type LessonCommand = {
  kind: 'set-lesson';
  pulls: Pull[];
  /** Inks that it prints clearer or more opaque; left out, they stay as they are. */
  inks?: InkChange[];
  /** Names the drag or run of keys that this is a part of: what has one name is undone as one. */
  move?: string;
};

/** How it is done. */
export const LESSON_RULES: RulesOf<LessonCommand> = {
  'set-lesson': {
    label: say.changeLesson,
    mergeKey: ({ kind, move }) => (move === undefined ? null : `${kind}:${move}`),
    change(draft, { pulls, inks }) {
      if (pulls.length > LESSON_PULLS.most) {
        throw new EngineError('command.lesson', say.lessonComparesTwoTo);
      }
      draft.lesson = pulls.map((pull) => checkedPull(draft, pull));
      if (inks !== undefined) setInks(draft, inks);
    },
  },
};

function setInks(draft: Draft<Project>, inks: readonly InkChange[]): void {
  for (const { ink, opacity } of inks) {
    find(draft.drawer.inks, ink, 'ink');
    if (!(opacity >= -1 && opacity <= 1)) {
      throw new EngineError('command.lesson', say.opacityOfInkIs(opacity));
    }
  }
  if (inks.length > 0) draft.lessonInks = [...inks];
  else delete draft.lessonInks;
}
