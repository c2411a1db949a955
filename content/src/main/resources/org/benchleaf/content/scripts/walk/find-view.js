/* Which row is it? By its code, by a name typed or said, from the rows just seen or the ones next to them. */

import { el, fill } from "./dom.js";
import { nameOf, rowText } from "./nursery.js";
import { readAddress, scanCamera, scanPicture } from "./scan.js";

const SHOWN = 8;
const NEAR = 4;

export async function showFind(walk, main) {
  const { words } = walk;
  const results = el("div", { id: "results", "aria-live": "polite" });
  const typed = el("input", {
    id: "typed",
    type: "search",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    enterkeyhint: "search",
    "aria-describedby": "typed-help",
    oninput: () => showHits(walk, results, typed),
  });
  const camera = el("div", { class: "camera", hidden: true });
  const stopping = { current: new AbortController() };
  const found = (text) => codeRead(walk, text);
  fill(
    main,
    el("h1", {}, words("find.title")),
    el("button", { class: "big scan", type: "button", onclick: () => scan(walk, camera, stopping, found) }, words("find.scan")),
    camera,
    el("label", { for: "typed", class: "field" }, words("find.name")),
    typed,
    el("p", { id: "typed-help", class: "help" }, words("find.help")),
    results,
  );
  const refreshed = () => showHits(walk, results, typed);
  addEventListener("nursery", refreshed);
  await showSuggestions(walk, results, typed);
  return () => {
    removeEventListener("nursery", refreshed);
    stopping.current.abort();
  };
}

async function showHits(walk, results, input) {
  const typed = input.value;
  if (typed.trim() === "") {
    await showSuggestions(walk, results, input);
    return;
  }
  const hits = walk.nursery.find(typed, SHOWN);
  fill(
    results,
    hits.length ? list(hits.map((hit) => plantLink(walk, hit))) : el("p", {}, walk.words("find.nothing", { typed })),
  );
}

async function showSuggestions(walk, results, input) {
  if (walk.nursery.isEmpty) {
    fill(results, el("p", { class: "note" }, walk.words("find.empty")));
    return;
  }
  const seen = (await walk.store.get("recent")) ?? [];
  if (input.value.trim() !== "") return; // typed meanwhile: the hits stay
  const recent = seen.map((lot) => walk.nursery.row(lot)).filter((row) => row);
  const near = recent.length ? walk.nursery.near(recent[0].lot, NEAR) : [];
  fill(
    results,
    near.length ? [el("h2", {}, walk.words("find.near")), list(near.map((row) => rowLink(walk, row)))] : null,
    recent.length ? [el("h2", {}, walk.words("find.recent")), list(recent.map((row) => rowLink(walk, row)))] : null,
  );
}

const list = (items) => el("ul", { class: "choices" }, items.map((item) => el("li", {}, item)));

function plantLink(walk, { plant, matched }) {
  const name = nameOf(plant);
  return el(
    "a",
    { href: `#rows/${plant.key}` },
    el("strong", {}, name),
    matched !== name ? el("span", {}, matched) : null,
    plant.rows.length ? null : el("span", {}, walk.words("find.no-rows")),
  );
}

export function rowLink(walk, row) {
  return el(
    "a",
    { href: `#look/${row.plant.key}/${encodeURIComponent(row.lot)}` },
    el("strong", {}, nameOf(row.plant)),
    el("span", {}, rowText(row)),
  );
}

async function scan(walk, camera, stopping, found) {
  const { words } = walk;
  stopping.current.abort();
  stopping.current = new AbortController();
  const video = el("video", { playsinline: true, muted: true, "aria-label": words("find.camera") });
  const trouble = el("p", { class: "note", role: "status" });
  const picture = el("input", {
    id: "code-picture",
    type: "file",
    accept: "image/*",
    capture: "environment",
    class: "hidden-input",
    onchange: async () => picture.files[0] && found(await scanPicture(picture.files[0])),
  });
  const close = () => {
    stopping.current.abort();
    camera.hidden = true;
  };
  camera.hidden = false;
  fill(
    camera,
    video,
    trouble,
    el("div", { class: "pair" },
      el("label", { for: "code-picture", class: "big quiet" }, words("find.picture")), picture,
      el("button", { type: "button", class: "big quiet", onclick: close }, words("find.close"))),
  );
  try {
    const text = await scanCamera(video, stopping.current.signal);
    if (text !== null) found(text);
  } catch {
    video.hidden = true;
    trouble.textContent = words("find.no-camera");
  }
}

function codeRead(walk, text) {
  const address = text === null ? null : readAddress(text);
  const plant = address === null ? null : walk.nursery.plant(address.plant);
  if (plant === null) {
    walk.say(walk.words(text === null ? "find.no-code" : "find.other-code"));
    return;
  }
  const rows = plant.rows.filter((row) => address.item === null || row.item === address.item);
  if (rows.length === 1) walk.go("look", plant.key, rows[0].lot);
  else walk.go("rows", plant.key, String(address.item ?? ""));
}
