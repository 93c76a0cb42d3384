import { speak } from '../../language.ts';

export const say = speak('engine/visitfile/carried', {
  thisPictureCarriesNo:
    'this picture carries no recipe; choose a PNG or SVG that was saved here from a print, and that no other program has saved since',
  recipeInThisPicture: 'the recipe in this picture is cut off or damaged; save the picture again, or choose the recipe’s own file',
});
