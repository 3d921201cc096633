// Kills the whole browser while the bench keeps one edit after the other, starts it again on the
// same profile and compares: no edit whose keeping was acknowledged may be lost, and every start
// must be readable. Two controls show that the check can fail.
//   node tests/browser/kills.mjs [--kills 150]
import {spawn} from 'node:child_process';
import {cpSync, existsSync, mkdirSync, readFileSync, rmSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {chromium} from 'playwright-core';

import {BROWSER, BROWSER_WORDS, pause, startServer, until} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const HOME = path.join(ROOT, 'build/kills');
const LONGEST_MS = 600;
const CONTROLS = 3;
const FRESH_AFTER = 30; // kills on one profile, so that its list of actions does not grow for ever

const asked = process.argv.indexOf('--kills');
const kills = asked > 0 ? Number(process.argv[asked + 1]) : 150;
if (!Number.isInteger(kills) || kills < 1) {
  console.error('kills: say --kills and a number above 0');
  process.exit(2);
}

/** One browser on a profile folder, in a process group of its own. */
async function startOn(profile) {
  const port = path.join(profile, 'DevToolsActivePort');
  rmSync(port, {force: true});
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const child = spawn(BROWSER, ['--headless=new', '--remote-debugging-port=0',
    `--user-data-dir=${profile}`, ...BROWSER_WORDS, '--disable-gpu', ...asRoot, 'about:blank'],
  {detached: true, stdio: 'ignore'});
  const kill = () => { try { process.kill(-child.pid, 'SIGKILL'); } catch { /* it has ended */ } };
  try {
    let told = [];
    await until(() => {
      told = existsSync(port) ? readFileSync(port, 'utf8').split('\n') : [];
      return told.length > 1;
    }, 'the browser to start', 60000);
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${told[0]}`);
    return {browser, kill, ended: new Promise((done) => { child.on('exit', done); })};
  } catch (error) {
    kill();
    throw error;
  }
}

/** Stores that answer as if they had written and write nothing. */
function lyingStores() {
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function lie(value, key) {
    return globalThis.lies ? this.get(key) : put.call(this, value, key);
  };
  const close = FileSystemWritableFileStream.prototype.close;
  FileSystemWritableFileStream.prototype.close = function lie() {
    return globalThis.lies ? this.abort() : close.call(this);
  };
}

/** Runs in the page: one edit after the other, the next as soon as the last is acknowledged. */
function editForEver() {
  const numberOf = () =>
    Module.UTF8ToString(Module._pm_job()).match(/"name": ?"edit (\d+)"/)?.[1];
  const sent = new Map(); // by the record's number: the edit it holds
  const keep = Pm.keepRecord;
  Pm.keepRecord = (number, ...words) => {
    sent.set(number, numberOf());
    keep(number, ...words);
  };
  const kept = Module._pm_record_kept;
  const edit = () => {
    globalThis.tried += 1;
    const job = Module.UTF8ToString(Module._pm_job());
    const name = `"name": "edit ${globalThis.tried}"`;
    const bytes = new TextEncoder().encode(job.replace(/"name": ?"[^"]*"/, name));
    const at = Module._malloc(bytes.length + 1);
    Module.HEAPU8.set(bytes, at);
    Module.HEAPU8[at + bytes.length] = 0;
    Module._pm_file(at + bytes.length, at, bytes.length);
    Module._free(at);
  };
  Module._pm_record_kept = (number) => {
    kept(number);
    const held = sent.get(number);
    // Told to the test outside; what it has heard of before the kill is acknowledged.
    if (held) console.log(`kept ${held}`);
    edit();
  };
  edit();
}

/** The number of the edit that is on the bench after a start: 0 on a first visit, -1 unreadable. */
async function brought(page) {
  const rests = () => Pm.isStopped || (Pm.firstFrameMs > 0 && Pm.asked === 0);
  await until(() => page.evaluate(rests), 'the bench to come to rest', 60000);
  return page.evaluate(() => {
    if (Pm.isStopped || document.querySelector('[data-line="failed.sentence"]')) return -1;
    const job = Module.UTF8ToString(Module._pm_job());
    return job ? Number(job.match(/"name": ?"edit (\d+)"/)?.[1] ?? 0) : 0;
  });
}

/** Starts on the profile, tells what came back, and edits until killed after `delay` ms. */
async function cycle(profile, address, delay, lies = false) {
  const started = await startOn(profile);
  try {
    const [context] = started.browser.contexts();
    const page = await context.newPage();
    let acknowledged = 0;
    page.on('console', (line) => {
      const [, number] = line.text().match(/^kept (\d+)$/) ?? [];
      if (number) acknowledged = Number(number);
    });
    await page.addInitScript(lyingStores);
    await page.goto(address);
    const found = await brought(page);
    await page.evaluate(([from, isLying]) => {
      globalThis.tried = from;
      globalThis.lies = isLying;
    }, [Math.max(found, 0), lies]);
    const text = readFileSync(path.join(ROOT, 'demo-jobs/harbour-ledger.json'), 'utf8');
    const open = await page.evaluate(() => Module.UTF8ToString(Module._pm_job()));
    if (!open) {
      await page.evaluate((words) => {
        const bytes = new TextEncoder().encode(words);
        const at = Module._malloc(bytes.length + 1);
        Module.HEAPU8.set(bytes, at);
        Module.HEAPU8[at + bytes.length] = 0;
        Module._pm_file(at + bytes.length, at, bytes.length);
        Module._free(at);
      }, text);
      await page.evaluate(() => new Promise((done) => { setTimeout(done, 200); }));
    }
    await page.evaluate(editForEver);
    await pause(delay);
    started.kill();
    await started.ended;
    return {found, acknowledged};
  } finally {
    started.kill();
    await started.browser.close().catch(() => {});
  }
}

/** What a start finds, without editing. */
async function look(profile, address) {
  const started = await startOn(profile);
  try {
    const page = await started.browser.contexts()[0].newPage();
    await page.goto(address);
    return await brought(page);
  } finally {
    started.kill();
    await started.ended;
    await started.browser.close().catch(() => {});
  }
}

const fresh = (name) => {
  const profile = path.join(HOME, name);
  rmSync(profile, {recursive: true, force: true});
  mkdirSync(profile, {recursive: true});
  return profile;
};

const server = await startServer();
let lost = 0;
let unreadable = 0;
let edits = 0;
let caught = 0;
try {
  let profile = '';
  let last = 0;
  const judge = (found) => {
    if (found < 0) unreadable += 1;
    else if (found < last) {
      lost += 1;
      console.log(`LOST    edit ${last} was acknowledged, edit ${found} came back`);
    }
  };
  for (let i = 0; i < kills; i += 1) {
    if (i % FRESH_AFTER === 0) {
      if (profile) judge(await look(profile, server.address));
      profile = fresh(`profile-${Math.floor(i / FRESH_AFTER)}`);
      last = 0;
    }
    // Spread over the whole time, in an order that repeats.
    const delay = (i * 251) % (LONGEST_MS + 1);
    const {found, acknowledged} = await cycle(profile, server.address, delay);
    judge(found);
    edits += Math.max(0, acknowledged - Math.max(found, 0));
    last = Math.max(acknowledged, found);
  }
  judge(await look(profile, server.address));

  // An older profile put back in the place of the newer one must be seen to have lost edits.
  const control = fresh('control');
  for (let i = 0; i < CONTROLS; i += 1) {
    await cycle(control, server.address, 1500);
    const older = path.join(HOME, 'older');
    rmSync(older, {recursive: true, force: true});
    // The running browser's own locks are links that lead nowhere any more.
    cpSync(control, older, {recursive: true, filter: (from) => !/Singleton/.test(from)});
    const {acknowledged} = await cycle(control, server.address, 2500);
    if (acknowledged > 0 && await look(older, server.address) < acknowledged) caught += 1;
  }
  // And so must stores that only say they have written.
  for (let i = 0; i < CONTROLS; i += 1) {
    const {acknowledged} = await cycle(control, server.address, 2500, true);
    if (acknowledged > 0 && await look(control, server.address) < acknowledged) caught += 1;
  }
} finally {
  server.close();
}
const tell = (is, sentence) => console.log(`${is ? 'ok    ' : 'FAILED'}  ${sentence}`);
const results = [
  [edits > kills / 2, `${kills} kills, ${edits} edits acknowledged between them`],
  [lost === 0, `${lost} kills lost an acknowledged edit`],
  [unreadable === 0, `${unreadable} starts could not be read`],
  [caught === 2 * CONTROLS, `${caught} of ${2 * CONTROLS} planted losses were seen`],
];
for (const [is, sentence] of results) tell(is, sentence);
const good = results.filter(([is]) => is).length;
console.log(`${good} passed, ${results.length - good} failed`);
process.exitCode = good === results.length ? 0 : 1;
