import { counted } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/drawer/trace.ts';

export const say: typeof english = {
  asShape: 'Als Form',
  thePicture: 'Das Bild',
  tracing: 'Wird nachgezeichnet…',
  mmPiecesHolesCorners: ({ roundTo, roundTo2, pieces, holes, corners, specks, roundTo3, roundTo4 }) =>
    `${roundTo} × ${roundTo2} mm: ${counted(pieces, { one: 'Stück', other: 'Stücke' })}, ${counted(holes, { one: 'Loch', other: 'Löcher' })}, ${counted(corners, { one: 'Ecke', other: 'Ecken' })}; ${counted(specks, { one: 'Fleck', other: 'Flecken' })} weggelassen. Ein Pixel ist ${roundTo3} mm; Umrisse liegen innerhalb von ${roundTo4} mm um die Kante im Bild.`,
  inkIs: 'Farbe ist',
  darkIsInk: 'Dunkles ist Farbe',
  lightIsInk: 'Helles ist Farbe',
  thresholdWhereDarkAnd: (noThreshold) => `Schwelle ${noThreshold ? '(wo Dunkel und Hell sich am besten trennen)' : ''}`,
  ofWhite: (round) => `${round} % von Weiß`,
  whereDarkAndLight: 'Wo Dunkel und Hell sich am besten trennen',
  evenOutLightOn: 'Das Licht auf dem Papier ausgleichen',
  leaveOutSpecksUnder: 'Flecken weglassen unter',
  outlinesMayStrayBy: 'Umrisse dürfen abweichen um',
  widthOfWholePicture: 'Breite des ganzen Bildes',
  orShowPictureDraw: 'Oder das Bild zeigen, darauf eine Linie an etwas bekannter Länge entlangziehen und sagen, wie lang es ist.',
  lineOnPictureIs: 'Die Linie auf dem Bild ist',
  shown: 'Gezeigt',
  pictureAsShape: 'Das Bild als Form',
  tracePicture: 'Ein Bild nachzeichnen',
  leaveItOut: 'Weglassen',
  cancel: 'Abbrechen',
  makeShapeOfIt: 'Eine Form daraus machen',
};
