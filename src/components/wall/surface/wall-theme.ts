import type { WallTheme } from '../../canvas/wall-scene.ts';

function rgb(hex: string): [number, number, number] {
  const digits = hex.trim().replace('#', '');
  const whole = digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits;
  const value = Number.parseInt(whole, 16);
  if (!Number.isFinite(value)) return [0.5, 0.5, 0.5];
  return [(value >> 16) / 255, ((value >> 8) & 255) / 255, (value & 255) / 255];
}

/** The page's colours as the wall's shader and numbers want them. */
export function themeOf(element: HTMLElement): WallTheme {
  const style = getComputedStyle(element);
  const wall = rgb(style.getPropertyValue('--wall'));
  const dark = wall[0] + wall[1] + wall[2] < 1.2;
  return {
    accent: [...rgb(style.getPropertyValue('--accent')), 1],
    shadow: dark ? [0, 0, 0, 0.5] : [0.16, 0.12, 0.08, 0.3],
    label: style.getPropertyValue('--ink-soft').trim(),
    strong: style.getPropertyValue('--ink').trim(),
    wall: style.getPropertyValue('--wall').trim(),
    font: style.fontFamily,
  };
}
