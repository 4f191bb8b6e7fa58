// Reads codes with the phone's camera, where the browser can do that by itself.

import { element } from "/parts.js";

const FORMATS = ["qr_code", "code_128", "code_39", "data_matrix", "ean_13"];
const EVERY = 200;

export function canScan() {
  return "BarcodeDetector" in window && !!navigator.mediaDevices && !!navigator.mediaDevices.getUserMedia;
}

/** The tag in what a code says: the tag itself, or a link to its page. */
export function tagOf(text) {
  const at = text.indexOf("#m=");
  if (/^https?:\/\//i.test(text) && at >= 0) {
    try {
      return decodeURIComponent(text.slice(at + 3).replace(/\+/g, " "));
    } catch (malformed) {
      return text;
    }
  }
  return text.trim();
}

/** Resolves to what a code says, or to null where none was read. */
export async function scan(title) {
  const box = document.getElementById("ask");
  const video = element("video", { playsinline: true, muted: true });
  const said = element("p", { role: "status", text: "Hold the code into the picture." });
  let stream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
  } catch (refused) {
    return null;
  }
  return new Promise(resolve => {
    let timer = null;
    const stop = answer => {
      clearInterval(timer);
      stream.getTracks().forEach(track => track.stop());
      box.close();
      resolve(answer);
    };
    box.replaceChildren(element("h2", { id: "ask-title", text: title }), video, said,
      element("button", { type: "button", text: "Stop", on: { click: () => stop(null) } }));
    box.oncancel = () => stop(null);
    box.showModal();
    video.srcObject = stream;
    video.play();
    const detector = new window.BarcodeDetector({ formats: FORMATS });
    timer = setInterval(async () => {
      const codes = await detector.detect(video).catch(() => []);
      if (codes.length > 0) {
        stop(codes[0].rawValue);
      }
    }, EVERY);
  });
}
