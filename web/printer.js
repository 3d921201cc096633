// Printing, from the page's side: a worker with a program of its own, the files it hands over, and
// the browser's own viewer laid over the bench.

import {pageFiles} from './beside.js';
import {Pm, isOpen, withWords} from './frames.js';

/* global Module */

const PDF = 'application/pdf';
const FACES = ['faces/main-regular.ttf', 'faces/main-bold.ttf', 'faces/wide.ttf'];
// Browsers let go of downloads that come all at once.
const BETWEEN_FILES_MS = 150;

Pm.workerViolations = [];  // what the policy had to say inside the worker
let worker = null;
let order = null;          // what is being printed: {looks, files}

/** The one door for workers: our own file, and no other. */
function ownWorker(name) {
  const policy = globalThis.trustedTypes?.createPolicy('pm-worker', {
    createScriptURL(wanted) {
      if (wanted !== 'worker.js') throw new TypeError('only our own files');
      return wanted;
    },
  });
  return policy ? policy.createScriptURL(name) : name;
}

let workerAddress = null;

function endWorker() {
  worker?.terminate();
  worker = null;
  order = null;
}

function call(use) {
  if (!isOpen()) return;
  use();
  Pm.request();
}

function failed(sentence) {
  const isAsked = order !== null;
  endWorker();
  // Getting ready asks nothing yet: what is wrong is said when something is to be printed.
  if (!isAsked) return;
  call(() => withWords(sentence, (address) => Module._pm_print_failed(address)));
}

function saveAll(files) {
  files.forEach(({name, bytes}, index) => {
    setTimeout(() => Pm.saveFile(name, PDF, bytes), index * BETWEEN_FILES_MS);
  });
}

function made({name, sha256, buffer}) {
  const bytes = new Uint8Array(buffer);
  order.files.push({name, bytes});
  call(() => withWords(name, (nameAt) => withWords(sha256, (shaAt) => {
    Module._pm_print_made(nameAt, shaAt, bytes.length);
  })));
}

function ended() {
  const {looks, files} = order;
  order = null;
  if (looks) hold(files[0]);
  else saveAll(files);
  call(() => Module._pm_print_ended());
}

function heard({data}) {
  if (data.violation) Pm.workerViolations.push(data.violation);
  if (!order) return;
  if (data.pages) call(() => Module._pm_print_went_on(data.printed, data.pages));
  if (data.file) made(data.file);
  if (data.ended) ended();
  if (data.refused) {
    order = null;
    call(() => withWords(data.refused, (address) => Module._pm_print_failed(address)));
  }
  if (data.failed) failed(`Printing has stopped: ${data.failed}. Nothing was saved.`);
}

function startWorker() {
  workerAddress ??= ownWorker('worker.js');
  worker = new Worker(workerAddress);
  worker.onmessage = heard;
  worker.onerror = (event) => {
    event.preventDefault();
    const why = event.message ? `: ${event.message}` : ', its part of the page did not come';
    failed(`Printing has stopped${why}. Nothing was saved.`);
  };
  worker.postMessage({faces: FACES.map((name) => ({name, bytes: pageFiles.get(name)}))});
}

/** Fetches the worker and its program before they are needed. */
Pm.preparePrinting = () => {
  if (worker) return;
  try {
    startWorker();
  } catch {
    // It is tried again, and said, when something is to be printed.
  }
};

Pm.startPrinting = (job, wish, looks) => {
  if (order) endWorker();
  order = {looks, files: []};
  try {
    if (!worker) startWorker();
    worker.postMessage({job, order: wish});
  } catch (error) {
    // Not from inside the program that called: it is told in a turn of its own.
    setTimeout(() => failed(`Printing could not begin: ${error.message}. Nothing was saved.`));
  }
};

Pm.stopPrinting = endWorker;

// ---- The file itself ----------------------------------------------------------------------------

let held = null;   // {name, bytes, address}: what the viewer shows is what is saved
let viewer = null;
let shownPage = 0;

Pm.canShowPrinted = () => navigator.pdfViewerEnabled ?? false;

function hold({name, bytes}) {
  Pm.putPrintedAway();
  held = {name, bytes, address: URL.createObjectURL(new Blob([bytes], {type: PDF}))};
}

function openViewer(page) {
  viewer?.remove();
  viewer = document.createElement('iframe');
  viewer.id = 'viewer';
  viewer.title = `The file itself: ${held.name}`;
  viewer.src = `${held.address}#page=${page}&toolbar=0&navpanes=0&view=Fit`;
  document.querySelector('main').append(viewer);
  shownPage = page;
}

Pm.showPrinted = (left, top, right, bottom, page) => {
  if (!held) return;
  if (!viewer || page !== shownPage) openViewer(page);
  const place = {left, top, width: right - left, height: bottom - top};
  for (const [side, pixels] of Object.entries(place)) {
    viewer.style[side] = `${Math.round(pixels / Pm.ratio)}px`;
  }
};

Pm.putPrintedAway = () => {
  viewer?.remove();
  viewer = null;
  if (held) URL.revokeObjectURL(held.address);
  held = null;
};

Pm.savePrinted = () => {
  if (!held) return;
  const link = document.createElement('a');
  link.href = held.address;
  link.download = held.name;
  link.click();
};

Pm.printShown = () => {
  try {
    viewer?.contentWindow.print();
  } catch {
    // The viewer keeps its own buttons, and the file can be saved beside it.
  }
};
