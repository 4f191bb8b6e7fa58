// Starts the page, shows the screen that its address names, and says what is not yet sent.

import { Link } from "/link.js";
import { openStorage } from "/keep.js";
import { element, name } from "/parts.js";
import { enterScreen, listScreen } from "/list.js";
import { machineScreen } from "/machine.js";

const place = document.getElementById("screen");
const who = document.getElementById("who");
const sent = document.getElementById("sent");

let link;
let shown = { key: null };

/** Round, secret or machine of the address; a secret is taken out of it at once. */
function address() {
  const parts = new URLSearchParams(location.hash.slice(1));
  if (parts.has("s")) {
    history.replaceState(null, "", "/");
  }
  return { round: parts.get("r"), secret: parts.get("s"), machine: parts.get("m") };
}

function entries(count) {
  return count === 1 ? "1 entry" : count + " entries";
}

function status() {
  const waiting = link.waiting().length;
  const kept = waiting === 0 ? "" : entries(waiting) + " not yet sent";
  if (link.trouble !== "") {
    return ["trouble", "! " + link.trouble + (kept === "" ? "" : " " + kept + ".")];
  }
  if (!link.reached) {
    return ["waits", "\u25B3 No connection. " + (kept === "" ? "Everything is sent." : kept + ", kept here.")];
  }
  if (waiting > 0) {
    return ["waits", "\u2191 " + kept + "\u2026"];
  }
  return ["sent", link.round ? "\u2713 Everything is sent" : ""];
}

function wanted(given) {
  if (!link.round || link.mayEnter && given.secret) {
    return { key: "enter", make: () => enterScreen(link, given) };
  }
  if (given.machine && link.machine(given.machine)) {
    return { key: "m " + given.machine, make: () => machineScreen(link, given.machine) };
  }
  return { key: "list " + link.round.id, make: () => listScreen(link) };
}

function show(given = address()) {
  const next = wanted(given);
  const identity = next.key + (link.round ? " " + link.round.plan : "");
  if (identity !== shown.key) {
    const first = shown.key === null;
    shown = { key: identity, screen: next.make() };
    place.replaceChildren(shown.screen.node);
    window.scrollTo(0, 0);
    if (!first) {
      place.focus({ preventScroll: true });
    }
  } else {
    shown.screen.refresh();
  }
  who.replaceChildren(...(link.round ? ["Round ", name(link.round.id),
    ...(link.round.technician === "" ? [] : [", ", name(link.round.technician)])] : ["Slotledger"]));
  const [kind, text] = status();
  sent.className = kind;
  if (sent.textContent !== text) {
    sent.textContent = text;
  }
  askAgain();
}

/** Where the session has ended, the round stays readable; a button leads to the fields. */
function askAgain() {
  const old = document.getElementById("enter-again");
  const needed = link.round && link.mayEnter && link.reached && link.trouble !== "";
  if (old && !needed) {
    old.remove();
  } else if (needed && !old) {
    sent.after(element("button", { id: "enter-again", type: "button", text: "Enter again", on: { click: () => {
      shown = { key: "again", screen: enterScreen(link, { round: link.round.id }) };
      place.replaceChildren(shown.screen.node);
    } } }));
  }
}

async function begin() {
  const given = address();
  const storage = await openStorage();
  link = new Link(storage, () => show());
  await link.begin();
  if (given.secret) {
    link.round = null;
    show(given);
  } else {
    if (link.round) {
      show(given);
    }
    await link.refresh();
    show(given);
  }
  window.addEventListener("hashchange", () => {
    const next = address();
    if (next.secret) {
      link.round = null;
    }
    show(next);
  });
  window.addEventListener("online", () => link.refresh());
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible" && link.round) {
      link.refresh();
    }
  });
  window.addEventListener("beforeunload", event => {
    if (!storage.lasts && link.waiting().length > 0) {
      event.preventDefault();
    }
  });
}

if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("/worker.js").catch(() => {});
}
begin();
