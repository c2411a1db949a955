/* Keeps the walk's own files, so that it opens where there is no signal. The server puts version and files in. */

const VERSION = "{version}";
const FILES = "{files}".split(" ");

addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(VERSION)
      .then((cache) => cache.addAll(FILES.map((file) => new Request(file, { cache: "reload" }))))
      .then(() => skipWaiting()),
  );
});

addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name !== VERSION).map((name) => caches.delete(name))))
      .then(() => clients.claim()),
  );
});

addEventListener("fetch", (event) => {
  const address = new URL(event.request.url);
  if (event.request.method === "GET" && address.origin === location.origin && FILES.includes(address.pathname)) {
    event.respondWith(
      caches
        .open(VERSION)
        .then((cache) => cache.match(address.pathname))
        .then((kept) => kept ?? fetch(event.request)),
    );
  }
});
