// Saves all jobs from the screen of last resort: it opens the shelf anew, whatever has become of the one in use.

import { openShelf } from "../store/jobs";
import { backupName, saveFile } from "./save-file";

/** Throws where nothing can be read. */
export async function saveAllJobs(): Promise<void> {
  const shelf = await openShelf();
  if (shelf.safekeeping.kept !== "on this phone") throw new Error(shelf.safekeeping.reason);
  saveFile(await shelf.backup(), backupName(new Date().toISOString()));
}
