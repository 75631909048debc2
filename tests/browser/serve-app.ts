import type { TestProject } from 'vitest/node';
import { findBrowser } from '../../scripts/find-browser.ts';
import { serveBuild } from '../../scripts/serve-build.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    appUrl: string;
    browserPath: string;
  }
}

/** Once for all browser tests: find the browser, build the app, serve it. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  project.provide('browserPath', findBrowser());
  const served = await serveBuild(0);
  project.provide('appUrl', served.url);
  return () => served.close();
}
