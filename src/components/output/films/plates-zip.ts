import { plateDxf, plateSvg } from '../../../engine/output/plate/plate-files.ts';
import type { PlatesFound } from '../../../engine/output/plate/plates.ts';
import { zipFiles } from '../../../engine/visitfile/zip-files.ts';
import { fileNameOf } from '../../ui/download.ts';

/** Every sheet to be cut as SVG and as DXF, in one zip. */
export function platesZip({ sheets }: PlatesFound): Uint8Array {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  return zipFiles(
    sheets.flatMap((sheet) => [
      { name: fileNameOf(sheet.name, 'svg'), bytes: bytes(plateSvg(sheet)), packed: false },
      { name: fileNameOf(sheet.name, 'dxf'), bytes: bytes(plateDxf(sheet)), packed: false },
    ]),
  );
}
