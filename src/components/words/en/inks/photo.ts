import { speak } from '../../../../engine/words/language.ts';

export const say = speak('inks/photo', {
  cardWhite: 'Card white',
  cardBlack: 'Card black',
  inkOverWhite: 'Ink over white',
  inkOverBlack: 'Ink over black',
  oneStrokeOnContrast: 'One stroke on a contrast card, lit evenly, without glare, with some bare white and bare black in view.',
  choosePhoto: 'Choose a photo',
  anotherPhoto: 'Another photo',
  photoStaysInThis: (hint: string) => `${hint} The photo stays in this browser.`,
  photoArrowKeysMove: (name: string) => `Photo: arrow keys move the loupe, with shift further, Enter picks ${name}`,
  patchToPick: 'Patch to pick',
  averagesPx: (value: number) => `Averages ${value} × ${value} px.`,
  ofPatchesPickedNext: ({ marks, patches, name, x, y }: { marks: number; patches: number; name: string; x: number; y: number }) =>
    `${marks} of ${patches} patches picked; next ${name}, loupe at ${x}, ${y}`,
  tapMiddleOf: 'Tap the middle of',
  ofPicked: (picks: number, patches: number) => `${picks} of ${patches} picked`,
});
