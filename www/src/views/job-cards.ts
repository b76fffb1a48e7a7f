// The cards of the job's calculations with their styles, a file of their own in the built page: see fetched.tsx.

import { applyStyle } from "../style";
import style from "../styles/job-cards.css";

applyStyle(style);

export { PipeFriction } from "./pipe-friction";
