// What stands beside the picture: its words for those who hear the page and for the browser's own
// find, a button over each named place, and files in and out.

import {Pm, bench, drawNow, element, isOpen, moments, withBytes, withWords, wordsAt}
  from './frames.js';

/* global Module */

const LARGEST_FILE = 32 * 1024 * 1024;

const chooser = element('chooser');

// ---- Words --------------------------------------------------------------------------------------

const lines = new Map();        // by id: its paragraph
const placeButtons = new Map(); // by id: its button
const knownPlaces = new Set();  // every name that ever was a place: its words stand on its button
let lastPlaces = '';
let linesChanged = false;

Pm.mirrorLine = (id, words) => {
  let line = lines.get(id);
  if ((line?.textContent ?? '') === words) return;
  linesChanged = true;
  if (words === '') {
    line.remove();
    lines.delete(id);
    return;
  }
  if (!line) {
    line = document.createElement('p');
    line.dataset.line = id;
    element(id.startsWith('finding') ? 'mirror-findings' : 'mirror-lines').append(line);
    lines.set(id, line);
  }
  line.textContent = words;
};

const ENTER = 268; // as hands.js numbers it

/** Presses a place as Enter does while it has the focus. */
function pressPlace(event) {
  if (!isOpen()) return;
  tellFocus(event.currentTarget.dataset.place);
  drawNow(2);
  for (const isDown of [1, 0]) Module._pm_key(ENTER, isDown, 0);
  drawNow(10);
}

let isFollowing = false;

function tellFocus(id) {
  if (!isOpen() || isFollowing) return;
  Pm.focusTold = id;
  withWords(id, (address) => Module._pm_place_focused(address));
  Pm.request();
}

/** The page's own focus goes where the picture's has gone, so that Tab goes on from there. */
function followFocus() {
  const id = wordsAt(Module._pm_focused());
  const button = placeButtons.get(id);
  if (Pm.isTyping || id === Pm.focusTold || !button) return;
  Pm.focusTold = id;
  isFollowing = true;
  button.focus({preventScroll: true});
  isFollowing = false;
}

function placeButton(id) {
  let button = placeButtons.get(id);
  if (!button) {
    button = document.createElement('button');
    button.type = 'button';
    button.dataset.place = id;
    button.addEventListener('click', pressPlace);
    button.addEventListener('focus', () => tellFocus(id));
    placeButtons.set(id, button);
  }
  return button;
}

function layPlace(button, id, box, state) {
  const words = lines.get(id)?.textContent ?? id.replace(/[._-]+/g, ' ');
  if (button.textContent !== words) button.textContent = words;
  for (const [name, is, value] of [['aria-pressed', 2, 'true'], ['aria-current', 3, 'page']]) {
    if (state === is) button.setAttribute(name, value);
    else button.removeAttribute(name);
  }
  const [left, top, right, bottom] = box;
  button.style.left = `${left}px`;
  button.style.top = `${top}px`;
  button.style.width = `${right - left}px`;
  button.style.height = `${bottom - top}px`;
}

/** Lays a button over each place of the picture at rest, in the frame's own order. */
function mirrorPlaces() {
  const told = wordsAt(Module._pm_places());
  if (told === lastPlaces && !linesChanged) return;
  lastPlaces = told;
  linesChanged = false;
  const ground = element('places');
  const seen = new Set();
  let next = ground.firstChild;
  for (const [id, left, top, right, bottom, state] of JSON.parse(told)) {
    if (seen.has(id) || !state) continue;
    seen.add(id);
    knownPlaces.add(id);
    const box = [left, top, right, bottom];
    const button = placeButton(id);
    layPlace(button, id, box, state);
    if (button === next) next = next.nextSibling;
    else ground.insertBefore(button, next);
  }
  for (const [id, button] of placeButtons) {
    if (seen.has(id)) continue;
    if (document.activeElement === button) {
      bench.focus({preventScroll: true});
      Pm.focusTold = '';
    }
    button.remove();
    placeButtons.delete(id);
  }
  // Said once: by the button, or not at all when the thing is no longer there.
  for (const [id, line] of lines) line.hidden = knownPlaces.has(id);
}

// ---- Files --------------------------------------------------------------------------------------

export const pageFiles = new Map(); // by name: its bytes

Pm.pageFileSize = (name) => pageFiles.get(name)?.length ?? 0;
Pm.pageFile = (name) => pageFiles.get(name);
Pm.chooseFile = () => chooser.click();
/** The month from 0, day, hour and minute as one number of two digits each. */
Pm.moment = () => {
  const now = new Date();
  return ((now.getMonth() * 100 + now.getDate()) * 100 + now.getHours()) * 100 + now.getMinutes();
};

Pm.saveFile = (name, kind, bytes) => {
  const address = URL.createObjectURL(new Blob([bytes], {type: kind}));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60000);
};

function refuseFile(sentence) {
  withWords(sentence, (address) => Module._pm_file_refused(address));
  Pm.request();
}

async function takeFiles(files) {
  if (files.length !== 1) {
    refuseFile(`${files.length} files at once: the bench takes one job. Choose a single file.`);
    return;
  }
  const [file] = files;
  if (file.size > LARGEST_FILE) {
    const size = (file.size / 1024 / 1024).toFixed(1);
    refuseFile(`${size} MB: no job is over 32 MB. Choose the file that was saved from the bench.`);
    return;
  }
  let bytes;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    refuseFile(`${file.name} could not be read. If it is still arriving, choose it again later.`);
    return;
  }
  let isTaken = false;
  try {
    withWords(file.name, (name) => {
      isTaken = withBytes(bytes, (address, size) => Module._pm_file(name, address, size));
    });
  } catch (error) {
    moments.failed(error);
    return;
  }
  if (!isTaken) refuseFile(`${file.name} is more than the memory takes. Close other pages.`);
  Pm.request();
}

function dropped(event) {
  event.preventDefault();
  if (!isOpen() || !event.dataTransfer) return;
  const entries = [...event.dataTransfer.items].map((item) => item.webkitGetAsEntry?.());
  if (entries.some((entry) => entry?.isDirectory)) {
    refuseFile('That is a folder: open the job file inside it.');
  } else if (event.dataTransfer.files.length > 0) {
    takeFiles([...event.dataTransfer.files]);
  }
}

moments.atRest = () => {
  mirrorPlaces();
  followFocus();
};

export function listenForFiles() {
  addEventListener('dragover', (event) => event.preventDefault());
  addEventListener('drop', dropped);
  chooser.addEventListener('change', () => {
    const files = [...chooser.files];
    chooser.value = '';
    if (files.length > 0) takeFiles(files);
  });
}
