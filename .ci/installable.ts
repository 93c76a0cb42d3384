import { createHash } from 'node:crypto';
import { Resvg } from '@resvg/resvg-js';
import type { Plugin } from 'vite';
import { OFFLINE_FILE } from '../src/workers/api/offline-api.ts';

const MANIFEST_FILE = 'pullstack.webmanifest';
/** Sizes that a home screen asks for, px. */
const ICON_SIZES = [192, 512];

/** Two films over each other on paper, with the room around that a round mask takes. */
const MARK = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" fill="#f4f1ea"/>
<rect x="7" y="7" width="11" height="11" fill="#b8472a"/><rect x="13" y="13" width="11" height="11" fill="#274b57" fill-opacity=".8"/></svg>`;

const iconFile = (size: number): string => `icon-${size}.png`;

function manifest(): string {
  return JSON.stringify({
    name: 'Pullstack',
    description: 'Layered screenprints: found, planned and pulled.',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#f4f1ea',
    theme_color: '#f4f1ea',
    icons: ICON_SIZES.map((size) => ({ src: iconFile(size), sizes: `${size}x${size}`, type: 'image/png', purpose: 'any maskable' })),
  });
}

/** Makes a build one that can be installed and opens without a network: manifest, icons, and the list of files to keep. */
export function installable(): Plugin {
  return {
    name: 'installable',
    // What is built for Node, such as the fuzz script, is no page.
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    enforce: 'post',
    transformIndexHtml: {
      order: 'pre',
      handler: (html, { path }) =>
        path.endsWith('kit.html') ? html : html.replace('</head>', `  <link rel="manifest" href="./${MANIFEST_FILE}" />\n  </head>`),
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        this.emitFile({ type: 'asset', fileName: MANIFEST_FILE, source: manifest() });
        for (const size of ICON_SIZES) {
          const png = new Resvg(MARK, { fitTo: { mode: 'width', value: size } }).render().asPng();
          this.emitFile({ type: 'asset', fileName: iconFile(size), source: png });
        }
        const kept = Object.values(bundle).filter(({ fileName }) => fileName !== OFFLINE_FILE && !fileName.endsWith('kit.html'));
        const entries = kept.map((file) => ({
          url: file.fileName,
          // A file of assets/ bears its content in its name.
          revision: file.fileName.startsWith('assets/')
            ? null
            : createHash('sha256')
                .update(file.type === 'chunk' ? file.code : file.source)
                .digest('hex')
                .slice(0, 16),
        }));
        const worker = bundle[OFFLINE_FILE];
        if (worker?.type !== 'chunk') throw new Error(`The build has no ${OFFLINE_FILE} to write the list of its files into.`);
        if (worker.imports.length > 0) throw new Error(`${OFFLINE_FILE} stands by itself, but imports ${worker.imports.join(', ')}.`);
        worker.code = worker.code.replace(/\b\w+\.__WB_MANIFEST\b/, JSON.stringify(entries));
      },
    },
  };
}
