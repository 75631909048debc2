import { pageOf } from './page-list.ts';
import type { PageId } from './page-list.ts';

/** The page that the address bar names. Lives as long as the app. */
export class Route {
  page = $state<PageId>(pageOf(location.hash));

  constructor() {
    addEventListener('hashchange', () => (this.page = pageOf(location.hash)));
  }
}
