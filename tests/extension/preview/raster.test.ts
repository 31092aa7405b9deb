/** Having the page draw: jobs wait for the page, and none is left hanging. */
import { expect, test } from 'vitest';
import type { ToPage } from '../../../extension/preview/messages.ts';
import { createRasteriser } from '../../../extension/preview/raster.ts';

test('a job is sent when the page is ready, and answered by its number', async () => {
  const sent: ToPage[] = [];
  const raster = createRasteriser((message) => sent.push(message));
  const first = raster.rasterise('<svg/>', 2);
  expect(sent).toEqual([]);
  raster.pageIsReady();
  const second = raster.rasterise('<svg/>', 1);
  expect(sent.map((message) => message.type === 'rasterise' && [message.job, message.scale])).toEqual([
    [1, 2],
    [2, 1],
  ]);
  raster.receive({ type: 'raster', job: 2, png: new Uint8Array([2]) });
  raster.receive({ type: 'raster', job: 1, png: new Uint8Array([1]) });
  expect([await first, await second]).toEqual([new Uint8Array([1]), new Uint8Array([2])]);
});

test('a page that cannot draw, or is closed, ends the job with a reason', async () => {
  const raster = createRasteriser(() => {});
  const [first, second] = [raster.rasterise('<svg/>', 2), raster.rasterise('<svg/>', 2)];
  raster.receive({ type: 'rasterFailed', job: 1, message: 'too large' });
  raster.dispose();
  await expect(first).rejects.toThrow('too large');
  await expect(second).rejects.toThrow('closed');
});
