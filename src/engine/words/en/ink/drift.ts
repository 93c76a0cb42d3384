import { speak } from '../../language.ts';

export const say = speak('engine/ink/drift', {
  isNoDateWrite: (date: string) => `“${date}” is no date; write it as 2026-03-14.`,
});
