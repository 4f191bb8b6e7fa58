// Small pieces of pages. Texts are always set as texts, never as markup.

export function element(name, options = {}, ...children) {
  const node = document.createElement(name);
  for (const [key, value] of Object.entries(options)) {
    if (key === "on") {
      Object.entries(value).forEach(([event, act]) => node.addEventListener(event, act));
    } else if (key === "text") {
      node.textContent = value;
    } else if (value !== null && value !== false) {
      node.setAttribute(key, value === true ? "" : value);
    }
  }
  node.append(...children.filter(child => child !== null));
  return node;
}

/** A name of a user's thing; its writing direction doesn't touch what is around it. */
export function name(text) {
  return element("bdi", { text });
}

export function list(texts, ordered = false) {
  return element(ordered ? "ol" : "ul", {}, ...texts.map(text => element("li", { text })));
}

export function fold(title, open, ...children) {
  return element("details", { open }, element("summary", { text: title }), ...children);
}

const SHAPES = ["svg", "g", "rect", "text"];
const LOOKS = ["viewBox", "x", "y", "width", "height", "rx", "fill", "stroke", "stroke-width", "stroke-dasharray",
  "font-size", "font-family", "font-weight", "class"];

function copied(from) {
  const to = document.createElementNS("http://www.w3.org/2000/svg", from.localName);
  for (const look of LOOKS) {
    if (from.hasAttribute(look)) {
      to.setAttribute(look, from.getAttribute(look));
    }
  }
  for (const child of from.childNodes) {
    if (child.nodeType === Node.TEXT_NODE) {
      to.append(child.data);
    } else if (child.nodeType === Node.ELEMENT_NODE && SHAPES.includes(child.localName)) {
      to.append(copied(child));
    }
  }
  return to;
}

/** A drawing and the same in words for who can't see it; of the drawing only shapes and texts are taken over. */
export function picture(title, drawn) {
  const figure = element("figure", {}, element("figcaption", { text: title }));
  const root = new DOMParser().parseFromString(drawn.svg, "image/svg+xml").documentElement;
  if (root.localName === "svg") {
    const svg = copied(root);
    svg.setAttribute("aria-hidden", "true");
    figure.append(svg);
  }
  const words = list(drawn.words);
  words.className = root.localName === "svg" ? "unseen" : "";
  figure.append(words);
  return figure;
}

/** Offers some answers, each with its text; resolves to one, or to null where nothing is to be done. */
export function choose(title, answers) {
  return new Promise(resolve => {
    const box = document.getElementById("ask");
    const button = (answer, text) => element("button", { type: "button", text, "data-answer": answer || "",
      on: { click: () => {
        box.close();
        resolve(answer);
      } } });
    box.replaceChildren(element("h2", { id: "ask-title", text: title }), element("div", { class: "choices" },
      ...answers.map(([answer, text]) => button(answer, text)), button(null, "Go back")));
    box.oncancel = () => resolve(null);
    box.showModal();
  });
}

/** Asks for words; resolves to them, or to null where nothing is to be done. */
export function askWords(title, text, button, needsWords) {
  return new Promise(resolve => {
    const box = document.getElementById("ask");
    const words = element("textarea", { id: "ask-words", rows: 3, maxlength: 1000, "aria-labelledby": "ask-title" });
    const missing = element("p", { class: "problem", role: "alert" });
    const close = answer => {
      box.close();
      resolve(answer);
    };
    const form = element("form", { on: { submit: event => {
      event.preventDefault();
      if (needsWords && words.value.trim() === "") {
        missing.textContent = "Say in a few words why.";
        words.focus();
      } else {
        close(words.value.trim());
      }
    } } },
    element("h2", { id: "ask-title", text: title }),
    element("p", { text }),
    needsWords ? words : null,
    missing,
    element("div", { class: "row" },
      element("button", { type: "button", text: "Go back", on: { click: () => close(null) } }),
      element("button", { class: "main", text: button })));
    box.replaceChildren(form);
    box.oncancel = () => resolve(null);
    box.showModal();
  });
}
