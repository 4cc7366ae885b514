import { words } from "../../words";
import { element } from "../element";
import { button } from "../parts/button";
import { outcomeLine } from "../parts/outcome";
import { question } from "../parts/question";
import type { PaneState } from "../state";
import { askTake, keepPicture, pictureIds, putPicture, takePicture } from "./actions";
import { lastAdded, type PictureKey } from "./state";

const say = words.pictures;

/** Under a picture: into the workbook and back. */
export function intoWorkbook(key: PictureKey, name: string, state: PaneState): HTMLElement {
  const { said, asking } = state.pictures;
  const sheet = lastAdded(state.pictures, key)?.sheets[0];
  return element(
    "div",
    { class: "into-workbook" },
    element(
      "div",
      { class: "side-by-side" },
      button(putPicture, state, {
        value: key,
        attributes: { id: pictureIds.put(key), "aria-label": say.putOf(name) },
      }),
      sheet !== undefined &&
        asking !== key &&
        button(askTake, state, {
          value: key,
          attributes: { id: pictureIds.take(key), "aria-label": say.takeOf(sheet) },
        }),
    ),
    sheet !== undefined &&
      asking === key &&
      question({
        id: pictureIds.question,
        asks: say.question(sheet),
        yes: button(takePicture, state),
        no: button(keepPicture, state),
      }),
    outcomeLine(said?.key === key ? said : undefined),
  );
}
