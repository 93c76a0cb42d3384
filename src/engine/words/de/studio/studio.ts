import type { say as english } from '../../en/studio/studio.ts';

export const say: typeof english = {
  pullUsesScreenWhich: (index, screen) =>
    `Druckgang ${index} nutzt das Sieb ‚${screen}‘, das nicht in der Schublade ist; ein anderes Sieb wählen oder den Druckgang weglassen.`,
  pullUsesInkWhich: (index, ink) =>
    `Druckgang ${index} nutzt die Farbe ‚${ink}‘, die nicht in der Schublade ist; eine andere Farbe wählen oder den Druckgang weglassen.`,
};
