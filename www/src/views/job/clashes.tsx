// Places that this window and another have both written to: what each wrote, and which of the two is to stand.

import type { JSX } from "preact";
import { useJob } from "../../job/job-context";
import { contentText, placeText } from "../../job/place-words";
import { message } from "../../locale";
import { changesOf, isSame, read, type Clash, type Tree } from "../../store/jobs";

export function Clashes(): JSX.Element | null {
  const { job, document } = useJob();
  if (job.clashes.length === 0) return null;
  return (
    <section class="clashes" role="alert">
      <h2>{message("clash-heading")}</h2>
      <ul>
        {job.clashes.map((clash) => (
          <li key={clash.path.join(".")} data-clash={clash.path.join(".")}>
            <b>{placeText(document, clash.path, clash.mine ?? clash.theirs)}</b>
            <ClashContents clash={clash} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function ClashContents({ clash: { path, mine, theirs } }: { readonly clash: Clash }): JSX.Element {
  const { job, document } = useJob();
  const standing = read(document, path);
  const letStand = (wanted: Tree | undefined): void => {
    if (job.apply(changesOf([{ path, mine: standing, theirs: wanted }], document))) job.dismiss(path);
  };
  const isOfNeither = !isSame(standing, mine) && !isSame(standing, theirs);
  return (
    <>
      <dl>
        <dt>{message("clash-mine")}</dt>
        <dd>{contentText(mine)}</dd>
        <dt>{message("clash-theirs")}</dt>
        <dd>{contentText(theirs)}</dd>
        <dt>{message("clash-standing")}</dt>
        <dd>{contentText(standing)}</dd>
      </dl>
      <div class="job-actions">
        <button class="framed" data-action="clash-mine" onClick={() => letStand(mine)}>
          {message("clash-take-mine")}
        </button>
        <button class="framed" data-action="clash-theirs" onClick={() => letStand(theirs)}>
          {message("clash-take-theirs")}
        </button>
        {isOfNeither && (
          <button class="framed" data-action="clash-leave" onClick={() => job.dismiss(path)}>
            {message("clash-leave")}
          </button>
        )}
      </div>
    </>
  );
}
