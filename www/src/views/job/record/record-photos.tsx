// The photos of all stages, on a page of their own.

import type { JSX } from "preact";
import { useJob } from "../../../job/job-context";
import { itemsAt, textAt } from "../../../job/job-path";
import { momentText } from "../../../job/moment";
import { message } from "../../../locale";
import { PhotoPicture } from "../photo-picture";

export function RecordPhotos(): JSX.Element | null {
  const { document } = useJob();
  const photos = itemsAt(document, "photos");
  if (photos.length === 0) return null;
  return (
    <section class="record-photos">
      <h3>{message("photos-heading")}</h3>
      {photos.map((photo) => {
        const stage = textAt(photo, "stage");
        const told = [stage === "" ? "" : message(`stage-${stage}`), textAt(photo, "caption"), momentText(textAt(photo, "at"))];
        return (
          <figure key={photo.id} data-photo={photo.id}>
            <PhotoPicture id={photo.id} caption={textAt(photo, "caption")} />
            <figcaption>{told.filter((text) => text !== "").join(", ")}</figcaption>
          </figure>
        );
      })}
    </section>
  );
}
