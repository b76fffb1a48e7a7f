// Applies the styles of the views that are fetched, with whichever file of them comes first.

import { applyStyle } from "./style";
import style from "./styles/fetched.css";

applyStyle(style);
