/* What is seen here: taps for the look, a count, a height, a photograph, a line. */

import { el, fill } from "./dom.js";
import { nameOf, rowText } from "./nursery.js";
import { shrunk } from "./photo.js";

const CM_AN_INCH = 2.54;
const RECENT = 6;

export async function showLook(walk, main, key, lot) {
  const { words, nursery } = walk;
  const plant = nursery.plant(key);
  if (plant === null) {
    walk.go("find");
    return;
  }
  const row = lot ? nursery.row(lot) : null;
  const seen = new Set();
  const count = number("count", words("look.count"));
  const height = number("height", words(nursery.inches ? "look.height.inches" : "look.height.cm"));
  const remark = el("input", { id: "remark", maxlength: "300", autocomplete: "off", enterkeyhint: "done" });
  const preview = el("p", { id: "photo-said", role: "status" });
  const photo = el("input", {
    id: "photo",
    type: "file",
    accept: "image/*",
    capture: "environment",
    class: "hidden-input",
    onchange: () => (preview.textContent = photo.files.length ? words("look.photo.taken") : ""),
  });
  const trouble = el("p", { class: "trouble", role: "alert" });
  const keep = el("button", { class: "big keep", type: "submit" }, words("look.keep"));
  const form = el(
    "form",
    {
      novalidate: true,
      onsubmit: async (event) => {
        event.preventDefault();
        keep.disabled = true; // one thumb, two taps
        const sighting = await taken();
        trouble.textContent = fault(walk, sighting);
        if (trouble.textContent === "") await kept(walk, plant, row, sighting);
        else keep.disabled = false;
      },
    },
    el("fieldset", {}, el("legend", {}, words("look.looks")), chips(walk, seen)),
    row === null ? null : count.field,
    height.field,
    el("div", { class: "row" }, el("label", { for: "photo", class: "big quiet" }, words("look.photo")), photo, preview),
    el("div", { class: "row" }, el("label", { for: "remark", class: "field" }, words("look.remark")), remark),
    trouble,
    el("div", { class: "stick" }, keep),
  );

  async function taken() {
    const high = height.value();
    return {
      conditions: [...seen],
      count: row === null ? null : count.value(),
      heightCm: high === null ? null : Math.round(nursery.inches ? high * CM_AN_INCH : high),
      photo: photo.files.length ? await shrunk(photo.files[0]) : null,
      remark: remark.value.trim(),
    };
  }

  fill(
    main,
    el("a", { href: `#rows/${key}`, class: "back" }, words("back")),
    el("h1", {}, nameOf(plant)),
    el("p", { class: "which" }, row === null ? words("look.plant") : rowText(row)),
    form,
  );
}

/** Empty when it can be kept. */
function fault(walk, { conditions, count, heightCm, photo, remark }) {
  if (Number.isNaN(count)) return walk.words("look.fault.count");
  if (Number.isNaN(heightCm) || heightCm === 0 || heightCm > 3000) return walk.words("look.fault.height");
  const nothing = !conditions.length && count === null && heightCm === null && photo === null && remark === "";
  return nothing ? walk.words("look.fault.nothing") : "";
}

async function kept(walk, plant, row, sighting) {
  const { key, startedAt } = await walk.current();
  await walk.store.keep({
    key: walk.newKey(),
    walk: { key, startedAt },
    plant: plant.key,
    name: nameOf(plant),
    item: row?.item ?? null,
    lot: row?.lot ?? null,
    place: row?.place ?? "",
    size: row?.size ?? "",
    ...sighting,
    seenAt: new Date().toISOString(),
    state: "waiting",
    text: "",
  });
  if (row !== null) {
    const recent = ((await walk.store.get("recent")) ?? []).filter((lot) => lot !== row.lot);
    await walk.store.set("recent", [row.lot, ...recent].slice(0, RECENT));
  }
  await walk.refresh();
  walk.say(walk.words("look.kept", { name: nameOf(plant) }));
  walk.go("find");
  walk.sender.send();
}

function chips(walk, seen) {
  return el(
    "div",
    { class: "chips" },
    walk.nursery.conditions.map(([name, text]) => {
      const chip = el("button", {
        type: "button",
        "aria-pressed": "false",
        onclick: () => {
          if (!seen.delete(name)) seen.add(name);
          chip.setAttribute("aria-pressed", String(seen.has(name)));
        },
      }, text);
      return chip;
    }),
  );
}

/** A field for a whole number; `value()` is null when empty and NaN when it is none. */
function number(id, label) {
  const input = el("input", { id, type: "text", inputmode: "numeric", autocomplete: "off" });
  return {
    field: el("div", { class: "row" }, el("label", { for: id, class: "field" }, label), input),
    value: () => {
      const text = input.value.trim();
      if (text === "") return null;
      return /^\d{1,7}$/.test(text) ? Number(text) : NaN;
    },
  };
}
