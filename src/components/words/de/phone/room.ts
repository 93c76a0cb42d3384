import type { say as english } from '../../en/phone/room.ts';

export const say: typeof english = {
  noSetUp: 'Keine Einrichtung',
  ticksOnThisPage:
    'Haken auf dieser Seite dienen dem eigenen Zählen und sind weg, wenn sie geschlossen wird; protokolliert wird an der Presse.',
};
