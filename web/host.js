// The browser's side of the bench: fetches what it needs, starts the program, and says so in a
// sentence when something fails. The program (bench.js, bench.wasm) calls the page through the one
// object `Pm` and is called through its pm_... functions; web/host/host.h says what each is for.

import {listenForFiles, pageFiles} from './beside.js';
import {Pm, bench, element, encoder, isOpen, moments, pretendSize, takeSize, watchSize, withBytes,
  withWords, wordsAt} from './frames.js';
import {listenToHands} from './hands.js';
import './printer.js';
import {foundRecord} from './store.js';

/* global Module */

const SLOW_START_MS = 4000;
const LATEST_RECORD_MS = 3000;
const TRIES_AFTER_MS = [0, 1000, 4000];
const NOT_LAID_OUT = 'The bench could not be laid out. Load the page again; if it stays so, try ' +
  'another browser.';
const HAS_STOPPED = 'The bench has stopped: a mistake of the program, not yours. Save the job, ' +
  'then load the page again.';
const NO_PICTURE = ['This browser gives the page no WebGL2, so the picture is missing.',
  'Figures, findings and buttons stand below as plain text. For the bench itself, try another ' +
  'browser.'];

let slowTimer = 0;
const fetched = {bytes: 0, total: 0};

function say(words, more = '') {
  element('notice-words').textContent = words;
  element('notice-more').textContent = more;
  element('notice').hidden = false;
}

/** The start did not work: a sentence instead of the bench. */
function failed(words, error) {
  if (Pm.isStopped) return;
  Pm.isStopped = true;
  clearInterval(slowTimer);
  bench.hidden = true;
  say(words, error ? `${error.message ?? error}` : '');
}

/** The program ended while it was in use: say so, and offer what is still in its memory. */
function stopped(error) {
  if (!Pm.isReady) {
    failed(NOT_LAID_OUT, error);
    return;
  }
  if (Pm.isStopped) return;
  Pm.isStopped = true;
  document.documentElement.classList.add('over-bench');
  say(HAS_STOPPED, `${error?.message ?? error}`);
  const button = element('notice-save');
  button.hidden = false;
  button.focus();
  button.onclick = () => {
    try {
      const job = wordsAt(Module._pm_job());
      if (job) Pm.saveFile('rescued-job.json', 'application/json', encoder.encode(job));
      else say('No job was open. Load the page again.');
    } catch (second) {
      say('The job could not be read any more. Load the page again and open the last saved file.',
        `${second.message ?? second}`);
    }
  };
}

Pm.noPicture = () => {
  Pm.hasPicture = false;
  document.documentElement.classList.add('no-picture');
  say(...NO_PICTURE);
};

function sayProgress() {
  const sofar = (fetched.bytes / 1e6).toFixed(1);
  const whole = fetched.total > fetched.bytes ? ` of ${(fetched.total / 1e6).toFixed(1)}` : '';
  element('notice-more').textContent = `still fetching, ${sofar}${whole} MB`;
}

