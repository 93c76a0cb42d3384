import type { say as english } from '../../en/explore/prepare.ts';

export const say: typeof english = {
  noPrintsAreChosen: 'Keine Drucke sind gewählt; einige auswählen, anheften oder behalten oder die ganze Wand nehmen.',
  screensThereAreList: 'Die vorhandenen Siebe sind eine Liste von Kennungen; ohne solche fällt sie weg.',
  listOfPrintsIs: 'Eine Liste von Drucken ist nötig, jeder mit den Sieben, mit denen er gedruckt wird.',
  numberOfNewScreens: (most) => `Die Zahl neuer Siebe ist ${most}; eine ganze Zahl ab 0 angeben.`,
  printNamesNoScreens: (i) => `Druck ${i} nennt keine Siebe; die Kennungen der Siebe angeben, mit denen er gedruckt wird.`,
  printCountsGive0: (i, weight) => `Druck ${i} zählt ${weight}; 0 oder eine positive Zahl angeben.`,
  printsCountTooMuch: 'Die Drucke zählen zusammen mehr als 10³⁰⁰; kleinere Gewichte angeben.',
};
