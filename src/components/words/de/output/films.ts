import type { say as english } from '../../en/output/films.ts';

export const say: typeof english = {
  noScreenIsChosen: 'Kein Sieb ist gewählt; die wählen, für die Filme gemacht werden sollen.',
};
