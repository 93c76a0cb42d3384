import { plateDxf, plateSvg } from '../../../engine/output/plate/plate-files.ts';
import type { PlatesFound } from '../../../engine/output/plate/plates.ts';
import { zipFiles } from '../../../engine/visitfile/zip-files.ts';
import { fileNameOf } from '../../ui/download.ts';

/** Every sheet to be cut as SVG and as DXF, in one zip. */
export function platesZip({ sheets }: PlatesFound): Uint8Array {
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  const known = new Map<string, number>();
  return zipFiles(
    sheets.flatMap((sheet) => {
      // Two screens may have one number and name.
      const times = (known.get(sheet.name) ?? 0) + 1;
      known.set(sheet.name, times);
      const name = times === 1 ? sheet.name : `${sheet.name} (${times})`;
      return [
        { name: fileNameOf(name, 'svg'), bytes: bytes(plateSvg(sheet)), packed: false },
        { name: fileNameOf(name, 'dxf'), bytes: bytes(plateDxf(sheet)), packed: false },
      ];
    }),
  );
}
