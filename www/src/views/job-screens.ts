// The screens of the jobs, a file of their own in the built page: see fetched.tsx.

import "../fetched-resources";
import { applyStyle } from "../style";
import style from "../styles/jobs.css";

applyStyle(style);

export { Jobs } from "./jobs";
export { Handed } from "./handed";
export { Job } from "./job";
export { JobDefaults } from "./job-defaults";
