import type { say as english } from '../../en/explore/taste.ts';

export const say: typeof english = {
  nothingIsChosenSelect: 'Nichts ist gewählt; einen Druck, der gefällt, auswählen, anheften oder behalten.',
  everyPrintThatHangs: 'Jeder Druck, der hängt, ist gewählt, also ist keiner übergangen; einige herausnehmen oder zwei davon vergleichen.',
  is1: 'ist es 1',
  are: (said) => `sind es ${said}`,
  printsCanBeFound: (leastChoicesToFindBy, said) =>
    `Drucke lassen sich nach der eigenen Wahl ab ${leastChoicesToFindBy} Wahlen finden, jede für einen Druck statt eines anderen; bisher ${said}: einige Male ‚Dieser oder der andere?‘ beantworten.`,
  hexDigits: 'Hexadezimalziffern',
  tasteCouldNotBe: 'ein Geschmack konnte nicht angepasst werden',
};
