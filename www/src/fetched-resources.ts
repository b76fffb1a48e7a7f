// What the views that are fetched share, with whichever file of them comes first: their styles.

import { applyStyle } from "./style";
import style from "./styles/fetched.css";

applyStyle(style);
