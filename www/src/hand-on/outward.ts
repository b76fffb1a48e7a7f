// The ways out of the page that a browser may lack or refuse: clipboard and the system's own sharing.

/** `off`: the person went back. */
export type Outcome = "done" | "off" | "refused";

/** Copies the text that stands in a field; without the clipboard (an address without a certificate) as a person would. */
export async function copyFrom(field: HTMLTextAreaElement): Promise<Outcome> {
  try {
    await navigator.clipboard.writeText(field.value);
    return "done";
  } catch {
    field.select();
    return copySelected() ? "done" : "refused";
  }
}

function copySelected(): boolean {
  try {
    return document.execCommand("copy");
  } catch {
    return false;
  }
}

/** Whether the system would take this from the page. */
export function canShare(what: ShareData): boolean {
  try {
    return "share" in navigator && (navigator.canShare?.(what) ?? what.files === undefined);
  } catch {
    return false;
  }
}

export async function share(what: ShareData): Promise<Outcome> {
  try {
    await navigator.share(what);
    return "done";
  } catch (reason) {
    return reason instanceof DOMException && reason.name === "AbortError" ? "off" : "refused";
  }
}
