// Where jobs are kept, and why not on this phone.

/**
 * - `private`: a private window;
 * - `refused`: the browser's settings, or it has no such storage;
 * - `blocked`: another window with an older version of this page must be closed or reloaded first;
 * - `newer`: a newer version of this page has stored here: reload;
 * - `full`: no space is left;
 * - `slow`: the database has not answered for three seconds; the list comes when it does;
 * - `failed`: anything else, such as a broken database.
 */
export type Reason = "private" | "refused" | "blocked" | "newer" | "full" | "slow" | "failed";

/** Whether the browser may throw away what is stored when it wants space. */
export type Persistence = "granted" | "refused" | "not asked";

export type Safekeeping = (
  | { readonly kept: "on this phone" }
  /** Jobs go on and can be exported; `unsaved` edits are written as soon as that is possible again. */
  | { readonly kept: "in memory only"; readonly reason: Reason }
) & {
  readonly persistence: Persistence;
  readonly unsaved: number;
  /** Jobs that came back from the second copy because the browser had thrown the database away; their undo is gone. */
  readonly broughtBack: number;
};

/**
 * Why a job cannot be read:
 * - `not-a-document`, `no-document`: what is stored is none, or nothing is;
 * - `bad-edit`: an edit is none or finds no place;
 * - `newer`: a newer version of this page has written it;
 * - `out-of-reach`: the database does not give it just now.
 */
export type Unreadable = "not-a-document" | "no-document" | "bad-edit" | "newer" | "out-of-reach";

/** The reason behind what the database threw. */
export function reasonOf(problem: unknown): Reason {
  switch (problem instanceof DOMException ? problem.name : "") {
    case "QuotaExceededError":
      return "full";
    case "SecurityError":
    case "NotAllowedError":
      return "refused";
    // How windows in private mode say it.
    case "InvalidStateError":
      return "private";
    case "VersionError":
      return "newer";
    default:
      return "failed";
  }
}
