import type { Plugin } from 'vite';

/** Lets the development server's page hear of changed files; what is built speaks to nobody else. */
export function devConnection(): Plugin {
  return {
    name: 'dev-connection',
    apply: 'serve',
    transformIndexHtml: (html) => html.replace("connect-src 'self'", "connect-src 'self' ws:"),
  };
}
