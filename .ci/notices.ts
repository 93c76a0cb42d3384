import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { LICENCE_TEXTS } from './licence-texts.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Where a build puts the notices, beside index.html. */
export const NOTICES_FILE = 'licences.txt';

/** A package of the lockfile. */
interface LockedPackage {
  version?: string;
  license?: string;
  dev?: boolean;
}

/** The packages of package-lock.json by their folder; the project itself is left out. */
export function lockedPackages(): [string, LockedPackage][] {
  const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as { packages: Record<string, LockedPackage> };
  return Object.entries(lock.packages).filter(([folder]) => folder !== '');
}

/** Those whose code, letters or types the page is built from, and what the build itself writes into it. */
export function shippedPackages(): [string, LockedPackage][] {
  return lockedPackages().filter(
    ([folder, { dev }]) => dev !== true || folder === 'node_modules/vite' || folder === 'node_modules/rolldown',
  );
}

/** The name of a package in its folder, which may lie in another's. */
export function nameOf(folder: string): string {
  return folder.slice(folder.lastIndexOf('node_modules/') + 'node_modules/'.length);
}

/**
 * The licence of a package in its own words: its file, the part of its README, or, when it names a licence
 * alone, that licence with its author.
 * @throws Error naming the package when none is found
 */
export function licenceText(folder: string, licence: string | undefined): string {
  const files = readdirSync(join(ROOT, folder)).filter((file) => /^(licen[cs]e|copying|notice)/i.test(file));
  if (files.length > 0) return files.map((file) => readFileSync(join(ROOT, folder, file), 'utf8').trim()).join('\n\n');
  const readme = readFileSync(join(ROOT, folder, 'README.md'), 'utf8');
  const inReadme = /^Copyright [^]*?Permission is hereby granted[^]*?DEALINGS IN THE\s+SOFTWARE\./m.exec(readme)?.[0];
  if (inReadme !== undefined) return inReadme;
  const { author } = JSON.parse(readFileSync(join(ROOT, folder, 'package.json'), 'utf8')) as { author?: string | { name: string } };
  const text = LICENCE_TEXTS[licence ?? ''];
  if (author === undefined || text === undefined) {
    throw new Error(`${folder} comes without the text of its licence (${licence ?? 'none named'}): add one to .ci/licence-texts.ts.`);
  }
  return `Copyright (c) ${typeof author === 'string' ? author.replace(/ *<.*/, '') : author.name}\n\n${text}`;
}

/** The notices file: Pullstack's own licence, then that of every package that the page is built from. */
export function noticesText(): string {
  const own = /^## Licence\n+([^]*)/m.exec(readFileSync(join(ROOT, 'README.md'), 'utf8'))?.[1]?.trim();
  if (own === undefined) throw new Error('README.md has no part “Licence”: the notices begin with it.');
  const parts = shippedPackages()
    .map(([folder, { version, license }]) => `${nameOf(folder)} ${version ?? ''} (${license ?? ''})\n\n${licenceText(folder, license)}`)
    .sort();
  const all = [`Pullstack\n\n${own}`, 'Pullstack is built from the packages below; PDFs embed letters of DejaVu Sans Condensed.', ...parts];
  return `${all.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
}

/** Writes the notices into a build. */
export function notices(): Plugin {
  return {
    name: 'notices',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: NOTICES_FILE, source: noticesText() });
    },
    configureServer(server) {
      server.middlewares.use(`/${NOTICES_FILE}`, (_request, response) => {
        response.setHeader('Content-Type', 'text/plain; charset=utf-8');
        response.end(noticesText());
      });
    },
  };
}
