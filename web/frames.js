// The bench in the page: its one object, words and bytes to and from the program, frames on demand,
// and size. Nothing is drawn unless something asks for it.

/* global Module */

export const element = (id) => document.getElementById(id);
export const bench = element('bench');
export const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** What the program calls, and what the tests of the page read. */
export const Pm = {
  asked: 0,         // frames still to be drawn; 0 is rest
  frames: 0,        // frames drawn since the start
  isReady: false,   // the program has started
  isStopped: false, // the program has ended and cannot go on
  isLost: false,    // the browser has taken the drawing surface away
  hasPicture: true,
  isUnsaved: false, // the open job has changes in no file
  isTyping: false,  // a text field of the picture takes letters
  focusTold: '',    // the place of the picture that the page's own focus last followed
  firstFrameMs: 0,  // from the start of navigation
};
globalThis.Pm = Pm;

/** What the other files do at certain moments. */
export const moments = {
  afterFrame() {},
  atRest() {},
  firstFrame() {},
  failed() {},
};

/** True while the program can be called. */
export const isOpen = () => Pm.isReady && !Pm.isStopped;

// ---- Words and bytes ----------------------------------------------------------------------------

/** Calls `use(address, size)` with `bytes` in the program's memory, a zero byte after them. */
export function withBytes(bytes, use) {
  const address = Module._malloc(bytes.length + 1);
  if (!address) return false;
  Module.HEAPU8.set(bytes, address);
  Module.HEAPU8[address + bytes.length] = 0;
  try {
    use(address, bytes.length);
  } finally {
    Module._free(address);
  }
  return true;
}

export const withWords = (words, use) => withBytes(encoder.encode(words), use);

/** The zero-ended words at `address`. */
export function wordsAt(address) {
  const end = Module.HEAPU8.indexOf(0, address);
  return decoder.decode(Module.HEAPU8.slice(address, end));
}

// ---- How somebody likes the bench: never anything of a job ----------------------------------------

/** What was kept under `name`; a browser that keeps nothing is as good as a new one. */
Pm.preference = (name) => {
  try {
    return localStorage.getItem(`pouncemark.${name}`) ?? '';
  } catch {
    return '';
  }
};

Pm.keepPreference = (name, words) => {
  try {
    localStorage.setItem(`pouncemark.${name}`, words);
  } catch {
    // Then it lasts as long as the page.
  }
};

Pm.hasFingers = () => matchMedia('(pointer: coarse)').matches;

/** Whether the system asks for less motion: then nothing moves by itself. */
Pm.wantsLessMotion = () => matchMedia('(prefers-reduced-motion: reduce)').matches;

// ---- Frames -------------------------------------------------------------------------------------

let frameHandle = 0;
let hasSize = false;

function canDraw() {
  return isOpen() && hasSize && !Pm.isLost;
}

function schedule() {
  if (!frameHandle && canDraw() && Pm.asked > 0) frameHandle = requestAnimationFrame(tick);
}

// After a press the bench needs one frame to see it, one to open what was pressed, and one for that
// to take the keys.
const SETTLING_FRAMES = 3;

Pm.request = (count = SETTLING_FRAMES) => {
  Pm.asked = Math.max(Pm.asked, count);
  schedule();
};

function drawOne() {
  Pm.asked = Math.max(0, Pm.asked - 1);
  Pm.frames += 1;
  try {
    if (Module._pm_frame()) Pm.asked = Math.max(Pm.asked, SETTLING_FRAMES);
  } catch (error) {
    moments.failed(error);
    return;
  }
  if (!Pm.firstFrameMs) {
    Pm.firstFrameMs = performance.now();
    moments.firstFrame();
  }
  moments.afterFrame();
}

function tick() {
  frameHandle = 0;
  if (!canDraw()) return;
  drawOne();
  if (Pm.asked > 0) schedule();
  else moments.atRest();
}

/** Draws at once, inside the event that asks for it, until nothing waits; `most` frames at most. */
export function drawNow(most) {
  for (let i = 0; i < most && canDraw(); i += 1) {
    drawOne();
    if (i >= 2 && Pm.asked === 0) break;
  }
  Pm.request(1);
}

// ---- Size ---------------------------------------------------------------------------------------

/** Takes the bench's size in device pixels, tells the program and draws in the same task. */
export function takeSize(entries) {
  if (!isOpen() || !Pm.hasPicture) return;
  const ratio = window.devicePixelRatio || 1;
  const box = bench.getBoundingClientRect();
  let width = Math.round(box.width * ratio);
  let height = Math.round(box.height * ratio);
  // The browser's own count is exact, but some give it in CSS pixels: believe it only when near.
  const own = entries?.at?.(-1)?.devicePixelContentBoxSize?.[0];
  if (own && Math.abs(own.inlineSize - width) <= 1 && Math.abs(own.blockSize - height) <= 1) {
    width = own.inlineSize;
    height = own.blockSize;
  }
  if (!width || !height) return;
  if (hasSize && bench.width === width && bench.height === height && Pm.ratio === ratio) return;
  bench.width = width;
  bench.height = height;
  Pm.ratio = ratio;
  hasSize = true;
  Module._pm_resize(width, height, ratio);
  Pm.request();
  if (canDraw()) drawOne();
}

export function watchSize() {
  const observer = new ResizeObserver(takeSize);
  try {
    observer.observe(bench, {box: 'device-pixel-content-box'});
  } catch {
    observer.observe(bench);
  }
  addEventListener('resize', () => takeSize());
}

/** Without a picture there is no size to take: the words are laid out for a common window. */
export function pretendSize() {
  Pm.ratio = 1;
  hasSize = true;
  Module._pm_resize(1366, 768, 1);
  Pm.request();
}
