// Prints off the main thread. The worker's program (printing.js, printing.wasm) is the page's own
// engine without its bench: it is given a job and an order, solves again, and prints a page at a
// time.

/* global Module, importScripts */

const TURN_MS = 50; // so often it says how far it is, and lets messages in
const decoder = new TextDecoder();
let ready = null;

const tell = (what, given) => postMessage(what, given ?? []);

addEventListener('securitypolicyviolation', (event) => {
  tell({violation: `${event.violatedDirective} ${event.blockedURI}`});
});

/** The one door for scripts: the program's own, and no other. */
function ownScript(name) {
  const policy = self.trustedTypes?.createPolicy('pm-worker', {
    createScriptURL(wanted) {
      if (wanted !== 'printing.js') throw new TypeError('only our own files');
      return wanted;
    },
  });
  return policy ? policy.createScriptURL(name) : name;
}

function wordsAt(address) {
  const end = Module.HEAPU8.indexOf(0, address);
  return decoder.decode(Module.HEAPU8.slice(address, end));
}

/** Calls `use` with the addresses of some bytes, a zero byte after each, while they stand. */
function withBytes(all, use) {
  const addresses = all.map((bytes) => {
    const address = Module._malloc(bytes.length + 1);
    if (!address) throw new Error('out of memory');
    Module.HEAPU8.set(bytes, address);
    Module.HEAPU8[address + bytes.length] = 0;
    return address;
  });
  try {
    return use(...addresses);
  } finally {
    addresses.forEach((address) => Module._free(address));
  }
}

async function fetched(name) {
  const response = await fetch(name).catch(() => null);
  if (!response?.ok) throw new Error(`${name} did not come`);
  return new Uint8Array(await response.arrayBuffer());
}

/** The program and the faces that the page has not fetched for itself. */
async function fetchAll(faces) {
  const names = ['printing.wasm', ...faces.filter(({bytes}) => !bytes).map(({name}) => name)];
  const all = new Map(faces.map(({name, bytes}) => [name, bytes]));
  const came = await Promise.all(names.map(fetched));
  names.forEach((name, which) => all.set(name, came[which]));
  return all;
}

function start(program) {
  return new Promise((done, fail) => {
    self.Module = {
      instantiateWasm(imports, got) {
        WebAssembly.instantiate(program, imports)
          .then(({instance, module}) => got(instance, module), fail);
        return {};
      },
      onRuntimeInitialized: done,
      onAbort: (what) => fail(new Error(`${what ?? 'out of memory'}`)),
    };
    importScripts(ownScript('printing.js'));
  });
}

async function load(faces) {
  const all = await fetchAll(faces);
  await start(all.get('printing.wasm'));
  faces.forEach(({name}, which) => {
    const bytes = all.get(name);
    withBytes([bytes], (address) => Module._pm_work_face(which, address, bytes.length));
  });
}

/** A file that is whole goes over, its bytes with it. */
function handOver() {
  const from = Module._pm_work_file_bytes();
  const {buffer} = Module.HEAPU8.slice(from, from + Module._pm_work_file_size());
  tell({file: {name: wordsAt(Module._pm_work_file_name()),
    sha256: wordsAt(Module._pm_work_file_sha256()), buffer}}, [buffer]);
}

const {port1, port2} = new MessageChannel();
const aTurn = () => new Promise((done) => {
  port1.onmessage = done;
  port2.postMessage(0);
});

async function print({job, order}) {
  await ready;
  const encoder = new TextEncoder();
  const refused = withBytes([encoder.encode(job), encoder.encode(order)],
    (jobAt, orderAt) => wordsAt(Module._pm_work_start(jobAt, orderAt)));
  if (refused) {
    tell({refused});
    return;
  }
  const pages = Module._pm_work_pages();
  tell({printed: 0, pages});
  for (let printed = 0; printed >= 0;) {
    const until = performance.now() + TURN_MS;
    while (printed >= 0 && performance.now() < until) {
      printed = Module._pm_work_step();
      if (Module._pm_work_file()) handOver();
    }
    tell({printed: printed < 0 ? pages : printed, pages});
    await aTurn();
  }
  Module._pm_work_end();
  tell({ended: true});
}

addEventListener('message', ({data}) => {
  try {
    if (data.faces) {
      ready = load(data.faces);
      // Whoever prints hears of it when something did not come.
      ready.catch(() => {});
    } else print(data).catch((error) => tell({failed: `${error.message ?? error}`}));
  } catch (error) {
    tell({failed: `${error.message ?? error}`});
  }
});
