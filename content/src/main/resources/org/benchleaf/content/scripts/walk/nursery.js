/* The plants and rows as they were when last heard of. */

export class Nursery {
  #plants = new Map();
  #rows = [];
  #names;

  constructor(data, names) {
    this.#names = names;
    this.stamp = data?.stamp ?? null;
    this.conditions = data?.conditions ?? [];
    this.inches = data?.inches ?? false;
    for (const plant of data?.plants ?? []) {
      this.#plants.set(plant.key, plant);
      for (const row of plant.rows) this.#rows.push({ ...row, plant });
    }
    this.#rows.sort((one, other) => one.place.localeCompare(other.place, "en", { numeric: true }));
  }

  get isEmpty() {
    return this.#plants.size === 0;
  }

  plant(key) {
    return this.#plants.get(key) ?? null;
  }

  row(lot) {
    return this.#rows.find((row) => row.lot === lot) ?? null;
  }

  find(typed, limit) {
    return this.#names?.find(typed, limit) ?? [];
  }

  /** The rows that stand next to one, the nearest first. */
  near(lot, most) {
    const at = this.#rows.findIndex((row) => row.lot === lot);
    if (at < 0 || !this.#rows[at].place) return [];
    return this.#rows
      .map((row, place) => ({ row, far: Math.abs(place - at) }))
      .filter(({ row, far }) => far > 0 && row.place !== "")
      .sort((one, other) => one.far - other.far)
      .slice(0, most)
      .map(({ row }) => row);
  }
}

/** The accepted name of a plant. */
export const nameOf = (plant) => plant.names[0].slice(2);

/** `#3 · B4-12 · 40`. */
export const rowText = (row) => [row.size, row.place, String(row.count)].filter((part) => part !== "").join(" · ");
