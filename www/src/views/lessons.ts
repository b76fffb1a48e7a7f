// What the page teaches with, a file of its own in the built page: see fetched.tsx.

import "../glossary/tapped";
import { applyStyle } from "../style";
import style from "../styles/lessons.css";

applyStyle(style);

export { Glossary } from "./lessons/glossary";
export { StepQuestion } from "./lessons/step-question";
