/* The crop walk: finds a row, takes down what is seen there, keeps it, sends it. */

import { Names } from "./names.js";
import { Sounds } from "./sounds.js";
import { Store, newKey } from "./store.js";
import { Sender, SignIn, ask } from "./send.js";
import { Nursery } from "./nursery.js";
import { showFind } from "./find-view.js";
import { showRows } from "./rows-view.js";
import { showLook } from "./look-view.js";
import { showKept } from "./kept-view.js";

const WALK_LASTS = 8 * 60 * 60 * 1000;

const words = await (await fetch("/walk/file/words.json")).json();
const store = await Store.open();
const main = document.querySelector("#view");

const walk = {
  store,
  nursery: new Nursery(null, null),
  sender: new Sender(store, () => refresh()),
  words: (key, values = {}) => {
    if (!(key in words)) throw new Error(`no word ${key}`);
    return words[key].replace(/\{(\w+)\}/g, (all, name) => values[name]);
  },
  go: (...parts) => (location.hash = parts.map(encodeURIComponent).join("/")),
  newKey,
  current: currentWalk,
  refresh,
  say: (text) => (document.querySelector("#said").textContent = text),
};

/** The walk that this sighting belongs to; a new one begins after some hours. */
async function currentWalk() {
  const known = await store.get("walk");
  if (known && Date.now() - Date.parse(known.startedAt) < WALK_LASTS) return known;
  const begun = { key: newKey(), startedAt: new Date().toISOString() };
  await store.set("walk", begun);
  return begun;
}

async function useNursery() {
  const data = await store.get("nursery");
  if (data) walk.nursery = new Nursery(data, new Names(data.plants, new Sounds(data.sounds)));
}

/** Fetches names and rows anew; without signal the last ones do. */
async function fetchNursery() {
  try {
    const data = await ask("/walk/plants.json");
    if (data.stamp !== walk.nursery.stamp) {
      await store.set("nursery", data);
      await useNursery();
      dispatchEvent(new Event("nursery")); // what is being typed or tapped stays
    }
  } catch (failed) {
    if (failed instanceof SignIn) walk.sender.state = "sign in";
  }
  refresh();
}

const views = { find: showFind, rows: showRows, look: showLook, kept: showKept };
let leave = () => {};

async function show() {
  leave();
  const [name, ...parts] = location.hash.slice(1).split("/").map(decodeURIComponent);
  if (name && name !== "find") walk.say("");
  leave = (await (views[name] ?? showFind)(walk, main, ...parts)) ?? (() => {});
  scrollTo(0, 0);
}

/** The line at the top that says how much waits. */
async function refresh() {
  const all = await store.all();
  const waiting = all.filter((one) => one.state === "waiting").length;
  const conflicts = all.filter((one) => one.state === "conflict" || one.state === "refused").length;
  const line = document.querySelector("#outbox");
  const key = conflicts ? "conflicts" : waiting ? `waiting.${walk.sender.state.replace(" ", "-")}` : "all-sent";
  line.textContent = walk.words(`top.${key}`, { count: conflicts || waiting });
  line.dataset.state = conflicts ? "conflict" : waiting ? "waiting" : "sent";
  document.querySelector("#sign-in").hidden = walk.sender.state !== "sign in";
  if (location.hash.startsWith("#kept")) await showKept(walk, main);
}

addEventListener("hashchange", show);
await useNursery();
await show();
await refresh();
document.documentElement.dataset.ready = "yes";
fetchNursery();
walk.sender.send();
navigator.storage?.persist?.();
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("/walk/worker.js", { scope: "/walk" });
}
