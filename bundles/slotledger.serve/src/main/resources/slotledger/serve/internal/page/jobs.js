// What becomes of a job by what is entered; the same as the server does, so that a phone without a connection shows it.

export const STATES = {
  "planned": { word: "planned", sign: "\u25CB" },
  "bagged": { word: "bagged", sign: "\u25D2" },
  "in-work": { word: "in work", sign: "\u25B6" },
  "done": { word: "done", sign: "\u2713" },
  "done-differently": { word: "done differently", sign: "\u2248" },
  "failed": { word: "failed", sign: "\u2717" },
  "put-back": { word: "put back", sign: "\u21BA" }
};

export function isEnded(state) {
  return ["done", "done-differently", "failed", "put-back"].includes(state);
}

/** A random UUID (RFC 9562, version 4); the browser's own function is missing where a page is not encrypted. */
export function uuid() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = bytes[6] & 0x0f | 0x40;
  bytes[8] = bytes[8] & 0x3f | 0x80;
  const hex = [...bytes].map(each => each.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

export function after(job, event) {
  const next = {
    ...job,
    ticked: [...job.ticked],
    serials: { ...job.serials },
    deviations: [...job.deviations]
  };
  switch (event.kind) {
    case "became":
      next.state = event.state;
      next.reason = event.reason;
      break;
    case "ticked":
      next.ticked = next.ticked.filter(step => step !== event.step);
      if (event.done) {
        next.ticked.push(event.step);
      }
      break;
    case "serial":
      delete next.serials[event.slot];
      if (event.serial !== "") {
        next.serials[event.slot] = event.serial;
      }
      break;
    case "deviated":
      next.deviations.push({ slot: event.slot, text: event.text });
      break;
  }
  return next;
}
