import type { Page } from 'playwright';

/** A channel of 256 steps may differ by this much before a point counts as different. */
const STEPS = 40;

/**
 * Share of the points in which two PNG pictures differ, from 0 to 1; 1 when they are not of the same size, to a pixel. The
 * browser itself reads them.
 */
export const pictureDifference = (page: Page, kept: Buffer, taken: Buffer): Promise<number> =>
  page.evaluate(
    async ({ pictures, steps }) => {
      const [one, other] = await Promise.all(
        pictures.map(async (base64) => {
          const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
          const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
          const canvas = new OffscreenCanvas(picture.width, picture.height);
          const context = canvas.getContext('2d');
          context?.drawImage(picture, 0, 0);
          return context?.getImageData(0, 0, picture.width, picture.height);
        }),
      );
      if (!one || !other) return 1;
      if (Math.abs(one.width - other.width) > 1 || Math.abs(one.height - other.height) > 1) return 1;
      const [width, height] = [Math.min(one.width, other.width), Math.min(one.height, other.height)];
      let differing = 0;
      for (let y = 0; y < height; y += 1)
        for (let x = 0; x < width; x += 1) {
          const [a, b] = [4 * (y * one.width + x), 4 * (y * other.width + x)];
          const differs = [0, 1, 2].some((at) => Math.abs((one.data[a + at] ?? 0) - (other.data[b + at] ?? 0)) > steps);
          if (differs) differing += 1;
        }
      return differing / (width * height);
    },
    { pictures: [kept.toString('base64'), taken.toString('base64')], steps: STEPS },
  );
