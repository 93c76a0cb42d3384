/** Colours of the PDF files, in sRGB hex. A file for print has no theme. */
export const PDF_COLOURS = {
  white: '#ffffff',
  black: '#14120f',
  soft: '#615c54',
  line: '#b8b3a8',
  edge: '#77726a',
  accent: '#a63c20',
  shape: '#c9c3b8',
  wait: '#d8d3ca',
  lunch: '#f1eee8',
} as const;
