/** What makes a pattern slow on some text, in words; null when nothing does. */
export function slowness(pattern: string, flags: string): string | null;
