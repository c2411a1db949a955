/*
 * Plants by their names, as typed or as a telephone heard them, without the server: rung by rung from the surest way of
 * matching to the least sure. It follows the server's look-up of names; a test holds the two side by side.
 */

const MARKS = new Set(["x", "subsp", "ssp", "var", "f", "fo", "forma", "group", "gp", "cv", "tm", "r"]);
const LEFT_OUT = /['’‘`´.]/g;
const MOST_WORDS = 12;
const LONGEST_WORD = 48;
const FAR = 1_000_000;
const EXTRA_SOUND = 4;
const EXTRA_WORD = 6;
/** With one letter amiss in so many, a misspelling is clear and nothing that sounds alike is looked for. */
const LETTERS_AN_EDIT = 6;
const KINDS = ["A", "S", "C"]; // accepted, synonym, common

/** The words of a name without case, accents, quotes, hyphens, hybrid marks and ranks. */
export function folded(name) {
  const all =
    name
      .normalize("NFKD")
      .replace(/\p{M}+/gu, "")
      .replace(LEFT_OUT, "")
      .toLowerCase()
      .match(/[\p{L}\p{Nd}]+/gu) ?? [];
  const words = all.filter((word) => !MARKS.has(word));
  return words.length ? words : all;
}

export class Names {
  #sounds;
  #plants;

  /** @param plants in the order of names: `key`, and `names`, each with its kind before it: `A Acer rubrum` */
  constructor(plants, sounds) {
    this.#sounds = sounds;
    this.#plants = plants.map((plant) => this.#known(plant));
  }

  #known(plant) {
    const names = plant.names.map((stored) => {
      const words = folded(stored.slice(2));
      return { kind: stored[0], text: stored.slice(2), words, whole: words.join(" ") };
    });
    const words = new Set();
    for (const name of names) {
      name.words.forEach((word, at) => {
        words.add(word);
        if (at + 1 < name.words.length) words.add(word + name.words[at + 1]);
      });
    }
    return { plant, names, single: new Set(names.flatMap((name) => name.words)), words: [...words] };
  }

  /** The plants meant, the surest first: `plant`, and the name that `matched`. */
  find(typed, limit) {
    const words = folded(typed)
      .slice(0, MOST_WORDS)
      .map((word) => word.slice(0, LONGEST_WORD));
    const hits = new Map();
    const add = (known, matched, how) => {
      if (hits.size < limit && !hits.has(known.plant.key)) hits.set(known.plant.key, { plant: known.plant, matched, how });
    };
    if (!words.length) return [];
    const whole = words.join(" ");
    const rung = (how, kind, matches) => {
      for (const known of this.#plants) {
        const name = known.names.find((one) => one.kind === kind && matches(one));
        if (name) add(known, name.text, how);
      }
    };
    rung("exact", "A", (name) => name.text === typed.trim());
    KINDS.forEach((kind) => rung("same", kind, (name) => name.whole === whole));
    const sure = hits.size > 0;
    KINDS.forEach((kind) => rung("begins", kind, (name) => name.whole.startsWith(whole)));
    this.#holding(words, add);
    if (!sure && hits.size < limit) this.#like(words, limit, add);
    return [...hits.values()];
  }

  #holding(words, add) {
    const last = words.at(-1);
    const others = words.slice(0, -1);
    for (const known of this.#plants) {
      if (others.every((word) => known.single.has(word)) && [...known.single].some((word) => word.startsWith(last))) {
        const name = known.names.find(
          (one) => others.every((word) => one.words.includes(word)) && one.words.some((word) => word.startsWith(last)),
        );
        add(known, (name ?? known.names[0]).text, "begins");
      }
    }
  }

  #like(words, limit, add) {
    const likeness = new Likeness(words, this.#sounds);
    const guesses = (bySound) =>
      this.#plants
        .map((known) => likeness.of(known, bySound))
        .filter((guess) => guess !== null)
        .sort(
          (one, other) =>
            one.rank - other.rank || one.cost - other.cost || one.unlike - other.unlike || one.unsaid - other.unsaid,
        )
        .slice(0, limit * 2);
    const spelt = guesses(false);
    const letters = words.reduce((sum, word) => sum + word.length, 0);
    spelt.forEach((guess) => add(guess.known, likeness.nearest(guess), "spelt nearly"));
    const clear = spelt.length > 0 && spelt[0].cost * LETTERS_AN_EDIT <= letters;
    if (!clear) guesses(true).forEach((guess) => add(guess.known, likeness.nearest(guess), "sounds alike"));
  }
}