/** All bytes of a response, counted as they come. */
async function counted(response) {
  const isPacked = response.headers.has('content-encoding');
  fetched.total += isPacked ? 0 : Number(response.headers.get('content-length') ?? 0);
  const parts = [];
  const reader = response.body.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    parts.push(part.value);
    fetched.bytes += part.value.length;
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

async function ask(name) {
  const response = await fetch(name);
  if (!response.ok) throw new Error(`${name} did not come (${response.status}).`);
  return response;
}

async function fetchPageFile(name, isNeeded) {
  try {
    pageFiles.set(name, await counted(await ask(name)));
  } catch (error) {
    if (isNeeded) throw new Error(`${name} did not come.`);
  }
}

/** Compiles while the bytes come; from the bytes themselves where the server names a wrong kind. */
async function fetchProgram(name, imports) {
  const response = await ask(name);
  const bytes = counted(response.clone());
  // Whoever needs the bytes hears of it when they do not come.
  bytes.catch(() => {});
  try {
    return await WebAssembly.instantiateStreaming(response, imports);
  } catch {
    return WebAssembly.instantiate(await bytes, imports);
  }
}

async function fetchAll(imports) {
  let program = null;
  const waits = [];
  for (const link of document.querySelectorAll('link[data-page-file]')) {
    const name = link.getAttribute('href');
    const kind = link.dataset.pageFile;
    if (kind === 'program') program = fetchProgram(name, imports);
    else waits.push(fetchPageFile(name, kind === 'needed'));
  }
  const [made] = await Promise.all([program, ...waits]);
  return made;
}

const wanted = new Set(); // files asked for after the start

/** Fetches a file that the start did without; when it has come, the program looks for it again. */
Pm.wantPageFile = async (name) => {
  if (wanted.has(name)) return;
  wanted.add(name);
  for (const ms of TRIES_AFTER_MS) {
    await new Promise((wake) => { setTimeout(wake, ms); });
    await fetchPageFile(name, false);
    if (pageFiles.has(name)) break;
  }
  if (!isOpen()) return;
  if (pageFiles.has(name)) Module._pm_page_file_came();
  else {
    withWords(`${name} did not come, so some letters of a name stand as ? in the picture. Load the ` +
      'page again when the network is back; the job itself keeps them.',
      (address) => Module._pm_file_refused(address));
  }
  Pm.request();
};

let record; // what this browser has kept: undefined until it answers, null when nothing
foundRecord.then((found) => { record = found; });

/** What was kept goes to the program before the first frame, or as soon as the browser answers. */
function giveRecord() {
  if (record) withBytes(record, (address, size) => Module._pm_record_found(address, size));
  Pm.request();
}

function started() {
  Pm.isReady = true;
  if (record === undefined) foundRecord.then(giveRecord);
  else giveRecord();
  clearInterval(slowTimer);
  if (Pm.hasPicture) {
    watchSize();
    takeSize();
  } else {
    pretendSize();
  }
}

moments.failed = stopped;
moments.firstFrame = () => {
  bench.classList.remove('waiting');
  element('mirror').hidden = false;
  if (Pm.hasPicture) element('notice').hidden = true;
};

globalThis.Module = {
  canvas: bench,
  instantiateWasm(imports, done) {
    const latest = new Promise((wake) => { setTimeout(wake, LATEST_RECORD_MS); });
    Promise.all([fetchAll(imports), Promise.race([foundRecord, latest])])
      .then(([{instance, module}]) => done(instance, module))
      .catch(stopped);
    return {};
  },
  postRun: [started],
  onAbort: (what) => stopped(new Error(`${what ?? 'out of memory'}`)),
};

function listenToBrowser() {
  bench.addEventListener('webglcontextlost', (event) => {
    event.preventDefault();
    Pm.isLost = true;
  });
  bench.addEventListener('webglcontextrestored', () => {
    Pm.isLost = false;
    Module._pm_picture_restored();
    Pm.request();
  });
  addEventListener('beforeunload', (event) => {
    if (Pm.isUnsaved) event.preventDefault();
  });
  document.addEventListener('visibilitychange', () => Pm.request());
  // A script that does not come tells only the window, and only in capture.
  addEventListener('error', (event) => {
    if (!(event.target instanceof HTMLScriptElement)) return;
    failed('The bench could not be laid out: a part of it did not come. Load the page again.',
      `${event.target.getAttribute('src')} did not come.`);
  }, true);
}

element('notice-late').remove();
if (typeof WebAssembly === 'undefined') {
  failed('The bench needs WebAssembly, which this browser does not have. Try another browser.');
} else {
  bench.classList.add('waiting');
  bench.hidden = false;
  listenToHands();
  listenForFiles();
  listenToBrowser();
  slowTimer = setTimeout(() => {
    sayProgress();
    slowTimer = setInterval(sayProgress, 500);
  }, SLOW_START_MS);
}