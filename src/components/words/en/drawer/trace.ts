import { counted, speak } from '../../../../engine/words/language.ts';

export const say = speak('drawer/trace', {
  asShape: 'As a shape',
  thePicture: 'The picture',
  tracing: 'Tracing…',
  mmPiecesHolesCorners: ({
    roundTo,
    roundTo2,
    pieces,
    holes,
    corners,
    specks,
    roundTo3,
    roundTo4,
  }: {
    roundTo: number;
    roundTo2: number;
    pieces: number;
    holes: number;
    corners: number;
    specks: number;
    roundTo3: number;
    roundTo4: number;
  }) =>
    `${roundTo} × ${roundTo2} mm: ${counted(pieces, { one: 'piece', other: 'pieces' })}, ${counted(holes, { one: 'hole', other: 'holes' })}, ${counted(corners, { one: 'corner', other: 'corners' })}; ${counted(specks, { one: 'speck', other: 'specks' })} left out. A pixel is ${roundTo3} mm; outlines lie within ${roundTo4} mm of the edge in the picture.`,
  inkIs: 'Ink is',
  darkIsInk: 'Dark is ink',
  lightIsInk: 'Light is ink',
  thresholdWhereDarkAnd: (noThreshold: boolean) => `Threshold ${noThreshold ? '(where dark and light part best)' : ''}`,
  ofWhite: (round: number) => `${round} % of white`,
  whereDarkAndLight: 'Where dark and light part best',
  evenOutLightOn: 'Even out the light on the paper',
  leaveOutSpecksUnder: 'Leave out specks under',
  outlinesMayStrayBy: 'Outlines may stray by',
  widthOfWholePicture: 'Width of the whole picture',
  orShowPictureDraw: 'Or show the picture, draw a line on it along something whose length you know, and say how long it is.',
  lineOnPictureIs: 'The line on the picture is',
  shown: 'Shown',
  pictureAsShape: 'The picture as a shape',
  tracePicture: 'Trace a picture',
  leaveItOut: 'Leave it out',
  cancel: 'Cancel',
  makeShapeOfIt: 'Make a shape of it',
});
