// Keeps the files of the page for times without a connection. Data is kept by the page itself, never here.
const kept = "slotledger @version@";
const files = ["@files@"];

self.addEventListener("install", event => {
  event.waitUntil(caches.open(kept)
    .then(cache => cache.addAll(files.map(file => new Request(file, { cache: "reload" }))))
    .then(() => self.skipWaiting()));
});

self.addEventListener("activate", event => {
  event.waitUntil(caches.keys()
    .then(names => Promise.all(names.filter(name => name !== kept).map(name => caches.delete(name))))
    .then(() => self.clients.claim()));
});

self.addEventListener("fetch", event => {
  const url = new URL(event.request.url);
  if (event.request.method === "GET" && url.origin === self.location.origin && files.includes(url.pathname)) {
    event.respondWith(caches.open(kept).then(cache => cache.match(url.pathname))
      .then(found => found || fetch(event.request)));
  }
});
