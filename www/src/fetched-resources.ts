// What the views that are fetched share, with whichever file of them comes first: their styles and sentences.

import { messages } from "../locales/en-cards.ftl";
import { addMessages } from "./locale";
import { applyStyle } from "./style";
import style from "./styles/fetched.css";

addMessages(messages);
applyStyle(style);
