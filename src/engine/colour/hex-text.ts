/**
 * A screen colour as people type it: '#a63c20', 'A63C20' or '#a52'.
 * @returns '#rrggbb', or null when it is no colour
 */
export function hexOfText(text: string): string | null {
  const digits = text.trim().replace(/^#/, '').toLowerCase();
  if (/^[0-9a-f]{6}$/.test(digits)) return `#${digits}`;
  if (/^[0-9a-f]{3}$/.test(digits)) return `#${[...digits].map((digit) => digit + digit).join('')}`;
  return null;
}
