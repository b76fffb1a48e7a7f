// Where links lead that are made here.

/**
 * The address that links are based on: where this page is, unless it was built to name another. Of a file on this phone
 * nobody else has anything, hence the other.
 */
export function linkBase(): string {
  return PUBLIC_ADDRESS || location.href.replace(/[?#].*$/, "");
}

/** Whether links name a file of this device: that address means nothing elsewhere. */
export function isFromFile(): boolean {
  return linkBase().startsWith("file:");
}
