// The way to the server. An entry stays on the phone until the server has said that it is written down.

import { after, uuid } from "/jobs.js";

const AT_ONCE = 100;
const FIRST_PAUSE = 2000;
const LONGEST_PAUSE = 30000;
const PATIENCE = 25000;

class Refused extends Error {
  constructor(status, sentence) {
    super(sentence);
    this.status = status;
  }
}

export class Link {
  constructor(storage, changed) {
    this.storage = storage;
    this.changed = changed;
    this.entries = [];
    this.round = null;
    this.reached = true;
    this.mayEnter = true;
    this.sending = false;
    this.pause = FIRST_PAUSE;
    this.timer = null;
    this.trouble = "";
  }

  /** What the phone knows, before the server is asked. */
  async begin() {
    this.entries = await this.storage.entries();
    this.entries.forEach(entry => { entry.ready = true; });
    this.round = await this.storage.thing("round") || null;
    this.mayEnter = this.round === null;
  }

  waiting() {
    return this.entries.filter(entry => !entry.refused && this.round && entry.round === this.round.id);
  }

  refused() {
    return this.entries.filter(entry => entry.refused);
  }

  /** Entries of rounds that this phone entered earlier. */
  stranded() {
    return this.entries.filter(entry => !entry.refused && !(this.round && entry.round === this.round.id));
  }

  machine(tag) {
    return this.round && this.round.machines.find(each => each.job.machine === tag);
  }

  /** The job as it will be when everything is sent. */
  job(tag) {
    return this.waiting().map(entry => entry.event).filter(event => event.machine === tag)
      .reduce(after, this.machine(tag).job);
  }

  /** Keeps what happened, then sends it. */
  async say(tag, what) {
    const event = { id: uuid(), machine: tag, plan: this.round.plan, at: new Date().toISOString(), ...what };
    const entry = { round: this.round.id, event };
    this.entries.push(entry);
    this.changed();
    try {
      await this.storage.add(entry);
    } catch (full) {
      this.trouble = "This phone can't keep entries (is its storage full?). Don't close this page.";
    }
    entry.ready = true;
    this.send();
  }

  async enter(round, secret) {
    await this.ask("POST", "/api/enter", { round, secret });
    await this.read();
    this.send();
  }

  async leave() {
    await this.ask("POST", "/api/leave", {});
    this.round = null;
    await this.storage.setThing("round", null);
    this.changed();
  }

  /** Reads the round as the server has it. */
  async read() {
    const round = await this.ask("GET", "/api/round");
    this.round = round;
    this.mayEnter = false;
    await this.storage.setThing("round", round).catch(() => {});
    this.changed();
  }

  /** Reads if it can; without a connection what is known stays on the screen. */
  async refresh() {
    try {
      await this.read();
      this.pause = FIRST_PAUSE;
      this.send();
    } catch (problem) {
      this.noticed(problem);
      this.again();
    }
  }

  async send() {
    const all = this.waiting().filter(entry => entry.ready).slice(0, AT_ONCE);
    if (this.sending || all.length === 0) {
      return;
    }
    this.sending = true;
    clearTimeout(this.timer);
    this.changed();
    try {
      const receipt = await this.ask("POST", "/api/events", { events: all.map(entry => entry.event) });
      await this.settle(all, receipt);
      this.pause = FIRST_PAUSE;
      this.sending = false;
      this.changed();
      this.send();
    } catch (problem) {
      this.sending = false;
      this.noticed(problem);
      if (problem instanceof Refused && problem.status === 403) {
        await this.read().catch(() => {});
      }
      this.again();
    }
  }

  async settle(all, receipt) {
    for (const job of receipt.jobs) {
      const machine = this.machine(job.machine);
      if (machine) {
        machine.job = job;
      }
    }
    const gone = all.filter(entry => receipt.kept.includes(entry.event.id));
    this.entries = this.entries.filter(entry => !gone.includes(entry));
    for (const refusal of receipt.refused) {
      const entry = all.find(each => each.event.id === refusal.id);
      if (entry) {
        entry.refused = refusal.why;
        await this.storage.replace(entry);
      }
    }
    await this.storage.setThing("round", this.round).catch(() => {});
    await this.storage.remove(gone.filter(entry => entry.n).map(entry => entry.n));
  }

  /** Forgets an entry that was refused and read. */
  async drop(entry) {
    this.entries = this.entries.filter(each => each !== entry);
    await this.storage.remove([entry.n]);
    this.changed();
  }

  again() {
    clearTimeout(this.timer);
    if (!this.mayEnter) {
      this.timer = setTimeout(() => this.refresh(), this.pause);
      this.pause = Math.min(this.pause * 2, LONGEST_PAUSE);
    }
  }

  noticed(problem) {
    if (problem instanceof Refused) {
      this.mayEnter = problem.status === 401;
      this.trouble = problem.status === 401 && !this.round ? "" : problem.message;
    }
    this.changed();
  }

  async ask(method, path, body) {
    const headers = { "X-Slotledger-Page": this.round && this.round.page || "enter" };
    if (body) {
      headers["Content-Type"] = "application/json";
    }
    let answer;
    try {
      answer = await fetch(path, {
        method, headers, body: body && JSON.stringify(body), cache: "no-store", redirect: "error",
        credentials: "same-origin", signal: AbortSignal.timeout ? AbortSignal.timeout(PATIENCE) : undefined
      });
    } catch (unreachable) {
      this.reached = false;
      throw unreachable;
    }
    this.reached = true;
    const said = await answer.json();
    if (!answer.ok) {
      throw new Refused(answer.status, said.problem || "The server did not do this.");
    }
    this.trouble = "";
    return said;
  }
}
