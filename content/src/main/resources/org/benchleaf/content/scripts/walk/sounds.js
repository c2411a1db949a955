/*
 * How a name sounds, as a text of one letter a sound, and how unlike two sounds are. The rules and weights are those of
 * the server, sent with the names: only their working is written down twice.
 */

const VOWELS = "aeiouy";

const holds = {
  START: (word, at, after) => at === 0 && after < word.length,
  START_VOWEL: (word, at, after) => at === 0 && VOWELS.includes(word[after] ?? "."),
  END: (word, at, after) => after === word.length,
  FRONT: (word, at, after) => "eiy".includes(word[after] ?? "."),
  BACK: (word, at, after) => "aou".includes(word[after] ?? "."),
  ANY: () => true,
};

const isVowel = (letter) => letter !== undefined && VOWELS.includes(letter);

export class Sounds {
  #rules = new Map();
  #place = new Map();
  #change;
  #missing;
  #heard = new Map();

  /** @param table `rules`: [spelling, place, sounds], the longest first; `sounds`; `change`; `missing` */
  constructor(table) {
    for (const [spelling, place, sounds] of table.rules) {
      if (!this.#rules.has(spelling[0])) this.#rules.set(spelling[0], []);
      this.#rules.get(spelling[0]).push({ spelling, holds: holds[place], sounds });
    }
    [...table.sounds].forEach((sound, at) => this.#place.set(sound, at));
    this.#change = table.change;
    this.#missing = table.missing;
  }

  /** The sounds of one folded word. */
  of(word) {
    let known = this.#heard.get(word);
    if (known === undefined) {
      known = this.#add("", word);
      this.#heard.set(word, known);
    }
    return known;
  }

  /** The sounds of words said in one breath; an e that ends an English word before another one is silent. */
  ofAll(words) {
    return words.reduce((sounds, word, place) => {
      const silent = place < words.length - 1 && endsSilently(word);
      const soft = "cg".includes(word.at(-2)) ? "e" : "";
      return this.#add(sounds, silent ? word.slice(0, -1) + soft : word);
    }, "");
  }

  #add(sounds, word) {
    let at = 0;
    const append = (sound) => {
      if (sounds.at(-1) !== sound) sounds += sound; // said twice, heard once
    };
    while (at < word.length) {
      const rule = (this.#rules.get(word[at]) ?? []).find(
        (one) => word.startsWith(one.spelling, at) && one.holds(word, at, at + one.spelling.length),
      );
      if (rule) {
        [...rule.sounds].forEach(append);
        at += rule.spelling.length;
      } else {
        if (word[at] >= "0" && word[at] <= "9") append(word[at]);
        else if (word[at] === "h" && isVowel(word[at - 1]) && isVowel(word[at + 1])) append("h");
        at++;
      }
    }
    return sounds;
  }

  /** Texts of sounds as rows of the tables. */
  #places(text) {
    return [...text].map((sound) => this.#place.get(sound));
  }

  /** The distance between what was said and nothing at all. */
  weight(said) {
    return this.#places(said).reduce((sum, sound) => sum + this.#missing[sound], 0);
  }

  /** How far apart all of one and all of the other are; some number above `most` when farther. */
  between(one, other, most) {
    const said = this.#places(one);
    const heard = this.#places(other);
    const row = [0];
    heard.forEach((sound, j) => row.push(row[j] + this.#missing[sound]));
    let least = 0;
    for (let i = 0; i < said.length && least <= most; i++) least = this.#step(row, said[i], heard);
    return Math.max(least, row[heard.length]);
  }

  /** The distance between what was said and the nearest run of whole words of a name. */
  withinName(one, words, unsaid) {
    const said = this.#places(one);
    const name = [];
    const bounds = [0];
    const row = [0];
    words.forEach((word, at) => {
      for (const sound of this.#places(word)) {
        name.push(sound);
        row.push(row.at(-1) + this.#missing[sound]);
      }
      bounds.push(name.length);
      row[name.length] = Math.min(row[name.length], (at + 1) * unsaid);
    });
    for (const sound of said) this.#step(row, sound, name);
    return bounds.reduce(
      (best, bound, at) => Math.min(best, row[bound] + (bounds.length - 1 - at) * unsaid),
      row[name.length],
    );
  }

  #step(row, sound, other) {
    const change = this.#change[sound];
    const missing = this.#missing[sound];
    let diagonal = row[0];
    row[0] += missing;
    let least = row[0];
    for (let j = 1; j < row.length; j++) {
      const above = row[j];
      const heard = other[j - 1];
      row[j] = Math.min(diagonal + change[heard], above + missing, row[j - 1] + this.#missing[heard]);
      diagonal = above;
      if (row[j] < least) least = row[j];
    }
    return least;
  }
}

function endsSilently(word) {
  return (
    word.length > 2 &&
    word.at(-1) === "e" &&
    !isVowel(word.at(-2)) &&
    [...word.slice(0, -1)].some((letter) => isVowel(letter))
  );
}
