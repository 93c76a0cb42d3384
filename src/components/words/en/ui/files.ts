import { speak } from '../../../../engine/words/language.ts';

export const say = speak('ui/files', {
  stop: 'Stop',
  reading: (name: string) => `Reading ${name}…`,
  pullstackProject: 'Pullstack project',
});
