/* What is kept on this telephone: what waits, what needs a look, what was sent. */

import { el, fill } from "./dom.js";

export async function showKept(walk, main) {
  const { words } = walk;
  const all = await walk.store.all();
  const group = (title, states, each) => {
    const some = all.filter((one) => states.includes(one.state));
    return some.length ? [el("h2", {}, title), el("ul", { class: "kept" }, some.map((one) => el("li", {}, each(one))))] : null;
  };
  fill(
    main,
    el("a", { href: "#find", class: "back" }, words("back")),
    el("h1", {}, words("kept.title")),
    el("button", { class: "big", type: "button", onclick: () => walk.sender.send() }, words("kept.send")),
    group(words("kept.conflict"), ["conflict", "refused"], (one) => [told(walk, one), ways(walk, one)]),
    group(words("kept.waiting"), ["waiting"], (one) => told(walk, one)),
    group(words("kept.sent"), ["noted", "settled"], (one) => told(walk, one)),
    all.length ? null : el("p", {}, words("kept.nothing")),
  );
}

function told(walk, sighting) {
  const looks = new Map(walk.nursery.conditions);
  const time = new Date(sighting.seenAt).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const seen = [
    ...sighting.conditions.map((name) => looks.get(name) ?? name),
    sighting.count === null ? null : walk.words("kept.count", { count: sighting.count }),
    sighting.heightCm === null ? null : height(walk, sighting.heightCm),
    sighting.remark || null,
  ].filter((part) => part !== null);
  return [
    el("strong", {}, sighting.name),
    el("span", {}, [time, sighting.size, sighting.place].filter((part) => part).join(" · ")),
    el("span", {}, seen.join(", ")),
    sighting.photoTrouble ? el("span", { class: "trouble" }, sighting.photoTrouble) : null,
    sighting.text ? el("span", { class: "trouble" }, sighting.text) : null,
  ];
}

function height(walk, cm) {
  return walk.nursery.inches
    ? walk.words("kept.height.inches", { height: Math.round(cm / 2.54) })
    : walk.words("kept.height.cm", { height: cm });
}

/** Ways out of a conflict; they need the server, for it alone knows what is true. */
function ways(walk, sighting) {
  if (sighting.state === "refused") {
    return el("button", { type: "button", class: "big quiet", onclick: () => drop(walk, sighting) }, walk.words("kept.drop"));
  }
  const trouble = el("p", { class: "trouble", role: "alert" });
  const settle = async (how, lot = null) => {
    try {
      await walk.sender.settle(sighting.key, how, lot);
    } catch {
      trouble.textContent = walk.words("kept.needs-signal");
    }
  };
  const way = (label, how) =>
    el("button", { type: "button", class: "big quiet", onclick: () => settle(how) }, walk.words(label));
  const rows = walk.nursery.plant(sighting.plant)?.rows.filter((row) => row.lot !== sighting.lot) ?? [];
  return el(
    "div",
    { class: "ways" },
    way("kept.as-seen", "AS_SEEN"),
    way("kept.note-only", "NOTE_ONLY"),
    rows.map((row) =>
      el("button", { type: "button", class: "big quiet", onclick: () => settle("OTHER_LOT", row.lot) },
        walk.words("kept.other-row", { row: [row.size, row.place].filter((part) => part).join(" · ") || row.lot })),
    ),
    trouble,
  );
}

async function drop(walk, sighting) {
  await walk.store.forget(sighting.key);
  await showKept(walk, document.querySelector("#view"));
}
