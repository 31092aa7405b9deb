/** Has the page turn a picture into PNG bytes: it is the only part of the extension that can draw. */
import type { ToHost, ToPage } from './messages.ts';

export interface Rasteriser {
  readonly rasterise: (svg: string, scale: number) => Promise<Uint8Array>;
  readonly pageIsReady: () => void;
  /** Takes the page's answer; anything else is left to others. */
  readonly receive: (message: ToHost) => void;
  /** The page is gone for good. */
  readonly dispose: () => void;
}

interface Job {
  readonly message: ToPage;
  readonly resolve: (png: Uint8Array) => void;
  readonly reject: (error: Error) => void;
}

export function createRasteriser(post: (message: ToPage) => void): Rasteriser {
  const jobs = new Map<number, Job>();
  let last = 0;
  let ready = false;
  const finish = (id: number): Job | undefined => {
    const job = jobs.get(id);
    jobs.delete(id);
    return job;
  };
  return {
    rasterise: (svg, scale) =>
      new Promise((resolve, reject) => {
        const job = ++last;
        const message: ToPage = { type: 'rasterise', job, svg, scale };
        jobs.set(job, { message, resolve, reject });
        if (ready) post(message);
      }),
    pageIsReady: () => {
      ready = true;
      for (const { message } of jobs.values()) post(message);
    },
    receive: (message) => {
      if (message.type === 'raster') finish(message.job)?.resolve(new Uint8Array(message.png));
      if (message.type === 'rasterFailed') finish(message.job)?.reject(new Error(message.message));
    },
    dispose: () => {
      for (const { reject } of jobs.values()) reject(new Error('The preview was closed.'));
      jobs.clear();
    },
  };
}
