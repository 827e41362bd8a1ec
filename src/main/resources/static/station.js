// The page at a station. Every scan is kept in the browser before it is sent, so that none is lost; it is called accepted
// only when the server said so. While the server is away scans wait here in their order.
(() => {
  const form = document.getElementById("scan");
  const field = document.getElementById("text");
  const bench = document.getElementById("bench");
  const away = document.getElementById("away");
  // the shell is the page without the server: the device remembers its station, and whether what was in hand last can wait
  const isShell = "shell" in document.getElementById("main").dataset;
  const station = isShell ? localStorage.getItem("sunthread-station") : document.getElementById("main").dataset.queue;
  const queueName = "sunthread-" + station;
  const header = document.querySelector("meta[name=_csrf_header]")?.content;
  const token = document.querySelector("meta[name=_csrf]")?.content;
  const contactAddress = document.getElementById("main").dataset.contact;
  let sending = false;
  const PATIENCE = 3000;
  const TRIES = 3;

  // randomUUID is only for pages that come by https or from the same machine
  const uuid = () => crypto.randomUUID ? crypto.randomUUID() : "10000000-1000-4000-8000-100000000000".replace(/[018]/g, digit =>
    (digit ^ crypto.getRandomValues(new Uint8Array(1))[0] & 15 >> digit / 4).toString(16));

  // what is scanned is dated by the server's clock: as the page last heard it, and what passed since by a clock of the
  // browser that nobody sets. That clock may stand still while the device sleeps, which the device's own clock tells; then
  // only how long ago it was is told, and whether a clock tells it that nobody sets
  const CLOSE = 1000;
  let heard = null;
  const hears = (now, asked) => {
    const tick = performance.now();
    if (Number.isFinite(now) && (heard === null || tick - asked <= CLOSE)) heard = { now, tick, wall: Date.now() };
  };
  const serverTime = () => {
    if (heard === null) return null;
    const passed = performance.now() - heard.tick;
    if (Date.now() - heard.wall - passed > 5 * CLOSE) heard = null;
    return heard === null ? null : Math.round(heard.now + passed);
  };

  const opened = new Promise((resolve, reject) => {
    const request = indexedDB.open(queueName, 1);
    request.onupgradeneeded = () => request.result.createObjectStore("scans", { keyPath: "order", autoIncrement: true });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const store = async (mode, ask) => {
    const database = await opened;
    return new Promise((resolve, reject) => {
      const transaction = database.transaction("scans", mode);
      const request = ask(transaction.objectStore("scans"));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onerror = () => reject(transaction.error);
    });
  };
  // a page that is opened anew has another such clock
  const opening = uuid();
  let openedAt = null;
  const pageName = queueName + "-page";
  const page = localStorage.getItem(pageName) || uuid();
  localStorage.setItem(pageName, page);
  // counted along, for a page that closes has no time to ask
  let kept = 0;
  const all = async () => {
    const scans = await store("readonly", scans => scans.getAll());
    kept = scans.length;
    return scans;
  };

  const tone = (frequency, start, length) => {
    try {
      tone.context = tone.context || new AudioContext();
      const oscillator = tone.context.createOscillator();
      const gain = tone.context.createGain();
      oscillator.frequency.value = frequency;
      gain.gain.value = 0.2;
      oscillator.connect(gain).connect(tone.context.destination);
      oscillator.start(tone.context.currentTime + start);
      oscillator.stop(tone.context.currentTime + start + length);
    } catch { /* a page without sound still shows its word */ }
  };
  const sounds = {
    ACCEPTED: () => tone(1320, 0, 0.09),
    NOTED: () => { tone(1320, 0, 0.09); tone(880, 0.12, 0.12); },
    ASKED: () => { tone(660, 0, 0.1); tone(880, 0.14, 0.1); },
    REFUSED: () => { tone(220, 0, 0.25); tone(196, 0.3, 0.35); },
    KEPT: () => tone(440, 0, 0.2)
  };

  // keys go to the field for scans, or, where somebody signs, to what is not filled in yet
  const unsigned = () => [...bench.querySelectorAll("[data-signs] input:not([type=hidden])")].find(one => one.value === "");
  const focus = () => {
    const wanted = document.activeElement?.closest("[data-signs]") ? document.activeElement : unsigned() || field;
    if (document.activeElement !== wanted) wanted.focus({ preventScroll: true });
  };
  const isOnlineOnly = () => isShell
    ? localStorage.getItem("sunthread-online-only") === "true"
    : bench.querySelector("[data-online-only=true]") !== null;
  const remember = () => {
    if (isShell) return;
    localStorage.setItem("sunthread-station", station);
    localStorage.setItem("sunthread-online-only", isOnlineOnly());
  };

  const showKept = (scans, isAway) => {
    away.hidden = !isAway;
    document.body.classList.toggle("is-sending", scans.length > 0);
    document.body.classList.toggle("is-away", isAway);
    document.getElementById("kept-count").textContent = scans.length;
    document.getElementById("kept-list").replaceChildren(...scans.slice(-5).map(scan => {
      const line = document.createElement("li");
      line.textContent = scan.text;
      return line;
    }));
  };

  const show = html => {
    bench.innerHTML = html;
    sounds[bench.querySelector("[data-outcome]")?.dataset.outcome]?.();
    remember();
    countDown();
    if (bench.querySelector("[data-signs]")) unsigned()?.focus();
    else focus();
  };

  // a signature is sent at once and kept nowhere: it holds a badge and a PIN
  const sign = async signature => {
    try {
      const response = await ask(signature.action, {
        signal: AbortSignal.timeout(5 * PATIENCE), method: "POST", body: new URLSearchParams(new FormData(signature)),
        headers: Object.assign({ "X-Part": "bench" }, header && token ? { [header]: token } : {})
      });
      if (response.status >= 500) throw new Error("the server is away");
      if (!response.ok) { location.reload(); return; }
      show(await response.text());
    } catch {
      signature.querySelector(".unsent").hidden = false;
      sounds.REFUSED();
    }
  };

  // a server that hangs takes connections and never answers: nothing is waited for longer than this
  const ask = (address, options) => fetch(address, { redirect: "manual", signal: AbortSignal.timeout(PATIENCE), ...options });

  // the page's number of a scan tells its order, whatever came when
  const send = (scan, address) => {
    const told = Date.now() - scan.at;
    const passed = scan.opening === opening ? Math.round(performance.now() - scan.tick) : null;
    const proven = passed !== null && Math.abs(told - passed) <= 5 * CLOSE;
    const body = new URLSearchParams({
      id: scan.id, text: scan.text, age: proven ? passed : told, proven, kept: scan.kept, page, sequence: scan.order
    });
    if (scan.heard) body.set("at", scan.heard);
    if (scan.opening !== opening && openedAt !== null) body.set("until", openedAt);
    return ask(address, { method: "POST", body, headers: Object.assign({ "X-Part": "bench" }, header && token ? { [header]: token } : {}) });
  };
  const isSignedOut = response => response.type === "opaqueredirect" || response.status === 401 || response.status === 403;
  // only an answer that names the scan is an answer of this page's server
  const isTaken = (response, scan) => response.ok && response.headers.get("X-Scan-Taken") === scan.id;
  // nobody of this server's answered, whatever stands before it
  const isFromElsewhere = response => response.type !== "opaqueredirect" && (response.ok || [502, 503, 504].includes(response.status));

  // what the server fails at each time goes to its inbox as it was read, so that what was scanned behind it goes on
  const sendUnread = async scan => {
    const response = await send(scan, form.action + "/unread");
    if (!isTaken(response, scan)) throw new Error("the server is away");
    await refresh();
  };

  const flush = async () => {
    if (sending || isShell) return;
    sending = true;
    try {
      for (let scans = await all(); scans.length > 0; scans = await all()) {
        const scan = scans[0];
        try {
          const response = await send(scan, form.action);
          // signed out meanwhile: scans stay here until somebody signs in at this device again
          if (isSignedOut(response)) {
            location.reload();
            return;
          }
          if (isTaken(response, scan)) {
            show(await response.text());
          } else {
            scan.failures = (scan.failures ?? 0) + (isFromElsewhere(response) ? 0 : 1);
            await store("readwrite", scans => scans.put(scan));
            if (scan.failures < TRIES) throw new Error("the server did not take it");
            await sendUnread(scan);
          }
          await store("readwrite", scans => scans.delete(scan.order));
          const left = await all();
          showKept(left, left.length > 0 && !away.hidden);
        } catch {
          for (const late of scans.filter(one => !one.kept)) {
            late.kept = true;
            await store("readwrite", scans => scans.put(late));
          }
          showKept(await all(), true);
          sounds.KEPT();
          setTimeout(flush, scan.failures ? 500 : PATIENCE);
          return;
        }
      }
    } finally {
      sending = false;
    }
  };

  const scan = async text => {
    if (text.trim() === "") return;
    // a word that opens a page is for the browser, typed or as the code of its label
    if (/^\.damaged$|Zdamaged/i.test(text.trim()) && away.hidden) {
      location.assign(document.getElementById("damaged").href);
      return;
    }
    const isAway = !away.hidden;
    const refused = isAway && (isOnlineOnly() || station === null);
    document.getElementById("not-kept").hidden = !refused || station === null;
    if (refused) { sounds.REFUSED(); return; }
    const scanned = {
      id: uuid(), text, at: Date.now(), tick: performance.now(), opening, heard: serverTime(), kept: isAway
    };
    document.body.classList.add("is-sending");
    kept++;
    await store("readwrite", scans => scans.add(scanned));
    if (isAway) { showKept(await all(), true); sounds.KEPT(); }
    flush();
  };

  document.addEventListener("submit", event => {
    if (event.target.matches("[data-signs]")) {
      event.preventDefault();
      if (unsigned()) focus();
      else sign(event.target);
      return;
    }
    if (event.target !== form && !event.target.matches("[data-scans]")) return;
    event.preventDefault();
    const text = event.target === form ? field.value : event.submitter?.value || "";
    field.value = "";
    focus();
    scan(text);
  });

  const countDown = () => {
    for (const cell of document.querySelectorAll("[data-until]")) {
      const minutes = Math.floor((Date.parse(cell.dataset.until) - Date.now()) / 60000);
      const left = cell.querySelector(".left");
      if (!left || Number.isNaN(minutes)) continue;
      left.textContent = minutes < 0 ? "✕" : minutes < 2880 ? Math.floor(minutes / 60) + " h " + (minutes % 60) + " min" : Math.floor(minutes / 1440) + " d";
      cell.classList.toggle("bad", minutes < 0);
    }
  };

  document.addEventListener("click", event => { if (!event.target.closest("a, button, input")) focus(); });
  document.addEventListener("visibilitychange", focus);
  window.addEventListener("focus", focus);
  // a scanner ends with Enter: the next of what is signed by comes then; a word with a point is told, not signed by
  document.addEventListener("keydown", event => {
    const signature = event.target.closest?.("[data-signs]");
    const told = signature && event.key === "Enter" && /^\.[a-z]+$/.test(event.target.value);
    if (told) scan(event.target.value);
    if (signature && (told || event.key === "Escape")) {
      event.preventDefault();
      signature.remove();
      focus();
      return;
    }
    if (event.key !== "Enter" || !event.target.closest("[data-signs]") || event.target.tagName !== "INPUT" || !unsigned()) return;
    event.preventDefault();
    unsigned().focus();
  });
  // a key that goes nowhere is the scanner's: let it land in the field
  document.addEventListener("keydown", event => {
    if (event.target === document.body && event.key.length === 1 && !event.ctrlKey && !event.altKey && !event.metaKey) focus();
  });

  // the page says that it is there, and hears whether something must come off; without cookies, so that a session can end
  let stops = null;
  const refresh = async () => {
    const response = await ask(form.action, { headers: { "X-Part": "bench" } });
    document.getElementById("sign-in-to-stop").hidden = response.ok;
    if (response.ok) show(await response.text()); else sounds.REFUSED();
  };
  const contact = async closing => {
    try {
      // what it says may come late, so it tells by the server's clock when it counted
      const counted = serverTime();
      if (!closing) await all();
      const body = new URLSearchParams({ page, kept, closing });
      if (counted !== null) body.set("at", counted);
      const asked = performance.now();
      const response = await ask(contactAddress, { method: "POST", redirect: "follow", credentials: "omit", keepalive: closing, body });
      if (closing || !response.ok) return;
      const answer = await response.json();
      hears(answer.now, asked);
      if (stops !== null && stops !== answer.stops) await refresh();
      stops = answer.stops;
    } catch { /* what is kept is told when the server is back */ }
  };
  const open = async () => {
    try {
      const asked = performance.now();
      const response = await ask(form.action + "/page", {
        method: "POST", body: new URLSearchParams({ page }), headers: header && token ? { [header]: token } : {}
      });
      if (!response.ok) return;
      const answer = await response.json();
      openedAt = answer.now;
      hears(answer.now, asked);
    } catch { /* what was kept is dated by when it comes */ }
  };
  const isOpen = isShell ? Promise.resolve() : open();
  if (!isShell) {
    isOpen.then(() => contact(false));
    setInterval(() => contact(false), 10000);
    window.addEventListener("pagehide", () => contact(true));
  }

  setInterval(countDown, 30000);
  countDown();
  focus();
  isOpen.then(all).then(scans => {
    if (isShell) showKept(scans, true);
    else if (scans.length > 0) flush();
  });

  // any answer but one of what stands before the server means that it is back: the page is asked for anew
  const lookForServer = async () => {
    try {
      const answer = await ask(form.action, { cache: "no-store" });
      if (answer.status < 500 && field.value === "") { location.reload(); return; }
    } catch { /* still away */ }
    setTimeout(lookForServer, 3000);
  };
  if (isShell) {
    document.getElementById("no-station").hidden = station !== null;
    if (station !== null) document.getElementById("station").textContent = station;
    setTimeout(lookForServer, 3000);
  } else {
    remember();
    // browsers allow it only where nobody can change the page on its way
    navigator.serviceWorker?.register("/station-worker.js", { scope: "/work" })
      .then(() => navigator.serviceWorker.ready)
      .then(worker => worker.active.postMessage("keep"))
      .catch(() => { /* the page works as long as it stays open */ });
  }
})();
