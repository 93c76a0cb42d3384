import type { say as english } from '../../en/ui/files.ts';

export const say: typeof english = {
  stop: 'Anhalten',
  reading: (name) => `${name} wird gelesen…`,
  pullstackProject: 'Pullstack-Projekt',
};
