/*
 * Reads a QR code with the camera: with what the browser brings where it can, else with a decoder of our own server.
 */

const PATH = /\/p\/([0-9a-z]{7})(?:-(\d{1,3}))?\/?$/i;
/** Wide enough for a code that fills a third of the picture. */
const WIDTH = 640;

/** The plant and item that a printed address stands for; null for any other code. */
export function readAddress(text) {
  try {
    const found = PATH.exec(new URL(text.trim()).pathname);
    return found ? { plant: found[1].toUpperCase(), item: found[2] ? Number(found[2]) : null } : null;
  } catch {
    return null;
  }
}

async function decoder() {
  if ("BarcodeDetector" in globalThis && (await BarcodeDetector.getSupportedFormats()).includes("qr_code")) {
    const detector = new BarcodeDetector({ formats: ["qr_code"] });
    return async (canvas) => (await detector.detect(canvas))[0]?.rawValue ?? null;
  }
  await import("/walk/file/jsqr.js");
  return async (canvas) => {
    const picture = canvas.getContext("2d", { willReadFrequently: true }).getImageData(0, 0, canvas.width, canvas.height);
    return globalThis.jsQR(picture.data, picture.width, picture.height)?.data ?? null;
  };
}

function drawn(canvas, source, width, height) {
  const scale = Math.min(1, WIDTH / Math.max(width, height));
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  canvas.getContext("2d", { willReadFrequently: true }).drawImage(source, 0, 0, canvas.width, canvas.height);
}

/** Reads the code on a photograph; null when there is none. */
export async function scanPicture(file) {
  const read = await decoder();
  const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
  const canvas = document.createElement("canvas");
  drawn(canvas, picture, picture.width, picture.height);
  return read(canvas);
}

/**
 * Shows the camera until a code is read.
 *
 * @param stopped a signal that ends it
 * @returns the text of the code; null when it was stopped
 */
export async function scanCamera(video, stopped) {
  const read = await decoder();
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" }, audio: false });
  const canvas = document.createElement("canvas");
  try {
    video.srcObject = stream;
    await video.play();
    while (!stopped.aborted) {
      if (video.videoWidth > 0) {
        drawn(canvas, video, video.videoWidth, video.videoHeight);
        const text = await read(canvas);
        if (text) return text;
      }
      await new Promise((resolve) => setTimeout(resolve, 120));
    }
    return null;
  } finally {
    stream.getTracks().forEach((track) => track.stop());
    video.srcObject = null;
  }
}
