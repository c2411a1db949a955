/* Elements as code: nothing that was typed or sent is ever read as HTML. */

/** @param parts texts and elements; null is left out */
export function el(name, attributes, ...parts) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes ?? {})) {
    if (key.startsWith("on")) made.addEventListener(key.slice(2), value);
    else if (value === true) made.setAttribute(key, "");
    else if (value !== false && value !== null) made.setAttribute(key, value);
  }
  made.append(...parts.flat(Infinity).filter((part) => part !== null));
  return made;
}

/** Shows a view and says where it begins, for those who hear the page. */
export function fill(main, ...parts) {
  main.replaceChildren(...parts.flat(Infinity).filter((part) => part !== null));
}
