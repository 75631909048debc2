/** Which part's sheet lies open, and which field of it is looked for. */
export class OpenSheet {
  part = $state<string | null>(null);
  /** Path of the field to go to when the sheet opens; null for its heading. */
  path = $state<string | null>(null);
  /** Key of the part whose sheet was closed last. */
  left: string | null = null;

  open(part: string, path: string | null = null): void {
    this.part = part;
    this.path = path;
  }

  close(): void {
    this.left = this.part;
    this.part = null;
    this.path = null;
  }
}
