import { createCanvas, loadImage } from '@napi-rs/canvas';
import { expect, it } from 'vitest';
import { StudioPictures } from '../../../src/workers/jobs/pictures.ts';
import { printPng } from '../../../src/workers/jobs/print-png.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer } = smallProject();

it('should go on where the band before ended in a file that is painted in several', async () => {
  // Below the middle of the sheet, where a picture that began anew with each band would have bare paper.
  const pulls = [pullOf('p1', 's1', 'rust', { dyMm: 300 }), pullOf('p2', 's2', 'weed', { dyMm: 380, dxMm: 60 })];
  const shares: number[] = [];
  const blob = await printPng({ studio: drawer, pulls, size: { widthMm: 381, dpi: 100, relative: true } }, (share) => {
    shares.push(share);
    return true;
  });
  expect(shares.length).toBeGreaterThan(1);
  const image = await loadImage(Buffer.from(await blob!.arrayBuffer()));
  const context = createCanvas(image.width, image.height).getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(0, 0, image.width, image.height);
  // The same sheet painted at once: alike but for edges.
  const whole = new StudioPictures(drawer).thumbnail({ pulls, heightPx: image.height, relative: true });
  expect([whole.widthPx, whole.heightPx]).toEqual([image.width, image.height]);
  let far = 0;
  let printed = 0;
  for (let i = 0; i < data.length; i += 4) {
    if (Math.abs(data[i]! - whole.pixels[i]!) > 24) far++;
    if (whole.pixels[i]! < 250) printed++;
  }
  expect(printed).toBeGreaterThan(100_000);
  expect(far).toBeLessThan(printed / 100);
});
