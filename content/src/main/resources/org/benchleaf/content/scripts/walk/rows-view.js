/* A plant may stand in several rows and sizes. */

import { el, fill } from "./dom.js";
import { nameOf, rowText } from "./nursery.js";

export async function showRows(walk, main, key, item) {
  const plant = walk.nursery.plant(key);
  if (plant === null) {
    walk.go("find");
    return;
  }
  const rows = plant.rows.filter((row) => !item || row.item === Number(item));
  fill(
    main,
    el("a", { href: "#find", class: "back" }, walk.words("back")),
    el("h1", {}, nameOf(plant)),
    el("p", {}, walk.words(rows.length ? "rows.which" : "rows.none")),
    el(
      "ul",
      { class: "choices" },
      rows.map((row) =>
        el("li", {}, el("a", { href: `#look/${key}/${encodeURIComponent(row.lot)}` },
          el("strong", {}, rowText(row)),
          el("span", {}, walk.words("rows.lot", { lot: row.lot })))),
      ),
      el("li", {}, el("a", { href: `#look/${key}` }, el("strong", {}, walk.words("rows.plant")))),
    ),
  );
}
