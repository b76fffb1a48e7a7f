// A photo of the job, fetched from where photos are kept.

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { useJob } from "../../job/job-context";
import { message } from "../../locale";

export function PhotoPicture({ id, caption }: { readonly id: string; readonly caption: string }): JSX.Element {
  const { shelf } = useJob();
  const [address, setAddress] = useState<string | undefined>(undefined);
  const [isAbsent, setAbsent] = useState(false);
  useEffect(() => {
    let isLeft = false;
    let made: string | undefined;
    void shelf.photo(id).then((photo) => {
      if (isLeft) return;
      if (photo === undefined) setAbsent(true);
      else setAddress((made = URL.createObjectURL(photo)));
    });
    return () => {
      isLeft = true;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [shelf, id]);
  if (isAbsent) return <p class="problem">{message("photos-absent")}</p>;
  const text = caption === "" ? message("photos-unnamed") : caption;
  return address === undefined ? <div class="photo-waiting" /> : <img src={address} alt={text} />;
}
