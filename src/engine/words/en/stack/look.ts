import { speak } from '../../language.ts';

export const say = speak('engine/stack/look', {
  screenEyeAndDistance: 'a screen, an eye and a distance want numbers above 0',
});
