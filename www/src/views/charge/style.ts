// The style of the charge's parts, for every screen that shows them.

import { applyStyle } from "../../style";
import style from "../../styles/charge.css";

applyStyle(style);
