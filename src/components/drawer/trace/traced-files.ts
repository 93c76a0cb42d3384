import { drawerShape } from '../../../engine/shapes/place/drawer-shape.ts';
import type { Traced } from '../../../engine/shapes/trace/trace.ts';
import { newId } from '../../ui/new-id.ts';
import type { FilesRead } from '../read-files.ts';

/** What a chooser of pictures offers. */
export const PICTURE_FILES = 'image/png,image/jpeg,image/webp';

/** Whether a file is a picture of pixels, by what the browser or its name says. */
export function isPicture({ type, name }: File): boolean {
  return PICTURE_FILES.split(',').includes(type) || /\.(?:png|jpe?g|webp)$/iu.test(name);
}

/** A traced picture as a file that was read. */
export function tracedFiles({ shape }: Traced): FilesRead {
  const shapes = shape === null ? [] : [drawerShape(shape, newId())];
  return {
    shapes,
    pages: shapes.map(() => null),
    sized: shapes.map(() => true),
    whites: [],
    divided: [],
    remarks: [],
  };
}
