// Times the page in headless Chromium, drawn by software, and prints the figures with the goals
// beside them. Nothing is asserted.
//     node tests/bench/page_bench.mjs
// Hand to picture: from a pointer move to the end of the frame that shows its figure, its pixels
// read back. Frame: one frame while something is dragged, its pixels read back.
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {openBench, pause} from '../browser/page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const MOVES = 40;
const STARTS = 3;
const IDLE_MS = 10_000;
const JOBS = [
  {name: 'harbour-ledger', sleeve: 'sleeve 1-02'},
  {name: 'orchard-year', sleeve: 'sleeve 1-02'},
];

const sorted = (values) => [...values].sort((a, b) => a - b);
/** The value that the share `part` of them does not pass. */
const share = (values, part) => sorted(values)[Math.max(0, Math.ceil(values.length * part) - 1)];
const rounded = (value) => (value === undefined ? '-' : value.toFixed(value < 10 ? 1 : 0));

function row(what, values, goal = '') {
  const median = rounded(share(values, 0.5));
  const most = rounded(share(values, 0.95));
  console.log(`${what.padEnd(52)} ${median.padStart(8)} ${most.padStart(8)}   ${goal}`);
}

/** Puts a clock round every frame of the page: `timed.frames` in ms, pixels read back. */
function addClock() {
  const bench = document.getElementById('bench');
  const surface = bench.getContext('webgl2');
  const pixel = new Uint8Array(4);
  const frame = Module._pm_frame;
  globalThis.timed = {frames: [], shown: null, ended: 0};
  Module._pm_frame = () => {
    const start = performance.now();
    const wantsMore = frame();
    surface.readPixels(0, 0, 1, 1, surface.RGBA, surface.UNSIGNED_BYTE, pixel);
    timed.ended = performance.now();
    timed.frames.push(timed.ended - start);
    const figure = document.querySelector('[data-line="headline"]')?.textContent ?? '';
    if (figure !== timed.figure) {
      timed.figure = figure;
      timed.shown?.(timed.ended);
    }
    return wantsMore;
  };
}

/** One move of the hand; ms until the picture shows the figure, null when it showed no other. */
function moveHand({x, y}) {
  return new Promise((done) => {
    const start = performance.now();
    const giveUp = setTimeout(() => done(null), 5000);
    timed.shown = (end) => {
      clearTimeout(giveUp);
      timed.shown = null;
      done(end - start);
    };
    document.getElementById('bench').dispatchEvent(new PointerEvent('pointermove', {
      clientX: x, clientY: y, buttons: 1, pointerType: 'mouse', pointerId: 1, bubbles: true,
    }));
  });
}

async function goTo(bench, piece) {
  for (let steps = 0; steps < 30 && await bench.line('piece') !== piece; steps += 1) {
    await bench.press('place.next');
  }
}

async function timeDrag(bench, {name, sleeve}) {
  const text = readFileSync(path.join(ROOT, 'demo-jobs', `${name}.json`), 'utf8');
  await bench.drop([{name: `${name}.json`, text}]);
  await goTo(bench, sleeve);
  const stop = await bench.place('stop.bottom');
  await bench.page.mouse.move(stop.x, stop.y);
  await bench.page.mouse.down();
  await bench.page.mouse.move(stop.x + 4, stop.y);
  await bench.rest();
  const hand = [];
  await bench.page.evaluate(() => { timed.frames.length = 0; });
  for (let i = 0; i < MOVES; i += 1) {
    const at = {x: stop.x + 8 + (i % 8) * 4, y: stop.y};
    const ms = await bench.page.evaluate(moveHand, at);
    await bench.rest();
    if (ms !== null) hand.push(ms);
  }
  const frames = await bench.page.evaluate(() => timed.frames);
  await bench.page.mouse.up();
  await bench.key('Control+z');
  return {hand, frames};
}

async function main() {
  const starts = {cold: [], warm: []};
  let bench;
  for (let i = 0; i < STARTS; i += 1) {
    await bench?.close();
    bench = await openBench();
    await bench.rest();
    starts.cold.push(await bench.pm('firstFrameMs'));
    await bench.page.reload();
    await bench.rest();
    starts.warm.push(await bench.pm('firstFrameMs'));
  }
  console.log(`\n${'the page in headless Chromium, ms'.padEnd(52)} ${'median'.padStart(8)} ` +
    `${'95 %'.padStart(8)}   goal (median)`);
  row('start to first picture, new browser', starts.cold, 'under 3000');
  row('start to first picture, loaded again', starts.warm, 'under 1000');
  await bench.page.evaluate(addClock);
  for (const job of JOBS) {
    const {hand, frames} = await timeDrag(bench, job);
    const goal = job.name === 'orchard-year' ? 'under 100' : '';
    row(`${job.name}, an end dragged: hand to picture`, hand, goal);
    row(`${job.name}, an end dragged: one frame`, frames);
  }
  await pause(2000);
  await bench.rest();
  const before = await bench.pm('frames');
  await pause(IDLE_MS);
  const idle = await bench.pm('frames') - before;
  console.log(`${'frames in 10 s at rest'.padEnd(52)} ${`${idle}`.padStart(8)} ` +
    `${''.padStart(8)}   0`);
  await bench.close();
}

await main();
