// One machine: what is in its slots, what to do, and what is said of it.

import { canScan, scan } from "/scan.js";
import { STATES, isEnded } from "/jobs.js";
import { askWords, choose, element, fold, list, name, picture } from "/parts.js";

const WHY = {
  "failed": ["It could not be done", "What stopped it? What is in the machine now?", "Failed"],
  "put-back": ["It holds again what it held", "Why was it put back?", "Put back"]
};

class MachineScreen {
  constructor(link, tag) {
    this.link = link;
    this.tag = tag;
    this.card = link.machine(tag).card;
    this.checks = [];
    this.serials = [];
    this.state = element("p", { class: "state-line", role: "status" });
    this.notes = element("ul", { class: "notes" });
    this.actions = element("div", { class: "row actions" });
    this.node = element("section", { class: "sheet" }, ...this.head(), ...this.body());
    this.refresh();
  }

  job() {
    return this.link.job(this.tag);
  }

  head() {
    return [
      element("p", {}, element("a", { class: "back", href: "#", text: "\u2190 All machines" })),
      element("h1", {}, name(this.tag)),
      this.card ? element("p", { class: "place" }, element("b", {}, name(this.card.place))) : null,
      this.state
    ];
  }

  body() {
    const card = this.card;
    if (!card) {
      return [element("p", { class: "box problem", text: "There is no job sheet for this machine here. Work by the "
        + "printed one, and say here what happened." }), this.differs(), this.actions];
    }
    return [
      element("p", { class: "small" }, name(card.board), card.serial === "" ? "" : ", serial number ",
        name(card.serial), element("br"), card.summary + ", number " + card.number + " in the order of work"),
      card.heed.length > 0 ? element("div", { class: "box heed" }, ...card.heed.map(text => element("p", { text })))
        : null,
      fold("Before you open it", this.job().state === "planned" || this.job().state === "bagged",
        list(card.cautions)),
      element("h2", { text: "Slots" }),
      picture("Before", card.before),
      picture("After", card.after),
      element("h2", { text: "Steps" }),
      element("ol", { class: "steps" }, ...card.steps.map((text, index) => this.step(text, index + 1))),
      ...(card.receiving.length > 0
        ? [element("h2", { text: "Serial numbers" }), ...card.receiving.map(each => this.serial(each))] : []),
      this.differs(),
      fold("What results", false, list(card.expected)),
      fold("A step back", false, element("p", { text: card.stepBack })),
      this.actions
    ].filter(each => each !== null);
  }

  step(text, number) {
    const box = element("input", { type: "checkbox", id: "step-" + number, on: { change: () => {
      const done = box.checked;
      if (this.job().state === "planned" || this.job().state === "bagged") {
        this.became("in-work", "");
      }
      this.link.say(this.tag, { kind: "ticked", step: number, done });
    } } });
    this.checks.push(box);
    return element("li", {}, element("label", { for: box.id }, box,
      element("span", { class: "number", "aria-hidden": "true", text: number + "." }), element("span", { text })));
  }

  serial(receiving) {
    const id = "serial-" + this.serials.length;
    const field = element("input", { id, maxlength: 200, autocapitalize: "characters", autocomplete: "off",
      spellcheck: "false" });
    const keep = () => {
      const text = field.value.trim();
      if (text !== (this.job().serials[receiving.slot] || "")) {
        this.link.say(this.tag, { kind: "serial", slot: receiving.slot, serial: text });
      }
    };
    field.addEventListener("change", keep);
    this.serials.push({ slot: receiving.slot, field });
    const button = element("button", { type: "button", text: "Scan", "aria-label": "Scan the module for slot "
      + receiving.slot, on: { click: async () => {
      const text = await scan("Scan the module's code");
      if (text !== null) {
        field.value = text;
        keep();
      }
    } } });
    return element("div", { class: "field" },
      element("label", { for: id }, "Slot ", name(receiving.slot), ": ", name(receiving.module)),
      element("div", { class: "row" }, field, canScan() ? button : null));
  }

