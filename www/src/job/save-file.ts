// Hands files to the phone. Nothing here needs the core: the screen of last resort saves the jobs with it.

/** Hands a file to the phone, which keeps it where it keeps what is downloaded. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read it only after the tap has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** `2026-03-02 Mill house.json`: the day of a moment and a name, with nothing in it that a file's name cannot have. */
export function fileName(moment: string, name: string, ending = "json"): string {
  const words = `${moment.slice(0, 10)} ${name}`.replace(/[^\p{L}\p{N} ._-]/gu, " ").replace(/\s+/g, " ");
  return `${words.trim().slice(0, 80)}.${ending}`;
}

export function backupName(made: string): string {
  return fileName(made, "Coldwright jobs");
}
