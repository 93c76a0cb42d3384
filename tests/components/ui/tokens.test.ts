import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../../../src/components', import.meta.url));

/** Files that hold values of their own, and why. */
const EXCEPTIONS: Record<string, string> = {
  'output/pdf-colours.ts': 'a PDF file knows no custom properties',
  'press/sheet/pull-sheet.ts': 'the margin of a printed page inherits no custom properties',
};

function sources(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return sources(path);
    return /\.(ts|css)$/.test(entry.name) ? [path] : [];
  });
}

/** A source without its comments, which may quote what people type. */
function codeOf(path: string): string {
  return readFileSync(join(ROOT, path), 'utf8')
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/^\s*\/\/.*$/gm, '');
}

const all = sources('');
const rooms = all.filter((path) => !path.startsWith('ui/') && !(path in EXCEPTIONS));

function found(pattern: RegExp, paths = rooms): string[] {
  return paths.flatMap((path) => [...codeOf(path).matchAll(pattern)].map(([text]) => `${path}: ${text.trim()}`));
}

/** The values of a family of tokens in a style sheet, each name once. */
function family(sheet: string, name: string): string[] {
  const declared = [...codeOf(sheet).matchAll(new RegExp(`--${name}-[a-z0-9]+: ([^;]+);`, 'g'))];
  return declared.map(([, value]) => value ?? '');
}

describe('tokens', () => {
  it('should be the only sizes of type, colours and shadows that rooms know', () => {
    expect(rooms.length).toBeGreaterThan(100);
    expect(found(/font-size:(?!\s*(?:var\(--|inherit))[^;]+;|font-size="[^"]*"/g)).toEqual([]);
    expect(found(/^\s*font:\s*(?:\d{3} )?[\d.]+(?:px|pt|r?em)[^;]*;/gm)).toEqual([]);
    expect(found(/#[0-9a-f]{3,8}\b|\b(?:rgb|hsl)a?\( ?[\d.]|\b(?:oklch|oklab|lab|lch)\( ?[\d.]+%/gi)).toEqual([]);
    expect(found(/box-shadow:(?!\s*(?:none|var\(--[\w-]+\)(?:, var\(--[\w-]+\))*);)[^;]*;/g)).toEqual([]);
    expect(found(/drop-shadow\([^)]*/g)).toEqual([]);
    expect(found(/(?:^|[^-\w])(?:(?:row|column)-)?gap:[^;]*\b(?:[2-9]|\d\d+)px[^;]*;/gm)).toEqual([]);
    expect(found(/border-radius:[^;]*px[^;]*;/g)).toEqual([]);
  });

  it('should be few: eight sizes of type on screen and on paper, and one rising scale of room', () => {
    expect(family('ui/theme.css', 'type')).toHaveLength(8);
    expect(codeOf('ui/paper.css').match(/--paper-[a-z]+: [\d.]+pt;/g)).toHaveLength(8);
    const room = family('ui/theme.css', 'space').map((value) => Number.parseFloat(value));
    expect(room.length).toBeLessThanOrEqual(11);
    expect(room).toEqual(room.toSorted((a, b) => a - b));
  });

  it('should each be declared where they are used', () => {
    const text = all.map(codeOf).join('\n');
    const declared = new Set([...text.matchAll(/(--[a-z][\w-]*)(?=:|', )/g)].map(([, name]) => name));
    const used = new Set([...text.matchAll(/var\((--[a-z][\w-]*)\)/g)].map(([, name]) => name));
    expect(used.size).toBeGreaterThan(30);
    expect([...used].filter((name) => !declared.has(name))).toEqual([]);
  });
});
