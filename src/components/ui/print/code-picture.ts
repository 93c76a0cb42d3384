import { html, svg, type TemplateResult } from 'lit';
import { encode } from 'uqr';
import { say } from '../../words/en/ui/print.ts';

/** Addresses that mean this very device wherever they are opened. */
const HERE_ALONE = /^(localhost|127\.|\[::1\])/;

/** An address as a code to scan. @param label what a screen reader says */
export function codePicture(address: string, label: string): TemplateResult {
  const { data, size } = encode(address, { ecc: 'L', border: 4 });
  let path = '';
  for (const [y, row] of data.entries()) for (const [x, dark] of row.entries()) if (dark) path += `M${x} ${y}h1v1h-1z`;
  return html`<svg class="code" viewBox="0 0 ${size} ${size}" role="img" aria-label=${label} shape-rendering="crispEdges">
    ${svg`<path d=${path} fill="var(--black)" />`}
  </svg>`;
}

/** The address of this app with a fragment. */
export function addressWith(fragment: string): string {
  return `${location.origin}${location.pathname}${fragment}`;
}

/** Why another device cannot open addresses of this app, in a sentence; null where it can. */
export function outOfReach(): string | null {
  if (!HERE_ALONE.test(location.host)) return null;
  return say.phoneCannotReachOpen(location.host);
}
