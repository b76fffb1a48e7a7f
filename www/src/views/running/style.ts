// The style of the running system's parts, for every screen that shows them.

import { applyStyle } from "../../style";
import style from "../../styles/running.css";

applyStyle(style);