/** Neighbouring words that may be one word of a name: each alone, and up to five joined. */
function parts(words, sounds) {
  const all = [];
  for (let first = 0; first < words.length; first++) {
    for (let count = 1; count <= 5 && first + count <= words.length; count++) {
      const some = words.slice(first, first + count);
      const letters = some.join("");
      if (count === 1 || (letters.length <= 14 + count && some.filter((word) => word.length >= 8).length < 2)) {
        const heard = sounds.ofAll(some);
        const mostUnlike =
          heard.length < 2 ? 0 : Math.min(count > 1 ? 18 : 15, 1 + Math.trunc((heard.length * 3) / 2));
        all.push({ first, count, letters, heard, mostUnlike });
      }
    }
  }
  return all;
}

const editsAllowed = (letters, most) => Math.min(most, letters.length < 4 ? 0 : letters.length < 6 ? 1 : 2);

/** Compares what was said with all names of a plant, the bounds between words free to move. */
class Likeness {
  #words;
  #sounds;
  #parts;
  #said;
  #farthest;
  #edits = new Map();
  #unlike = new Map();

  constructor(words, sounds) {
    this.#words = words;
    this.#sounds = sounds;
    this.#parts = parts(words, sounds);
    this.#said = sounds.ofAll(words);
    this.#farthest = Math.min(
      Math.trunc(sounds.weight(this.#said) / 2),
      2 + Math.trunc((this.#said.length * 3) / 2),
    );
  }

  of(known, bySound) {
    const unsaid = known.names[0].words.length - this.#words.length;
    for (const most of [1, 2]) {
      const cost = this.#fewestEdits(known, most);
      if (cost < FAR) return { known, rank: most, cost, unlike: this.#unlikeOf(known), unsaid };
    }
    if (!bySound) return null;
    const cost = this.#unlikeOf(known);
    return cost <= this.#farthest ? { known, rank: 3, cost, unlike: cost, unsaid } : null;
  }

  /** The name to show: the one nearest to what was said. */
  nearest({ known }) {
    return known.names.reduce((best, name) => {
      const cost = this.#unlikeName(name);
      return best === null || cost < best.cost ? { cost, text: name.text } : best;
    }, null).text;
  }

  #fewestEdits(known, most) {
    return this.#cheapest(FAR, (part, place) => {
      if (part.count > 2) return FAR;
      const allowed = editsAllowed(part.letters, most);
      let least = FAR;
      for (const word of known.words) {
        const cost = this.#editsOf(word)[place];
        if (cost <= allowed && cost < least) least = cost;
      }
      return least;
    });
  }

  #unlikeOf(known) {
    const byWords = this.#cheapest(1, (part, place) => {
      let least = FAR;
      for (const word of known.words) {
        const cost = this.#unlikeWord(word)[place];
        if (cost <= part.mostUnlike && cost < least) least = cost;
      }
      return least;
    });
    return known.names.reduce((least, name) => Math.min(least, this.#unlikeName(name)), byWords);
  }

  #unlikeName(name) {
    return this.#sounds.withinName(
      this.#said,
      name.words.map((word) => this.#sounds.of(word)),
      1,
    );
  }

  /** The cheapest way to cut the words said into parts. */
  #cheapest(extra, cost) {
    const best = new Array(this.#words.length + 1).fill(FAR);
    best[0] = 0;
    this.#parts.forEach((part, place) => {
      const from = best[part.first];
      if (from >= FAR) return;
      const to = part.first + part.count;
      best[to] = Math.min(best[to], from + cost(part, place));
      if (part.count === 1 && extra < FAR) {
        best[to] = Math.min(best[to], from + extra * (EXTRA_WORD + EXTRA_SOUND * part.heard.length));
      }
    });
    return Math.min(FAR, best[this.#words.length]);
  }

  #editsOf(word) {
    let known = this.#edits.get(word);
    if (!known) {
      known = this.#parts.map((part) => {
        const near = part.count <= 2 && Math.abs(part.letters.length - word.length) <= 2;
        const cost = near ? edits(part.letters, word, 2) : FAR;
        return cost <= 2 ? cost : FAR;
      });
      this.#edits.set(word, known);
    }
    return known;
  }

  #unlikeWord(word) {
    let known = this.#unlike.get(word);
    if (!known) {
      const heard = this.#sounds.of(word);
      known = this.#parts.map((part) =>
        Math.abs(part.heard.length - heard.length) * 3 <= part.mostUnlike + 2
          ? this.#sounds.between(part.heard, heard, part.mostUnlike)
          : FAR,
      );
      this.#unlike.set(word, known);
    }
    return known;
  }
}

/** Letters to insert, leave out, change or swap with a neighbour; told exactly only up to `most`. */
function edits(one, other, most) {
  let before = [];
  let above = Array.from({ length: other.length + 1 }, (none, j) => j);
  for (let i = 1; i <= one.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= other.length; j++) {
      let cost = Math.min(above[j] + 1, row[j - 1] + 1, above[j - 1] + (one[i - 1] === other[j - 1] ? 0 : 1));
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
        cost = Math.min(cost, before[j - 2] + 1);
      }
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    before = above;
    above = row;
  }
  return above[other.length];
}
