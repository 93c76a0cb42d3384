/** Each of red, green and blue at least this of 255 is taken as white; no source, as light as papers are. */
const WHITE_FROM = 245;

/** The named colours whose parts are all at least `WHITE_FROM`. Source: CSS Color 4, named colours. */
const WHITE_NAMES: ReadonlySet<string> = new Set(['white', 'snow', 'ghostwhite', 'whitesmoke', 'mintcream']);

/** The named colours of CSS 2.1 §4.3.6, as drawings write them; others keep their names. */
const NAMED: Readonly<Record<string, string>> = {
  black: '#000000', silver: '#c0c0c0', gray: '#808080', grey: '#808080', white: '#ffffff', maroon: '#800000', red: '#ff0000',
  purple: '#800080', fuchsia: '#ff00ff', green: '#008000', lime: '#00ff00', olive: '#808000', yellow: '#ffff00', navy: '#000080',
  blue: '#0000ff', teal: '#008080', aqua: '#00ffff', orange: '#ffa500',
};

/** One text for a colour however it is written, opacity left out; lower case. */
export function colourKey(text: string): string {
  const named = NAMED[text];
  if (named !== undefined) return named;
  const short = /^#([\da-f])([\da-f])([\da-f])[\da-f]?$/u.exec(text);
  if (short !== null) return `#${short.slice(1).map((sign) => sign + sign).join('')}`;
  const long = /^#([\da-f]{6})(?:[\da-f]{2})?$/u.exec(text);
  if (long !== null) return `#${long[1]}`;
  const call = /^rgba?\(\s*(\d+)[\s,]+(\d+)[\s,]+(\d+)\s*(?:[,/].*)?\)$/u.exec(text);
  if (call === null) return text;
  return `#${call.slice(1, 4).map((part) => Math.min(255, Number(part)).toString(16).padStart(2, '0')).join('')}`;
}

/** Whether a solid colour is white or nearly so; a colour written in another way than as sRGB is not. */
export function isWhite(color: string): boolean {
  const text = color.trim().toLowerCase();
  if (WHITE_NAMES.has(text)) return true;
  const short = /^#([\da-f])([\da-f])([\da-f])[\da-f]?$/u.exec(text);
  if (short !== null) return short.slice(1).every((digit) => Number.parseInt(digit, 16) * 17 >= WHITE_FROM);
  const long = /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})(?:[\da-f]{2})?$/u.exec(text);
  if (long !== null) return long.slice(1).every((pair) => Number.parseInt(pair, 16) >= WHITE_FROM);
  const call = /^(rgb|hsl)a?\(([^)]*)\)$/u.exec(text);
  if (call === null) return false;
  const parts = (call[2] ?? '').split(/[\s,/]+/u).filter((part) => part !== '');
  const partOf255 = (part: string): number => Number.parseFloat(part) * (part.endsWith('%') ? 2.55 : 1);
  if (call[1] === 'hsl') return Number.parseFloat(parts[2] ?? '') * 2.55 >= WHITE_FROM;
  return parts.length >= 3 && parts.slice(0, 3).every((part) => partOf255(part) >= WHITE_FROM);
}
