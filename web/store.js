// The two copies of the open job in this browser: one in its database, one in two files of the
// page's own folder that are written in turn. A copy is a header and a record of the program's:
// the mark, a counter, the record's length and a CRC-32 over these two and the record, four bytes
// each. What is newest goes by the counter, never by the clock.

import {Pm, isOpen, withWords} from './frames.js';

/* global Module */

const MARK = 0x4b504d50;
const HEADER_SIZE = 16;
const SLOTS = ['kept.a', 'kept.b'];
const DATABASE = 'pouncemark';
const TABLE = 'kept';
const KEY = 'job';

const LAZY_MS = 400;          // a change of place alone may wait so long
const SILENT_MS = 900;        // a store that has not answered by then is said not to
const GIVEN_UP_MS = 15000;    // and by then the copies are written anew
const FIRST_RETRY_MS = 3000;  // doubled each time, up to
const LAST_RETRY_MS = 60000;

// ---- Copies -------------------------------------------------------------------------------------

const crcTable = new Uint32Array(256).map((_, byte) => {
  let sum = byte;
  for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? 0xedb88320 ^ (sum >>> 1) : sum >>> 1;
  return sum;
});

/** The CRC-32 of a copy: its counter and length, then its record. */
function crcOf(copy) {
  let sum = 0xffffffff;
  for (let i = 4; i < copy.length; i += 1) {
    if (i === 12) i = HEADER_SIZE;
    sum = crcTable[(sum ^ copy[i]) & 0xff] ^ (sum >>> 8);
  }
  return ~sum >>> 0;
}

function copyOf(counter, record) {
  const copy = new Uint8Array(HEADER_SIZE + record.length);
  copy.set(record, HEADER_SIZE);
  const header = new DataView(copy.buffer);
  [MARK, counter, record.length].forEach((number, i) => header.setUint32(4 * i, number, true));
  header.setUint32(12, crcOf(copy), true);
  return copy;
}

/** The counter of a whole copy; 0 for what is missing, cut or damaged. */
function counterOf(copy) {
  if (!(copy instanceof Uint8Array) || copy.length <= HEADER_SIZE) return 0;
  const header = new DataView(copy.buffer, copy.byteOffset);
  const isWhole = header.getUint32(0, true) === MARK &&
    header.getUint32(8, true) === copy.length - HEADER_SIZE &&
    header.getUint32(12, true) === crcOf(copy);
  return isWhole ? header.getUint32(4, true) : 0;
}

// ---- The database -------------------------------------------------------------------------------

let database = null;

const answered = (request) => new Promise((done, failed) => {
  request.onsuccess = () => done(request.result);
  request.onerror = () => failed(request.error);
});

async function openDatabase() {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(TABLE);
  database = await answered(opening);
  database.onclose = () => { database = null; };
  database.onversionchange = () => {
    database?.close();
    database = null;
  };
}

async function readDatabase() {
  if (!database) await openDatabase();
  return answered(database.transaction(TABLE).objectStore(TABLE).get(KEY));
}

async function writeDatabase(copy) {
  try {
    if (!database) await openDatabase();
    const change = database.transaction(TABLE, 'readwrite', {durability: 'strict'});
    const ended = new Promise((done, failed) => {
      change.oncomplete = done;
      change.onabort = () => failed(change.error);
    });
    change.objectStore(TABLE).put(copy, KEY);
    await ended;
  } catch (error) {
    database?.close();
    database = null;
    throw error;
  }
}

// ---- The two files ------------------------------------------------------------------------------

let goodSlot = SLOTS[1]; // holds the newest copy of the two: the other is written next
const slotFiles = new Map(); // by name; every step saved is one wait less behind a frame

async function readSlot(name) {
  try {
    const folder = await navigator.storage.getDirectory();
    const file = await (await folder.getFileHandle(name)).getFile();
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    return null;
  }
}

async function writeSlot(copy) {
  const slot = SLOTS.find((name) => name !== goodSlot);
  let writing;
  try {
    if (!slotFiles.has(slot)) {
      const folder = await navigator.storage.getDirectory();
      slotFiles.set(slot, await folder.getFileHandle(slot, {create: true}));
    }
    writing = await slotFiles.get(slot).createWritable();
    // The end waits for the bytes by itself, and fails with them.
    writing.write(copy).catch(() => {});
    await writing.close();
  } catch (error) {
    slotFiles.delete(slot);
    writing?.abort().catch(() => {});
    throw error;
  }
  goodSlot = slot;
}

