/*
 * What the telephone keeps: the names and rows of the nursery, and every sighting until the server has it. A sighting is
 * on the disk before the screen says so.
 */

const NAME = "benchleaf-walk";

function opened() {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore("kept", { keyPath: "key" });
      request.result.createObjectStore("things");
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

export class Store {
  #db;

  static async open() {
    const store = new Store();
    store.#db = await opened();
    return store;
  }

  #in(name, mode, work) {
    return new Promise((resolve, reject) => {
      // strict: told done only when it is on the disk, not when the system promises to write it
      const transaction = this.#db.transaction(name, mode, { durability: "strict" });
      const request = work(transaction.objectStore(name));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error);
    });
  }

  keep(sighting) {
    return this.#in("kept", "readwrite", (kept) => kept.put(sighting));
  }

  forget(key) {
    return this.#in("kept", "readwrite", (kept) => kept.delete(key));
  }

  /** Changes what became of a sighting; what was seen stays as it was. */
  async became(key, news) {
    const sighting = await this.#in("kept", "readonly", (kept) => kept.get(key));
    if (sighting) await this.keep({ ...sighting, ...news });
  }

  /** All, the newest first. */
  async all() {
    const all = await this.#in("kept", "readonly", (kept) => kept.getAll());
    return all.sort((one, other) => (one.seenAt < other.seenAt ? 1 : -1));
  }

  get(name) {
    return this.#in("things", "readonly", (things) => things.get(name));
  }

  set(name, value) {
    return this.#in("things", "readwrite", (things) => things.put(value, name));
  }
}

/** A key of its own for each sighting and walk; also where the page is not secure enough for randomUUID. */
export function newKey() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
