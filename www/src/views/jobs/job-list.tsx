// The list of jobs, with search and the ways to copy and to take out.

import type { JSX } from "preact";
import { jobPlace } from "../../job/stages";
import type { Shelf } from "../../store/jobs";

export function JobList({ shelf }: { readonly shelf: Shelf }): JSX.Element {
  return (
    <ol class="job-list">
      {shelf.list().map(({ id, name, glance }) => (
        <li key={id}>
          <a href={jobPlace(id)}>
            <b>{name}</b>
            <span>{glance}</span>
          </a>
        </li>
      ))}
    </ol>
  );
}
