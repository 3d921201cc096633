// What every test of the page needs: the server, the browser, and a way to find things on the bench
// by name. A test opens the page with `openBench`, presses places by the name the bench noted them
// under, waits for rest instead of for time, and closes everything it started.
import {spawn} from 'node:child_process';
import {existsSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {chromium} from 'playwright-core';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
export const BROWSER = process.env.POUNCEMARK_BROWSER ?? '/usr/bin/chromium';
const PAGE = path.resolve(process.env.POUNCEMARK_PAGE ?? path.join(ROOT, 'build/web-release/page'));
const REST_MS = 20000;

// Software drawing, however slow on a busy machine, and nothing of the browser's own on the network.
export const BROWSER_WORDS = [
  '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist',
  '--disable-gpu-watchdog', '--disable-gpu-process-crash-limit', '--disable-quic',
  '--no-first-run', '--disable-background-networking', '--disable-component-update',
  '--disable-sync',
];

export const pause = (ms) => new Promise((done) => { setTimeout(done, ms); });

/** Asks `question` until its answer is true; a sentence when it never is. */
export async function until(question, what, limit = REST_MS) {
  const end = Date.now() + limit;
  while (!await question()) {
    if (Date.now() > end) throw new Error(`waited ${limit / 1000} s in vain for ${what}`);
    await pause(20);
  }
}

/** Serves `folder` to this computer on a free port. */
export async function startServer(folder = PAGE) {
  if (!existsSync(path.join(folder, 'index.html'))) {
    throw new Error(`no page in ${folder}: build it with web/serve --build-only`);
  }
  const server = spawn(process.execPath, [path.join(ROOT, 'web/server.mjs'), folder, '0'],
    {stdio: ['ignore', 'pipe', 'inherit']});
  let told = '';
  server.stdout.on('data', (words) => { told += words; });
  await until(() => /http:\S+/.test(told) || server.exitCode !== null, 'the server');
  const [address] = told.match(/http:\S+/) ?? [];
  if (!address) throw new Error('the server did not start');
  return {address, close: () => server.kill()};
}

/** Starts the browser; `words` are added to its command line. */
export function startBrowser(words = []) {
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return chromium.launch({executablePath: BROWSER, args: [...BROWSER_WORDS, ...asRoot, ...words]});
}

/** The page in one tab, and what it did that it should not. */
export class Bench {
  constructor(page, address) {
    this.page = page;
    this.address = address;
    this.strangers = [];  // requests to anywhere else
    this.mistakes = [];   // uncaught exceptions, and errors and warnings of the console
    // The driver takes choosers over only once somebody listens, and not at once: listen from the
    // start, or the first chooser may open unseen.
    page.on('filechooser', () => {});
    page.on('request', (request) => {
      const url = request.url();
      // What shows a file is the browser's own.
      const isOwn = /^(data|blob|chrome|chrome-extension):/.test(url);
      if (!url.startsWith(address) && !isOwn) this.strangers.push(url);
    });
    page.on('pageerror', (error) => this.mistakes.push(error.message));
    page.on('console', (line) => {
      if (['error', 'warning'].includes(line.type())) this.mistakes.push(line.text());
    });
  }

  async open() {
    await this.page.addInitScript(() => {
      globalThis.violations = [];
      document.addEventListener('securitypolicyviolation', (event) => {
        globalThis.violations.push(`${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    await this.page.goto(this.address);
  }

  /** What the page's own object says: `(name) => Pm[name]`. */
  pm(name) { return this.page.evaluate((key) => globalThis.Pm[key], name); }
  violations() { return this.page.evaluate(() => globalThis.violations); }

  /** Waits until the bench is drawn and nothing is asked for any more. */
  async rest() {
    const rests = () => Pm.isStopped || (Pm.firstFrameMs > 0 && Pm.asked === 0);
    await until(() => this.page.evaluate(rests), 'the bench to come to rest');
  }

  /** The named places: name to {left, top, right, bottom, x, y}, CSS pixels; x, y the middle. */
  async places() {
    await this.rest();
    const told = await this.page.evaluate(() => Module.UTF8ToString(Module._pm_places()));
    return new Map(JSON.parse(told).map(([name, left, top, right, bottom]) => [name,
      {left, top, right, bottom, x: (left + right) / 2, y: (top + bottom) / 2}]));
  }

  async place(name) {
    const places = await this.places();
    const place = places.get(name);
    const known = [...places.keys()].join(', ');
    if (!place) throw new Error(`nothing is called '${name}'; there are: ${known}`);
    return place;
  }

  /** Presses the middle of a named place with the real mouse and waits for rest. */
  async press(name, options = {}) {
    const {x, y} = await this.place(name);
    await this.page.mouse.click(x, y, options);
    await this.rest();
  }

  async key(keys) {
    await this.page.keyboard.press(keys);
    await this.rest();
  }

  /** Writes with real keys, sign by sign. */
  async write(words) {
    await this.page.keyboard.type(words);
    await this.rest();
  }

  /** Types into a box: press, write over what is marked, Enter. */
  async typeInto(name, words) {
    await this.press(name);
    await this.write(words);
    await this.key('Enter');
  }

  /** Presses a named place and gives the file that was downloaded for it, kept in `folder`. */
  async downloaded(name, folder) {
    const coming = this.page.waitForEvent('download', {timeout: REST_MS});
    await this.press(name);
    const download = await coming;
    const file = path.join(folder, download.suggestedFilename());
    await download.saveAs(file);
    return file;
  }

  /** The open job as it would be saved; empty when there is none. */
  async job() {
    await this.rest();
    return this.page.evaluate(() => Module.UTF8ToString(Module._pm_job()));
  }

  /** One line of the words beside the picture; null when it is not there. */
  line(name) {
    return this.page.evaluate((id) =>
      document.querySelector(`[data-line="${CSS.escape(id)}"]`)?.textContent ?? null, name);
  }

  /** All words beside the picture. */
  words() { return this.page.evaluate(() => document.getElementById('mirror').textContent); }

  /** The sentence that stands on the page instead of the bench, or over it. */
  notice() {
    return this.page.evaluate(() => {
      const notice = document.getElementById('notice');
      return notice.hidden ? '' : notice.innerText;
    });
  }

  /** Drops files on the bench: [{name, text}], or {name, size} for zeros. */
  async drop(files) {
    await this.page.evaluate((given) => {
      const data = new DataTransfer();
      for (const {name, text, size} of given) {
        data.items.add(new File([size ? new Uint8Array(size) : text], name));
      }
      for (const kind of ['dragover', 'drop']) {
        document.getElementById('bench').dispatchEvent(
          new DragEvent(kind, {dataTransfer: data, bubbles: true, cancelable: true}));
      }
    }, files);
    await pause(100);
    await this.rest();
  }
}

/**
 * One bench in its own browser, 1366 x 768 at ratio 1. `ratio` makes the browser's own ratio
 * another (device pixels to a CSS pixel; the window is then about that size), `words` are added to
 * its command line, `context` goes to the tab, `before(page)` runs before the page loads.
 */
export async function openBench({ratio, words = [], context = {}, before, address} = {}) {
  const server = address ? {address, close() {}} : await startServer();
  let browser;
  try {
    // The driver's own size would put the ratio back to 1.
    const size = ratio ? null : {width: 1366, height: 768};
    const scaled = ratio ? [`--force-device-scale-factor=${ratio}`, '--window-size=1366,768'] : [];
    browser = await startBrowser([...scaled, ...words]);
    const tab = await browser.newContext({viewport: size, ...context});
    const page = await tab.newPage();
    const bench = new Bench(page, server.address);
    await before?.(page);
    await bench.open();
    bench.close = async () => {
      await browser.close();
      server.close();
    };
    return bench;
  } catch (error) {
    await browser?.close();
    server.close();
    throw error;
  }
}

/** Checks with a sentence each, and the closing line. */
export class Checks {
  constructor() {
    this.passed = 0;
    this.failed = 0;
  }

  async check(sentence, body) {
    try {
      await body();
      this.passed += 1;
      console.log(`ok      ${sentence}`);
    } catch (error) {
      this.failed += 1;
      console.log(`FAILED  ${sentence}\n        ${error.message.split('\n').join('\n        ')}`);
    }
  }

  /** Opens a bench, runs `body` with it and closes it, whatever happens; a failure is counted. */
  async withBench(options, body) {
    let bench;
    try {
      bench = await openBench(options);
      await body(bench);
    } catch (error) {
      this.failed += 1;
      console.log(`FAILED  the bench opens\n        ${error.message}`);
    } finally {
      await bench?.close();
    }
  }

  end() {
    console.log(`${this.passed} passed, ${this.failed} failed`);
    process.exitCode = this.failed > 0 || this.passed === 0 ? 1 : 0;
  }
}