  differs() {
    const slots = this.card ? this.card.slots : [];
    const slot = element("select", { id: "differs-slot" },
      element("option", { value: "", text: "the whole machine" }),
      ...slots.map(label => element("option", { value: label, text: "slot " + label })));
    const text = element("textarea", { id: "differs-text", rows: 2, maxlength: 1000 });
    const problem = element("p", { class: "problem", role: "alert" });
    const note = () => {
      problem.textContent = text.value.trim() === "" ? "Say what is other than planned." : "";
      if (text.value.trim() !== "") {
        this.link.say(this.tag, { kind: "deviated", slot: slot.value, text: text.value.trim() });
        text.value = "";
        slot.value = "";
      }
    };
    return element("div", {}, element("h2", { text: "Anything that differs" }), this.notes,
      element("label", { for: "differs-slot", text: "Where" }), slot,
      element("label", { for: "differs-text", text: "What is other than planned" }), text, problem,
      element("button", { type: "button", text: "Note it", on: { click: note } }));
  }

  became(state, reason) {
    this.link.say(this.tag, { kind: "became", state, reason });
  }

  async end(state) {
    const job = this.job();
    if (state === "done") {
      const open = this.card ? this.card.steps.length - job.ticked.length : 0;
      const text = open === 0 ? "Every slot holds what was planned?" : (open === 1 ? "1 step is" : open + " steps are")
        + " not ticked. Does every slot hold what was planned all the same?";
      if (await askWords("Done", text, "Done", false) !== null) {
        this.became("done", "");
      }
    } else if (state === "done-differently") {
      const said = await askWords("Done differently", job.deviations.length > 0
        ? "What you noted says how it differs." : "How does it differ from the plan?", "Done differently",
      job.deviations.length === 0);
      if (said !== null) {
        if (said !== "") {
          this.link.say(this.tag, { kind: "deviated", slot: "", text: said });
        }
        this.became("done-differently", "");
      }
    } else {
      const [title, text, button] = WHY[state];
      const said = await askWords(title, text, button, true);
      if (said !== null) {
        this.became(state, said);
      }
    }
  }

  async otherwise() {
    const state = await choose("How did it end?", [["done-differently", "Done differently"],
      ["failed", "Failed: it could not be done"], ["put-back", "Put back: it holds what it held before"]]);
    if (state !== null) {
      await this.end(state);
    }
  }

  button(text, kind, act) {
    return element("button", { type: "button", class: kind, text, on: { click: act } });
  }

  buttons(state) {
    const next = this.next();
    if (isEnded(state)) {
      return [this.button("Open it again", "", () => this.became("in-work", "")),
        next ? element("a", { class: "button main", href: "#m=" + encodeURIComponent(next) }, "Next: ", name(next))
          : element("a", { class: "button main", href: "#", text: "All machines" })];
    }
    return [this.button("Otherwise\u2026", "", () => this.otherwise()), state === "in-work"
      ? this.button("Done", "main", () => this.end("done"))
      : this.button("Start work", "main", () => this.became("in-work", ""))];
  }

  /** The next machine on the round that is not finished. */
  next() {
    const tags = this.link.round.machines.map(each => each.job.machine);
    const at = tags.indexOf(this.tag);
    return [...tags.slice(at + 1), ...tags.slice(0, at)].find(tag => !isEnded(this.link.job(tag).state));
  }

  refresh() {
    const job = this.job();
    const state = STATES[job.state];
    this.state.className = "state-line state " + job.state;
    this.state.textContent = state.sign + " " + state.word + (job.reason === "" ? "" : ": " + job.reason);
    this.checks.forEach((box, index) => { box.checked = job.ticked.includes(index + 1); });
    for (const { slot, field } of this.serials) {
      if (document.activeElement !== field) {
        field.value = job.serials[slot] || "";
      }
    }
    this.notes.replaceChildren(...job.deviations.map(each => element("li", {},
      each.slot === "" ? "" : "Slot ", name(each.slot), each.slot === "" ? "" : ": ", each.text)));
    if (this.shown !== job.state) {
      this.shown = job.state;
      this.actions.replaceChildren(...this.buttons(job.state));
    }
  }
}

export function machineScreen(link, tag) {
  return new MachineScreen(link, tag);
}