/** A browser that was killed while it wrote leaves a half-written file beside the slot. */
async function clearLeftovers() {
  const folder = await navigator.storage.getDirectory();
  for await (const name of folder.keys()) {
    if (!SLOTS.includes(name)) await folder.removeEntry(name).catch(() => {});
  }
}

// ---- Found at the start -------------------------------------------------------------------------

let counter = 0;

/** Writes the newest copy where it does not stand. */
async function repair(newest, inDatabase, inSlots) {
  if (inDatabase !== counter) await writeDatabase(newest);
  if (!inSlots.includes(counter)) await writeSlot(newest);
}

async function find() {
  const [fromDatabase, ...fromSlots] = await Promise.all(
    [readDatabase().catch(() => null), ...SLOTS.map(readSlot)]);
  await clearLeftovers().catch(() => {});
  const copies = [fromDatabase, ...fromSlots];
  const counters = copies.map(counterOf);
  counter = Math.max(...counters);
  goodSlot = SLOTS[counters[1] > counters[2] ? 0 : 1];
  // Of copies that are all damaged one is shown to the program, which then says so.
  if (counter === 0) return copies.find((copy) => copy?.length > 0) ?? null;
  const newest = copies[counters.indexOf(counter)];
  repairing = repair(newest, counters[0], counters.slice(1)).catch(() => {});
  return newest.subarray(HEADER_SIZE);
}

let repairing = null;

/** The newest record that is whole, or null where there is none; never fails. */
export const foundRecord = find().catch(() => null);

// ---- Kept ---------------------------------------------------------------------------------------

let waiting = null;   // the newest record that is not being written yet
let isWriting = false;
let timer = 0;
let retryMs = FIRST_RETRY_MS;
let hasAsked = false; // the browser, to keep this page's stores when its room runs out

const pause = (ms, ...what) => new Promise((done) => { setTimeout(done, ms, ...what); });

function tellNotKept(why) {
  if (!isOpen()) return;
  withWords(why, (address) => Module._pm_record_not_kept(address));
  Pm.request(1);
}

/** Why copies were not written, in a few words; empty when both were. */
function reason(ends) {
  const errors = ends.filter((end) => end.status === 'rejected').map((end) => end.reason);
  if (errors.length === 0) return '';
  if (errors.some((error) => error?.name === 'QuotaExceededError')) {
    return 'no room is left in this browser';
  }
  return errors.length === 1 ? 'only one of two copies was written'
    : 'this browser keeps nothing for this page';
}

async function writeBoth(record) {
  counter += 1;
  const copy = copyOf(counter, record);
  const silent = setTimeout(tellNotKept, SILENT_MS, 'this browser does not answer');
  const ends = Promise.allSettled([writeDatabase(copy), writeSlot(copy)]);
  const why = await Promise.race(
    [ends.then(reason), pause(GIVEN_UP_MS, 'this browser does not answer')]);
  clearTimeout(silent);
  return why;
}

/** Writes what waits, and while that is written only the newest of what comes. */
async function writeWaiting() {
  clearTimeout(timer);
  timer = 0;
  if (isWriting) return;
  isWriting = true;
  await foundRecord;
  await repairing;
  while (waiting) {
    const held = waiting;
    waiting = null;
    const why = await writeBoth(held.record);
    if (why) {
      waiting ??= held;
      tellNotKept(why);
      timer = setTimeout(writeWaiting, retryMs);
      retryMs = Math.min(2 * retryMs, LAST_RETRY_MS);
      break;
    }
    retryMs = FIRST_RETRY_MS;
    if (isOpen()) Module._pm_record_kept(held.number);
    Pm.request(1);
  }
  isWriting = false;
}

Pm.keepRecord = (number, record, isAtOnce) => {
  waiting = {number, record};
  if (!isAtOnce) {
    timer ||= setTimeout(writeWaiting, LAZY_MS);
    return;
  }
  writeWaiting();
  // After the first change of a job, not before there is any work to keep.
  if (number > 1 && !hasAsked) {
    hasAsked = true;
    navigator.storage?.persist?.().catch(() => {});
  }
};

addEventListener('pagehide', () => { if (timer) writeWaiting(); });
