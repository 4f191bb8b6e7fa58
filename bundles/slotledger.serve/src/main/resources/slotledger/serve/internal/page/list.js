// The two fields to enter by, and the machines of a round.

import { canScan, scan, tagOf } from "/scan.js";
import { STATES, isEnded } from "/jobs.js";
import { element, name } from "/parts.js";

export function enterScreen(link, given) {
  const problem = element("p", { class: "problem", role: "alert" });
  const round = element("input", { id: "round", value: given.round || "", autocapitalize: "characters",
    autocomplete: "off", spellcheck: "false", maxlength: 40, required: true });
  const secret = element("input", { id: "secret", autocapitalize: "characters", autocomplete: "off",
    spellcheck: "false", maxlength: 64, required: true });
  const button = element("button", { class: "main", text: "Enter" });
  const enter = async () => {
    problem.textContent = "";
    button.disabled = true;
    button.textContent = "Entering\u2026";
    try {
      await link.enter(round.value.trim(), secret.value);
    } catch (refused) {
      problem.textContent = link.reached ? refused.message
        : "The server can't be reached. Is the phone in the same network?";
      button.disabled = false;
      button.textContent = "Enter";
    }
  };
  const form = element("form", { on: { submit: event => { event.preventDefault(); enter(); } } },
    element("label", { for: "round", text: "Round" }), round,
    element("label", { for: "secret", text: "Secret" }), secret,
    element("p", { class: "small", text: "Both are on the sheet that the coordinator gave you. Small letters and "
      + "hyphens make no difference." }),
    problem, button);
  if (given.secret) {
    secret.value = given.secret;
    enter();
  }
  return { node: element("section", {}, element("h1", { text: "My round" }), form), refresh: () => {} };
}

function stateLine(job) {
  const state = STATES[job.state];
  return element("span", { class: "state " + job.state }, state.sign + " " + state.word);
}

function row(link, machine) {
  const job = link.job(machine.job.machine);
  const card = machine.card;
  return element("li", {},
    element("a", { class: "machine" + (isEnded(job.state) ? " ended" : ""),
      href: "#m=" + encodeURIComponent(job.machine) },
    element("b", {}, name(job.machine)), stateLine(job),
    element("span", { class: "where" }, name(card ? card.place : ""), card ? ", " + card.summary : "")));
}

function finder(link) {
  const problem = element("p", { class: "problem", role: "alert" });
  const tag = element("input", { id: "tag", autocapitalize: "off", autocomplete: "off", spellcheck: "false" });
  const open = text => {
    const wanted = tagOf(text);
    const found = link.round.machines.find(each => each.job.machine.toLowerCase() === wanted.toLowerCase());
    if (found) {
      location.hash = "#m=" + encodeURIComponent(found.job.machine);
    } else {
      problem.textContent = wanted === "" ? "Type the tag that is on the machine."
        : "\u201C" + wanted + "\u201D is not on this round.";
    }
  };
  const scanButton = element("button", { type: "button", text: "Scan", on: { click: async () => {
    const text = await scan("Scan the sheet's code");
    if (text !== null) {
      open(text);
    }
  } } });
  return element("form", { role: "search", on: { submit: event => { event.preventDefault(); open(tag.value); } } },
    element("label", { for: "tag", text: "Asset tag" }),
    element("div", { class: "row" }, tag, element("button", { text: "Open" }), canScan() ? scanButton : null),
    problem);
}

function notices(link) {
  const lines = [];
  if (!link.storage.lasts) {
    lines.push("This browser keeps nothing: entries that are not yet sent are lost when this page is closed.");
  }
  if (!window.isSecureContext) {
    lines.push("This connection is not encrypted. Without a connection the page goes on as long as it stays open: "
      + "entries stay on this phone, but the page can't be loaded again. To scan, use the phone's own camera.");
  }
  const stranded = [...new Set(link.stranded().map(entry => entry.round))];
  if (stranded.length > 0) {
    lines.push("Entries of another round are still on this phone: " + stranded.join(", ")
      + ". Enter that round again to send them.");
  }
  return lines.map(text => element("p", { class: "box", text }));
}

function refusals(link) {
  return link.refused().map(entry => element("div", { class: "box problem" },
    element("p", {}, "Not taken, for ", name(entry.event.machine), ": " + entry.refused),
    element("button", { type: "button", text: "I have read it",
      on: { click: () => link.drop(entry) } })));
}

export function listScreen(link) {
  const machines = element("ul", { class: "machines" });
  const progress = element("p", { class: "progress" });
  const bar = element("progress", { "aria-label": "Machines that are finished" });
  const notes = element("div");
  const where = [link.round.site, link.round.room].filter(each => each !== "").join(", ");
  const leave = element("button", { type: "button", text: "Leave this round", on: { click: async () => {
    if (link.waiting().length > 0) {
      notes.prepend(element("p", { class: "problem", role: "alert",
        text: "Not yet: entries are still to be sent." }));
    } else {
      await link.leave().catch(problem => link.noticed(problem));
    }
  } } });
  const refresh = () => {
    const jobs = link.round.machines.map(each => link.job(each.job.machine));
    const ended = jobs.filter(job => isEnded(job.state)).length;
    progress.textContent = ended + " of " + jobs.length + " finished";
    bar.max = jobs.length;
    bar.value = ended;
    notes.replaceChildren(...refusals(link), ...notices(link));
    machines.replaceChildren(...link.round.machines.map(each => row(link, each)));
  };
  refresh();
  return {
    node: element("section", {},
      element("h1", {}, "Round ", name(link.round.id)),
      where === "" ? null : element("p", { class: "place" }, name(where)),
      link.round.from ? element("p", { text: "From " + clock(link.round.from) + " until " + clock(link.round.until) })
        : null,
      progress, bar, notes, finder(link), machines,
      element("p", { class: "small", text: "The secret holds until " + clock(link.round.expires)
        + "." }), leave),
    refresh
  };
}

function clock(text) {
  return new Date(text).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
}
