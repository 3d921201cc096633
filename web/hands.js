// Mouse, pen, fingers and keys, typing, copying and pasting: everything the hands do on the bench.

import {Pm, bench, drawNow, element, isOpen, moments, withWords} from './frames.js';

/* global Module */

// A finger presses when it has moved this far (CSS pixels) or is lifted; with a second finger before
// that the two move and scale, and nothing is pressed.
const FINGER_MOVE = 6;
const WHEEL_STEP = 100;
// The numbers widgets/bench_key.cpp knows keys without a sign by.
const KEY_NUMBERS = {
  Tab: 256, ArrowLeft: 257, ArrowRight: 258, ArrowUp: 259, ArrowDown: 260, PageUp: 261,
  PageDown: 262, Home: 263, End: 264, Insert: 265, Delete: 266, Backspace: 267, Enter: 268,
  Escape: 269,
};
const POINTER_SHAPES = ['default', 'text', 'move', 'ns-resize', 'ew-resize', 'nesw-resize',
  'nwse-resize', 'pointer', 'not-allowed'];

const typing = element('typing');

// ---- Mouse, pen and fingers ---------------------------------------------------------------------

/** A place of the window in device pixels of the bench. */
function placeAt(x, y) {
  const box = bench.getBoundingClientRect();
  return {
    x: (x - box.left) * bench.width / box.width,
    y: (y - box.top) * bench.height / box.height,
  };
}

const placeOf = (event) => placeAt(event.clientX, event.clientY);

/** Bit 0 Ctrl (or Command), 1 Shift, 2 Alt. The key for third signs counts as none of them. */
function heldKeys(event) {
  const writesThirdSigns = event.getModifierState?.('AltGraph');
  const ctrl = (event.ctrlKey || event.metaKey) && !writesThirdSigns;
  const alt = event.altKey && !writesThirdSigns;
  return (ctrl ? 1 : 0) | (event.shiftKey ? 2 : 0) | (alt ? 4 : 0);
}

function sendPointer(event, at, buttons, isFinger) {
  Module._pm_pointer(at.x, at.y, buttons, heldKeys(event), isFinger ? 1 : 0);
  Pm.request();
}

const fingers = new Map(); // by pointer id: {x, y} in CSS pixels
let finger = null;         // the one that taps or drags
let pair = null;           // two fingers: their distance and middle

function pressFinger(event) {
  finger.isDown = true;
  sendPointer(event, finger.at, 1, true);
}

function pairOf() {
  const [a, b] = fingers.values();
  return {x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, apart: Math.hypot(a.x - b.x, a.y - b.y)};
}

function fingerDown(event) {
  // While one finger drags, another that comes down is a slip of the hand.
  if (finger?.isDown) return;
  fingers.set(event.pointerId, {x: event.clientX, y: event.clientY});
  if (fingers.size === 1) {
    finger = {id: event.pointerId, at: placeOf(event), x: event.clientX, y: event.clientY};
    sendPointer(event, finger.at, 0, true);
    return;
  }
  finger = null;
  if (fingers.size === 2) {
    pair = pairOf();
    sendPointer(event, placeAt(pair.x, pair.y), 0, true);
  }
}

function movePair() {
  const now = pairOf();
  const scale = pair.apart > 0 && now.apart > 0 ? Math.log(now.apart / pair.apart) : 0;
  const across = (now.x - pair.x) / WHEEL_STEP;
  const down = (now.y - pair.y) / WHEEL_STEP;
  if (across || down) Module._pm_wheel(across, down);
  if (scale) Module._pm_scale(scale);
  pair = now;
  Pm.request();
}

function fingerMove(event) {
  if (!fingers.has(event.pointerId)) return;
  fingers.set(event.pointerId, {x: event.clientX, y: event.clientY});
  if (pair && fingers.size === 2) {
    movePair();
    return;
  }
  if (!finger || finger.id !== event.pointerId) return;
  const moved = Math.hypot(event.clientX - finger.x, event.clientY - finger.y);
  if (!finger.isDown && moved >= FINGER_MOVE) pressFinger(event);
  if (finger.isDown) sendPointer(event, placeOf(event), 1, true);
}

function fingerUp(event) {
  if (!fingers.delete(event.pointerId)) return;
  if (fingers.size < 2) pair = null;
  if (fingers.size === 0 && !finger) {
    Module._pm_pointer_gone();
    Pm.request();
  }
  if (!finger || finger.id !== event.pointerId) return;
  if (!finger.isDown && event.type === 'pointerup') pressFinger(event);
  sendPointer(event, event.type === 'pointerup' ? placeOf(event) : finger.at, 0, true);
  finger = null;
  Module._pm_pointer_gone();
  // Inside the event, so that a text field may bring up the tablet's own keys.
  drawNow(8);
}

