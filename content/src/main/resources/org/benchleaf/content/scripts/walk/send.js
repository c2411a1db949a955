/*
 * Takes what is kept to the server when there is signal. Sent twice is counted once: each sighting has its key. What the
 * server does not answer stays kept.
 */

const WAIT = 20_000;
/** Sightings that are done are shown for a while, then forgotten. */
const DONE_KEPT = 100;

export class Sender {
  #store;
  #changed;
  #running = null;
  #again = false;
  /** `idle`, `sending`, `no signal` or `sign in`. */
  state = "idle";

  /** @param changed called when the state or a sighting is another */
  constructor(store, changed) {
    this.#store = store;
    this.#changed = changed;
    addEventListener("online", () => this.send());
    addEventListener("visibilitychange", () => document.visibilityState === "visible" && this.send());
    setInterval(() => this.send(), WAIT);
  }

  /** Sends what waits; asked again meanwhile, it looks once more when it is through. */
  send() {
    this.#again = true;
    this.#running ??= this.#loop().finally(() => (this.#running = null));
    return this.#running;
  }

  async #loop() {
    while (this.#again) {
      this.#again = false;
      // two open windows of one telephone do not send at once
      const alone = navigator.locks?.request.bind(navigator.locks, "send") ?? ((work) => work());
      await alone(() => this.#sendWaiting());
    }
  }

  async #sendWaiting() {
    const all = await this.#store.all();
    const waiting = all.filter((sighting) => sighting.state === "waiting").reverse();
    if (!waiting.length && !all.some((sighting) => sighting.state === "conflict")) {
      this.#is(this.state === "sign in" ? "sign in" : "idle");
      return;
    }
    this.#is(waiting.length ? "sending" : this.state);
    try {
      const me = await ask("/walk/me");
      for (const sighting of waiting) {
        await this.#sendOne(sighting, me.token);
        this.#changed();
      }
      await this.#heardOfConflicts();
      await this.#forgetOld();
      this.#is("idle");
    } catch (failed) {
      this.#is(failed instanceof SignIn ? "sign in" : "no signal");
    }
  }

  async #sendOne(sighting, token) {
    if (sighting.photo) {
      const sent = await post(`/walk/photographs/${sighting.key}`, sighting.photo, "image/jpeg", token);
      // one that the server cannot use must not hold back what was seen
      if (sent.refused) await this.#store.became(sighting.key, { photo: null, photoTrouble: sent.refused });
    }
    const [answer] = (await post("/walk/sightings", JSON.stringify([onTheWire(sighting)]), "application/json", token))
      .sightings;
    const photo = answer.standing === "refused" ? sighting.photo : null;
    await this.#store.became(sighting.key, { state: answer.standing, text: answer.text, photo });
  }

  /** Somebody at the desk may have settled one. */
  async #heardOfConflicts() {
    const open = new Map((await ask("/walk/conflicts")).sightings.map((one) => [one.key, one]));
    for (const sighting of await this.#store.all()) {
      if (sighting.state === "conflict" && !open.has(sighting.key)) {
        await this.#store.became(sighting.key, { state: "settled", text: "" });
      }
    }
  }

  async settle(key, how, lot) {
    const me = await ask("/walk/me");
    const answer = await post("/walk/settle", JSON.stringify({ key, how, lot }), "application/json", me.token);
    await this.#store.became(key, { state: answer.standing, text: answer.text });
    this.#changed();
  }

  async #forgetOld() {
    const done = (await this.#store.all()).filter((one) => one.state === "noted" || one.state === "settled");
    for (const sighting of done.slice(DONE_KEPT)) await this.#store.forget(sighting.key);
  }

  #is(state) {
    this.state = state;
    this.#changed();
  }
}

/** Nobody is signed in on this telephone any more. */
export class SignIn extends Error {}

function onTheWire({ key, walk, plant, item, lot, place, conditions, heightCm, count, photo, remark, seenAt }) {
  return { key, walk, plant, item, lot, place, conditions, heightCm, count, photo: photo !== null, remark, seenAt };
}

export async function ask(path) {
  return heard(await fetch(path, { headers: { Accept: "application/json" }, redirect: "manual" }));
}

async function post(path, body, type, token) {
  return heard(
    await fetch(path, {
      method: "POST",
      body,
      headers: { "Content-Type": type, "Form-Token": token, Accept: "application/json" },
      redirect: "manual",
    }),
  );
}

async function heard(response) {
  const isData = (response.headers.get("Content-Type") ?? "").startsWith("application/json");
  if (response.type === "opaqueredirect" || response.status === 401 || response.status === 403) throw new SignIn();
  if (!isData) throw new Error(`status ${response.status}`);
  return response.json();
}
