// Photos of a stage: the plate, a gauge, the scale. Taken or chosen, captioned, taken out.

import type { JSX } from "preact";
import { useState } from "preact/hooks";
import type { Stage } from "../../core";
import { JobFields } from "../../job/job-fields";
import { nowIn, useJob } from "../../job/job-context";
import { itemsAt, textAt } from "../../job/job-path";
import { momentText } from "../../job/moment";
import { scaledPhoto } from "../../job/scaled-photo";
import { message } from "../../locale";
import { puttingIn, takingOut } from "../../store/jobs";
import { PhotoPicture } from "./photo-picture";

export function Photos({ stage }: { readonly stage: Stage }): JSX.Element {
  const { shelf, job, document } = useJob();
  const [unread, setUnread] = useState<readonly string[]>([]);
  const photos = itemsAt(document, "photos").filter((photo) => textAt(photo, "stage") === stage);
  const add = async (files: readonly File[]): Promise<void> => {
    setUnread([]);
    for (const file of files) {
      const photo = await scaledPhoto(file).catch(() => undefined);
      if (photo === undefined) {
        setUnread((names) => [...names, file.name]);
        continue;
      }
      const id = await shelf.addPhoto(job.id, photo);
      job.apply(puttingIn(["photos"], { id, stage, at: nowIn(job.document) }));
    }
  };
  return (
    <section class="photos">
      <h2>{message("photos-heading")}</h2>
      <div class="photo-ways">
        <PhotoInput word="take" onFiles={add} />
        <PhotoInput word="choose" onFiles={add} />
      </div>
      <div role="status">
        {unread.map((name) => (
          <p key={name} class="problem">
            {message("photos-unreadable", { name })}
          </p>
        ))}
      </div>
      {photos.map((photo) => {
        const at = textAt(photo, "at");
        return (
          <figure key={photo.id} data-photo={photo.id}>
            <PhotoPicture id={photo.id} caption={textAt(photo, "caption")} />
            <figcaption>
              <small>{momentText(at)}</small>
              <JobFields at={["photos", `#${photo.id}`]} fields={[{ name: "caption", words: true }]} />
              <button data-action="take-out-photo" onClick={() => job.apply(takingOut(["photos", `#${photo.id}`]))}>
                {message("photos-take-out")}
              </button>
            </figcaption>
          </figure>
        );
      })}
    </section>
  );
}

/** The camera, or the pictures that are there. */
function PhotoInput({ word, onFiles }: {
  readonly word: "take" | "choose";
  readonly onFiles: (files: readonly File[]) => Promise<void>;
}): JSX.Element {
  const isCamera = word === "take";
  return (
    <label class="photo-add">
      <input
        type="file"
        accept="image/*"
        name={`photo-${word}`}
        {...(isCamera ? { capture: "environment" } : { multiple: true })}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same picture can be chosen again.
          currentTarget.value = "";
          void onFiles(files);
        }}
      />
      <span>{message(`photos-${word}`)}</span>
    </label>
  );
}