function pointerDown(event) {
  if (!isOpen()) return;
  if (!Pm.isTyping) bench.focus({preventScroll: true});
  Pm.focusTold = '';
  bench.setPointerCapture?.(event.pointerId);
  if (event.pointerType === 'touch') fingerDown(event);
  else sendPointer(event, placeOf(event), event.buttons & 7, false);
}

function pointerMove(event) {
  if (!isOpen()) return;
  if (event.pointerType === 'touch') fingerMove(event);
  else sendPointer(event, placeOf(event), event.buttons & 7, false);
}

function pointerUp(event) {
  if (!isOpen()) return;
  const isUp = event.type === 'pointerup';
  if (event.pointerType === 'touch') fingerUp(event);
  else sendPointer(event, placeOf(event), isUp ? event.buttons & 7 : 0, false);
}

function pointerLeave(event) {
  if (!isOpen() || event.pointerType === 'touch' || event.buttons) return;
  Module._pm_pointer_gone();
  Pm.request();
}

/** Wheel steps; the program's own listeners know only old units, so they must not hear it. */
function wheel(event) {
  if (event.target !== bench) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  if (!isOpen()) return;
  const unit = event.deltaMode === 1 ? WHEEL_STEP / 3 : event.deltaMode === 2 ? WHEEL_STEP * 8 : 1;
  const step = -unit / WHEEL_STEP;
  // Two fingers on a pad arrive as the wheel with Ctrl.
  if (event.ctrlKey) Module._pm_scale(event.deltaY * step);
  else Module._pm_wheel(event.deltaX * step, event.deltaY * step);
  Pm.request();
}

Pm.pointerShape = (shape) => { bench.style.cursor = POINTER_SHAPES[shape] ?? 'default'; };

// ---- Keys ---------------------------------------------------------------------------------------

const keysDown = new Map(); // by place on the keyboard: the number sent
let pasteKeyIsDown = false;

function keyNumber(key) {
  if (key.length !== 1) return KEY_NUMBERS[key] ?? 0;
  const code = key.toUpperCase().charCodeAt(0);
  return code < 128 ? code : 0;
}

/** A field of the page itself, outside the picture: the browser's keys are wholly its own there. */
function isPageField(target) {
  return target !== typing && target instanceof Element &&
    target.matches('input, textarea, select, [contenteditable]');
}

/** Offers a key with Ctrl to the bench, whose table of keys knows its own; true when it took it. */
function takeCtrlKey(event) {
  if ((heldKeys(event) & 5) !== 1 || isPageField(event.target)) return false;
  const [shift, again] = [event.shiftKey ? 1 : 0, event.repeat ? 1 : 0];
  if (!Module._pm_ctrl_key(keyNumber(event.key), shift, again)) return false;
  event.preventDefault();
  Pm.request();
  return true;
}

/** True when the browser alone should have the key. */
function isBrowsersKey(event) {
  if (isPageField(event.target)) return true;
  if (event.key === 'Tab') return !Pm.isTyping;
  const isOnButton = event.target instanceof HTMLButtonElement;
  return isOnButton && (event.key === 'Enter' || event.key === ' ');
}

function keyDown(event) {
  // The program's own listeners would swallow Backspace and Tab everywhere: they hear no key.
  event.stopImmediatePropagation();
  if (!isOpen() || event.isComposing || event.keyCode === 229) return;
  if (takeCtrlKey(event) || isBrowsersKey(event)) return;
  const held = heldKeys(event);
  const isCommand = (held & 5) !== 0;
  pasteKeyIsDown = isCommand && event.key.toLowerCase() === 'v' ||
    event.shiftKey && event.key === 'Insert';
  // Alt with any key and Ctrl with a letter are the browser's, unless a text is being written.
  const isLeft = !Pm.isTyping && (event.altKey || isCommand && event.key.length === 1);
  const number = isLeft ? 0 : keyNumber(event.key);
  if (number) keysDown.set(event.code, number);
  Module._pm_key(number, 1, held);
  if (!Pm.isTyping && !isCommand && event.key.length === 1) {
    withWords(event.key, (address) => Module._pm_char(address));
  }
  const isFree = !Pm.isTyping && !isCommand && Pm.hasPicture;
  const wouldScroll = isFree && (number >= 257 || number === 32);
  if (wouldScroll || event.key === 'Tab') event.preventDefault();
  Pm.request();
}

function releaseAllKeys() {
  for (const number of keysDown.values()) Module._pm_key(number, 0, 0);
  keysDown.clear();
}

