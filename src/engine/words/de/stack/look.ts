import type { say as english } from '../../en/stack/look.ts';

export const say: typeof english = {
  screenEyeAndDistance: 'Bildschirm, Auge und Abstand brauchen Zahlen über 0',
};
