// Opens the page at a station while the server is away, also after the browser was started anew. It keeps the shell alone:
// a page without anything of a person, a station or the record, its stylesheet and its script. Everything else goes to the
// server and is never kept.
const KEPT = "sunthread-shell-1";
const PAGE = "/work/shell";
const PARTS = ["/sunthread.css", "/station.js", "/favicon.svg"];

const keepShell = async () => {
  const shell = await caches.open(KEPT);
  for (const address of [PAGE, ...PARTS]) {
    const answer = await fetch(address, { cache: "no-store", credentials: "same-origin" });
    // an answer that leads elsewhere is the page to sign in by, not the shell
    if (answer.ok && !answer.redirected) await shell.put(address, answer);
  }
};

const kept = async address => (await caches.open(KEPT)).match(address);

// a server that takes longer counts as away, as it does for a scan: the shell looks for it again and again
const LONGEST = 3000;

const serverFirst = async (request, address) => {
  const answering = fetch(request);
  const tooLate = new Promise((_, late) => setTimeout(late, LONGEST));
  let answer;
  try {
    answer = await Promise.race([answering, tooLate]);
  } catch {
    return (await kept(address)) ?? answering.catch(() => Response.error());
  }
  return answer.status >= 502 ? (await kept(address)) ?? answer : answer;
};

self.addEventListener("install", event => {
  self.skipWaiting();
  // what is sent need not wait for the worker to wake, where the browser knows how to pass it by
  event.addRoutes?.({ condition: { requestMethod: "POST" }, source: "network" });
  event.waitUntil(keepShell());
});

self.addEventListener("activate", event => event.waitUntil((async () => {
  for (const name of await caches.keys()) {
    if (name.startsWith("sunthread-shell-") && name !== KEPT) await caches.delete(name);
  }
  await self.clients.claim();
})()));

self.addEventListener("fetch", event => {
  const address = new URL(event.request.url).pathname;
  if (event.request.method !== "GET") return;
  if (event.request.mode === "navigate" && address === "/work") {
    event.respondWith(serverFirst(event.request, PAGE));
  } else if (PARTS.includes(address)) {
    event.respondWith(serverFirst(event.request, address));
  }
});

// the page says that it came from the server: the shell is kept anew, in its language and as of its release
self.addEventListener("message", event => {
  if (event.data === "keep") event.waitUntil(keepShell().catch(() => {}));
});