function keyUp(event) {
  event.stopImmediatePropagation();
  if (!isOpen()) return;
  // Some systems report no key as let go while Command is held.
  if (event.key === 'Meta') releaseAllKeys();
  Module._pm_key(keysDown.get(event.code) ?? 0, 0, heldKeys(event));
  keysDown.delete(event.code);
  Pm.request();
}

// ---- Typing, composing, copy and paste ----------------------------------------------------------

let returnTo = null; // where the keys go when the text field closes
let copyEvent = null;

Pm.setTyping = (isActive, figuresOnly, x, y, height) => {
  if (isActive && !Pm.isTyping) returnTo = document.activeElement;
  if (isActive) {
    typing.style.left = `${Math.max(0, x)}px`;
    typing.style.top = `${Math.max(0, y)}px`;
    typing.style.height = `${Math.max(1, height)}px`;
    typing.style.fontSize = `${Math.max(12, height / 1.215)}px`;
    typing.inputMode = figuresOnly ? 'decimal' : 'text';
  }
  const ends = Pm.isTyping && !isActive;
  Pm.isTyping = isActive;
  if (!ends) return;
  typing.value = '';
  typing.classList.remove('composing');
  if (document.activeElement !== typing) return;
  const isPlace = returnTo instanceof HTMLButtonElement && returnTo.isConnected;
  (isPlace ? returnTo : bench).focus({preventScroll: true});
};

/** The hidden text box has the keys while a field of the picture is written in. */
function keepTypingInFocus() {
  const active = document.activeElement;
  if (!Pm.isTyping || active === typing || isPageField(active)) return;
  typing.focus({preventScroll: true});
}

function sendTyped(words) {
  const clean = words.replace(/[\r\n]+/g, ' ');
  typing.value = '';
  if (clean === '') return;
  withWords(clean, (address) => Module._pm_char(address));
  Pm.request();
}

function onInput(event) {
  if (event.isComposing || !isOpen()) return;
  // Enter is a key, not a sign; and what comes after the field has closed came as a key too.
  if (event.inputType === 'insertLineBreak' || !Pm.isTyping) typing.value = '';
  else sendTyped(typing.value);
}

Pm.copied = (words) => {
  if (copyEvent) {
    copyEvent.clipboardData.setData('text/plain', words);
    copyEvent.preventDefault();
  } else {
    navigator.clipboard?.writeText(words).catch(() => {});
  }
};

/** The field copies in a frame; drawn inside the event, the browser asks nobody for leave. */
function onCopy(event) {
  if (!Pm.isTyping) return;
  copyEvent = event;
  drawNow(4);
  copyEvent = null;
}

function onPaste(event) {
  if (!Pm.isTyping || isPageField(event.target)) return;
  const words = event.clipboardData.getData('text/plain').replace(/\0/g, '');
  event.preventDefault();
  withWords(words, (address) => Module._pm_paste(address));
  // By the menu there was no key: then the words come as if typed.
  if (!pasteKeyIsDown) sendTyped(words);
  pasteKeyIsDown = false;
  Pm.request();
}

moments.afterFrame = keepTypingInFocus;

export function listenToHands() {
  // Capture on the window and before bench.js runs, so that these come first.
  addEventListener('keydown', keyDown, true);
  addEventListener('keyup', keyUp, true);
  addEventListener('keypress', (event) => event.stopImmediatePropagation(), true);
  document.addEventListener('wheel', wheel, {passive: false, capture: true});
  bench.addEventListener('pointerdown', pointerDown);
  bench.addEventListener('pointermove', pointerMove);
  bench.addEventListener('pointerup', pointerUp);
  bench.addEventListener('pointercancel', pointerUp);
  bench.addEventListener('pointerleave', pointerLeave);
  // Focus is ours: the press of a mouse must not take it from the text box.
  bench.addEventListener('mousedown', (event) => event.preventDefault());
  bench.addEventListener('contextmenu', (event) => event.preventDefault());
  typing.addEventListener('input', onInput);
  typing.addEventListener('compositionstart', () => typing.classList.add('composing'));
  typing.addEventListener('compositionend', (event) => {
    typing.classList.remove('composing');
    sendTyped(event.data);
  });
  document.addEventListener('copy', onCopy);
  document.addEventListener('cut', onCopy);
  document.addEventListener('paste', onPaste);
  for (const name of ['focus', 'blur']) {
    addEventListener(name, () => {
      if (!isOpen()) return;
      if (name === 'blur') releaseAllKeys();
      Module._pm_focus(name === 'focus' ? 1 : 0);
      Pm.request();
    });
  }
}
