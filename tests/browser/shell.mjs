// The page around the bench, with a real browser, real keys, a real mouse and real fingers:
// loading, failing, rest, typing, copying, sizes, files, and the words beside the picture.
import assert from 'node:assert/strict';

import {Checks, pause, until} from './page.mjs';

// Things of the bench these tests press. The small job opens a section, whose lap stands in a box.
const DOOR = 'door.small_job';
const BOX = 'box.lap';
const BROWN_PAPER = [0xed, 0xe4, 0xd3];

const checks = new Checks();
const check = (sentence, body) => checks.check(sentence, body);

/** The colour of one device pixel of the picture, straight after a frame. */
const colourAt = (bench, x, y) => bench.page.evaluate(([across, down]) => {
  Module._pm_frame();
  const gl = Module.ctx;
  const seen = new Uint8Array(4);
  gl.readPixels(across, gl.drawingBufferHeight - 1 - down, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, seen);
  return [...seen.slice(0, 3)];
}, [x, y]);

/** A number made from every pixel of the picture. */
const pictureSum = (bench) => bench.page.evaluate(() => {
  Module._pm_frame();
  const gl = Module.ctx;
  const [width, height] = [gl.drawingBufferWidth, gl.drawingBufferHeight];
  const seen = new Uint8Array(width * height * 4);
  gl.readPixels(0, 0, width, height, gl.RGBA, gl.UNSIGNED_BYTE, seen);
  let sum = 1;
  for (const byte of seen) sum = (Math.imul(sum, 31) + byte) | 0;
  return sum;
});

/** What stands in the open box: all of it, as a copy gives it. */
async function boxWords(bench) {
  await bench.key('Control+a');
  await bench.key('Control+c');
  return bench.page.evaluate(() => navigator.clipboard.readText());
}

const lapOf = async (bench) => JSON.parse(await bench.job()).sections[0].lap_mm;

async function bytesOf(download) {
  const parts = [];
  for await (const part of await download.createReadStream()) parts.push(part);
  return Buffer.concat(parts).toString();
}

/** Does `act` and gives the file that the page then offers. */
async function offeredBy(bench, act) {
  const offered = bench.page.waitForEvent('download', {timeout: 10000});
  await act();
  return offered;
}

/** Does `act` and gives the browser's file chooser that then opens. */
async function chooserBy(bench, act) {
  const opened = bench.page.waitForEvent('filechooser', {timeout: 10000});
  await act();
  return opened;
}

await checks.withBench({context: {permissions: ['clipboard-read', 'clipboard-write']}},
  async (bench) => {
    const {page} = bench;
    await bench.rest();
    await check('the bench is drawn on brown paper and the loading words are gone', async () => {
      assert.deepEqual(await colourAt(bench, 1, 760), BROWN_PAPER);
      assert.equal(await bench.notice(), '');
    });
    await check('nothing is drawn in 3 idle seconds', async () => {
      const before = await bench.pm('frames');
      await pause(3000);
      assert.equal(await bench.pm('frames') - before, 0);
    });
    await check('a press that leaves the window is let go, and presses nothing', async () => {
      const {x, y} = await bench.place(DOOR);
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x, 900);
      await page.mouse.up();
      await bench.rest();
      await page.mouse.move(x, y);
      assert.equal(await bench.job(), '');
    });
    await check('a press opens the small job', async () => {
      await bench.press(DOOR);
      assert.match(await bench.job(), /"Marsh Lights"/);
    });
    await check('a figure typed into its box and kept with Enter is in the job', async () => {
      assert.equal(await lapOf(bench), 18);
      await bench.press(BOX);
      assert.equal(await bench.pm('isTyping'), true);
      await bench.key('Control+a');
      await bench.write('2cm');
      await bench.key('Enter');
      assert.equal(await lapOf(bench), 20);
      assert.equal(await bench.pm('isTyping'), false);
    });
    await check('letters beyond the first face arrive in a box', async () => {
      await bench.press(BOX);
      await bench.key('Control+a');
      await bench.write('Sleeve Ł7 β');
      assert.equal(await boxWords(bench), 'Sleeve Ł7 β');
    });
    await check('nothing is drawn in 2 idle seconds while a box is open', async () => {
      const before = await bench.pm('frames');
      await pause(2000);
      assert.equal(await bench.pm('frames') - before, 0);
    });
    await check('Backspace takes one letter', async () => {
      await bench.key('End');
      await bench.key('Backspace');
      assert.equal(await boxWords(bench), 'Sleeve Ł7 ');
    });
    await check('words from elsewhere are pasted, and a menu pastes without a key', async () => {
      await page.evaluate(() => navigator.clipboard.writeText('27.25'));
      await bench.key('Control+a');
      await bench.key('Control+v');
      assert.equal(await boxWords(bench), '27.25');
      await bench.key('End');
      await page.evaluate(() => {
        const data = new DataTransfer();
        data.setData('text/plain', '4');
        document.getElementById('typing').dispatchEvent(
          new ClipboardEvent('paste', {clipboardData: data, bubbles: true, cancelable: true}));
      });
      await bench.rest();
      assert.equal(await boxWords(bench), '27.254');
    });
    await check('cutting takes the words out and gives them to the system', async () => {
      await bench.key('Control+a');
      await bench.key('Control+x');
      assert.equal(await page.evaluate(() => navigator.clipboard.readText()), '27.254');
      await bench.write('1');
      assert.equal(await boxWords(bench), '1');
    });
    await check('a composed word arrives once, when it is finished', async () => {
      const tools = await page.context().newCDPSession(page);
      await tools.send('Input.imeSetComposition', {text: 'に', selectionStart: 1, selectionEnd: 1});
      await bench.rest();
      assert.equal(await page.evaluate(() =>
        document.getElementById('typing').classList.contains('composing')), true);
      await tools.send('Input.insertText', {text: '日本'});
      await bench.rest();
      assert.equal(await boxWords(bench), '日本');
    });
    await check('Esc closes the box, puts back, and gives the keys back', async () => {
      await bench.key('Escape');
      assert.equal(await bench.pm('isTyping'), false);
      assert.equal(await lapOf(bench), 20);
      assert.notEqual(await page.evaluate(() => document.activeElement.id), 'typing');
    });
    await check('Ctrl + Z takes the last change back, Ctrl + Y and Ctrl + Shift + Z do it again',
      async () => {
        await bench.key('Control+z');
        assert.equal(await lapOf(bench), 18);
        await bench.key('Control+y');
        assert.equal(await lapOf(bench), 20);
        await bench.key('Control+z');
        await bench.key('Control+Shift+z');
        assert.equal(await lapOf(bench), 20);
      });
    await check('Ctrl + S offers the job under its name with its bytes', async () => {
      const download = await offeredBy(bench, () => page.keyboard.press('Control+s'));
      assert.equal(download.suggestedFilename(), 'marsh-lights.json');
      assert.equal(await bytesOf(download), await bench.job());
    });
    await check('Ctrl + O opens the chooser and the chosen file arrives', async () => {
      const words = (await bench.job()).replace('"Marsh Lights"', '"Łódź Lights"');
      const chooser = await chooserBy(bench, () => page.keyboard.press('Control+o'));
      const file = {name: 'c.json', mimeType: 'application/json', buffer: Buffer.from(words)};
      await chooser.setFiles(file);
      await until(async () => /"Łódź Lights"/.test(await bench.job()), 'the file');
      assert.equal(await bench.job(), words);
    });
    await check('Ctrl + F and Ctrl + D stay the browser\'s, Ctrl + P is ours', async () => {
      await page.evaluate(() => {
        globalThis.taken = [];
        const plain = Event.prototype.preventDefault;
        Event.prototype.preventDefault = function note() {
          if (this.type === 'keydown') globalThis.taken.push(this.key);
          plain.call(this);
        };
      });
      for (const key of ['f', 'd', 'p']) await bench.key(`Control+${key}`);
      assert.deepEqual(await page.evaluate(() => globalThis.taken), ['p']);
    });
    await check('Backspace and Tab work in a field of the page itself', async () => {
      await page.evaluate(() => {
        const field = document.createElement('input');
        field.id = 'own';
        document.querySelector('main').prepend(field);
        field.focus();
      });
      await page.keyboard.type('abc');
      await page.keyboard.press('Backspace');
      assert.equal(await page.evaluate(() => document.getElementById('own').value), 'ab');
      await page.keyboard.press('Tab');
      assert.notEqual(await page.evaluate(() => document.activeElement.id), 'own');
      await page.evaluate(() => document.getElementById('own').remove());
    });
    await check('the picture is the same after the browser took the surface away', async () => {
      await page.mouse.move(1300, 740);
      await bench.rest();
      const before = await pictureSum(bench);
      await page.evaluate(() => {
        globalThis.surface = Module.ctx.getExtension('WEBGL_lose_context');
        globalThis.surface.loseContext();
      });
      await until(() => bench.pm('isLost'), 'the loss');
      await page.evaluate(() => globalThis.surface.restoreContext());
      await until(async () => !await bench.pm('isLost'), 'the return');
      await bench.rest();
      assert.equal(await pictureSum(bench), before);
    });
    await check('one dropped file opens; the bytes are the file\'s own', async () => {
      const words = (await bench.job()).replace('"Łódź Lights"', '"Dropped β"');
      await bench.drop([{name: 'my job.json', text: words}]);
      assert.equal(await bench.job(), words);
    });
    await check('two files, and a file over 32 MB, are refused with a sentence', async () => {
      const before = await bench.job();
      await bench.drop([{name: 'a.json', text: '1'}, {name: 'b.json', text: '2'}]);
      assert.match(await bench.words(), /2 files at once: the bench takes one job/);
      await bench.drop([{name: 'a.json', size: 33 * 1024 * 1024}]);
      assert.match(await bench.words(), /33\.0 MB: no job is over 32 MB/);
      assert.equal(await bench.job(), before);
    });
    await check('0 policy violations, 0 requests to anywhere else, no mistakes', async () => {
      assert.deepEqual(await bench.violations(), []);
      assert.deepEqual(bench.strangers, []);
      const own = bench.mistakes.filter((words) => !/WebGL|CONTEXT_LOST/.test(words));
      assert.deepEqual(own, []);
    });
    await check('the policy is in force: text cannot become a script', async () => {
      const outcome = await page.evaluate(() => {
        try {
          document.createElement('div').innerHTML = '<b>x</b>';
          return 'taken';
        } catch (error) {
          return error.name;
        }
      });
      assert.equal(outcome, 'TypeError');
    });
    await check('when the program ends a sentence says so, and the job can be saved', async () => {
      const job = await bench.job();
      await page.evaluate(() => {
        Module._pm_frame = () => { throw new Error('planted'); };
        Pm.request();
      });
      await until(() => bench.pm('isStopped'), 'the end');
      assert.match(await bench.notice(), /The bench has stopped[^]*planted/);
      const download = await offeredBy(bench, () => page.click('#notice-save'));
      assert.equal(download.suggestedFilename(), 'rescued-job.json');
      assert.equal(await bytesOf(download), job);
    });
  });

await checks.withBench({}, async (bench) => {
  const {page} = bench;
  const place = () => page.evaluate(() => document.activeElement.dataset.place);
  await bench.rest();
  await check('Tab walks the named places in their order, and back', async () => {
    await page.evaluate(() => document.getElementById('bench').focus());
    await bench.rest();
    const names = await page.evaluate(() =>
      [...document.querySelectorAll('[data-place]')].map((button) => button.dataset.place));
    assert.ok(names.length >= 3);
    for (const name of names.slice(0, 3)) {
      await page.keyboard.press('Tab');
      assert.equal(await place(), name);
    }
    await page.keyboard.press('Shift+Tab');
    assert.equal(await place(), names[1]);
  });
  await check('Enter presses the place that has the focus', async () => {
    await page.evaluate((id) => document.querySelector(`[data-place="${id}"]`).focus(), DOOR);
    await bench.key('Enter');
    assert.match(await bench.job(), /"Marsh Lights"/);
  });
  await check('a box is opened, filled and kept by keys alone; the focus comes back', async () => {
    await page.evaluate((id) => document.querySelector(`[data-place="${id}"]`).focus(), BOX);
    await bench.key('Enter');
    await bench.key('Control+a');
    await bench.write('19');
    await bench.key('Enter');
    assert.equal(await lapOf(bench), 19);
    assert.equal(await place(), BOX);
  });
});

await checks.withBench({}, async (bench) => {
  const {page} = bench;
  await check('the browser asks before a changed job is left, and only then', async () => {
    await bench.press(DOOR);
    const asked = [];
    page.on('dialog', (dialog) => {
      asked.push(dialog.type());
      dialog.accept();
    });
    await page.reload();
    assert.deepEqual(asked, []);
    await bench.rest();
    await page.evaluate(() => { Pm.isUnsaved = true; });
    await page.reload();
    assert.deepEqual(asked, ['beforeunload']);
  });
});

/** The picture's size, and what it should be: the window's by its ratio. */
const sizes = (bench) => bench.page.evaluate(() => {
  const {width, height} = document.getElementById('bench');
  const wanted = [innerWidth, innerHeight].map((size) => Math.round(size * devicePixelRatio));
  return {seen: [width, height], wanted, ratio: devicePixelRatio};
});

async function checkRatio(bench, ratio, how) {
  await check(`at ratio ${ratio} (${how}) the picture fits and a press meets its place`,
    async () => {
      await bench.rest();
      const {seen, wanted, ratio: found} = await sizes(bench);
      assert.equal(found, ratio);
      assert.deepEqual(seen, wanted);
      await bench.press(DOOR);
      assert.match(await bench.job(), /"Marsh Lights"/);
    });
}

for (const ratio of [1.25, 2]) {
  await checks.withBench({ratio}, (bench) => checkRatio(bench, ratio, 'the browser\'s own'));
}
for (const ratio of [1, 2]) {
  await checks.withBench({context: {deviceScaleFactor: ratio}}, async (bench) => {
    await checkRatio(bench, ratio, 'a pretended screen');
    await check(`at ratio ${ratio} a narrower window is taken at once`, async () => {
      await bench.page.setViewportSize({width: 1024, height: 700});
      await until(async () => `${(await sizes(bench)).seen}` === `${[1024 * ratio, 700 * ratio]}`,
        'the picture to take the size');
      assert.notDeepEqual(await colourAt(bench, 1024 * ratio - 1, 700 * ratio - 1), [0, 0, 0]);
    });
  });
}

await checks.withBench({context: {deviceScaleFactor: 2, hasTouch: true}}, async (bench) => {
  const {page} = bench;
  const tools = await page.context().newCDPSession(page);
  const touch = (type, points) => tools.send('Input.dispatchTouchEvent',
    {type, touchPoints: points.map(([x, y], id) => ({x, y, id}))});
  /** The wheel steps and scales the program was given since the last call. */
  const steps = () => page.evaluate(() => {
    const seen = globalThis.steps ?? {across: 0, down: 0, scale: 0};
    globalThis.steps = {across: 0, down: 0, scale: 0};
    // Each puts itself in place anew at its first call.
    Module._pm_wheel(0, 0);
    Module._pm_scale(0);
    const {_pm_wheel: turn, _pm_scale: scale} = Module;
    Module._pm_wheel = (across, down) => {
      globalThis.steps.across += across;
      globalThis.steps.down += down;
      turn(across, down);
    };
    Module._pm_scale = (by) => {
      globalThis.steps.scale += by;
      scale(by);
    };
    return seen;
  });
  await check('two fingers move and scale, press nothing, and the page itself stays', async () => {
    const door = await bench.place(DOOR);
    const [x, y] = [Math.round(door.x), Math.round(door.y)];
    await steps();
    await touch('touchStart', [[x - 50, y]]);
    await touch('touchStart', [[x - 50, y], [x + 50, y]]);
    await touch('touchMove', [[x - 100, y - 50], [x + 100, y - 50]]);
    await touch('touchEnd', []);
    await bench.rest();
    const {across, down, scale} = await steps();
    assert.ok(Math.abs(across) < 1e-9);
    assert.ok(Math.abs(down + 0.5) < 1e-9);
    assert.ok(Math.abs(scale - Math.log(2)) < 1e-9);
    assert.equal(await page.evaluate(() => visualViewport.scale), 1);
    assert.equal(await bench.job(), '');
  });
  await check('a tap presses', async () => {
    const {x, y} = await bench.place(DOOR);
    await page.touchscreen.tap(x, y);
    await bench.rest();
    assert.match(await bench.job(), /"Marsh Lights"/);
  });
  await check('a tap into a box opens it for typing within the gesture', async () => {
    const {x, y} = await bench.place(BOX);
    await page.touchscreen.tap(x, y);
    assert.equal(await page.evaluate(() => document.activeElement.id), 'typing');
    await bench.key('Control+a');
    await bench.write('21');
    await bench.key('Enter');
    assert.equal(await lapOf(bench), 21);
  });
});

/** Answers the page's request for `file` by `answer`, and gives what the page then says. */
async function noticeWhen(file, answer) {
  let said = '';
  await checks.withBench({before: (page) => page.route(`**/${file}`, answer)}, async (bench) => {
    await until(() => bench.pm('isStopped'), 'the sentence');
    said = await bench.notice();
  });
  return said;
}

const missing = (route) => route.fulfill({status: 404, body: 'no'});
for (const [file, answer, wanted] of [
  ['bench.wasm', missing, /could not be laid out[^]*bench\.wasm did not come \(404\)/],
  ['bench.wasm', (route) => route.fulfill({contentType: 'text/html', body: '<p>hello</p>'}),
    /could not be laid out/],
  ['bench.wasm', (route) => route.abort(), /could not be laid out/],
  ['bench.js', missing, /could not be laid out[^]*bench\.js did not come/],
  ['faces/main-bold.ttf', missing, /could not be laid out[^]*main-bold\.ttf did not come/],
]) {
  await check(`a sentence stands on the page when ${file} does not come as it should`, async () => {
    assert.match(await noticeWhen(file, answer), wanted);
  });
}

await checks.withBench({before: (page) => page.route('**/demo-jobs/*', missing)}, async (bench) => {
  await check('the bench opens without the demo jobs', async () => {
    await bench.rest();
    assert.equal(await bench.notice(), '');
  });
});

const isFetched = (bench, name) => bench.page.evaluate((file) =>
  performance.getEntriesByType('resource').some((one) => one.name.endsWith(file)), name);

/** Opens the small job under another name. */
async function openNamed(bench, name) {
  if (await bench.job() === '') await bench.press(DOOR);
  const text = (await bench.job()).replace(/"(Marsh Lights|Café × 2)"/, `"${name}"`);
  await bench.drop([{name: 'named.json', text}]);
  await until(async () => (await bench.job()).includes(`"${name}"`), 'the file');
}

await checks.withBench({}, async (bench) => {
  await check('the wide face is fetched once a name has a sign the main face lacks', async () => {
    await openNamed(bench, 'Café × 2');
    await bench.rest();
    assert.equal(await isFetched(bench, 'faces/wide.ttf'), false);
    await openNamed(bench, 'Łódź');
    await until(() => isFetched(bench, 'faces/wide.ttf'), 'the wide face');
    await bench.rest();
    assert.equal(await bench.line('failed.sentence'), null);
    assert.deepEqual(await bench.violations(), []);
  });
});

await checks.withBench({before: (page) => page.route('**/wide.ttf', missing)}, async (bench) => {
  await check('a wide face that does not come is said, and the job is open', async () => {
    await openNamed(bench, 'Łódź');
    await until(() => bench.line('failed.sentence'), 'the sentence');
    assert.match(await bench.line('failed.sentence'),
      /^faces\/wide\.ttf did not come, so some letters .*Your open job is untouched\.$/);
    await bench.press('failed.away');
    assert.match(await bench.job(), /"Łódź"/);
  });
});

await checks.withBench({before: (page) => page.route('**/bench.wasm', async (route) => {
  await pause(6000);
  await route.continue();
})}, async (bench) => {
  await check('a slow start says what it waits for, then opens', async () => {
    assert.match(await bench.notice(), /Laying out the bench…/);
    const wanted = /still fetching, [\d.]+ (of [\d.]+ )?MB/;
    await until(async () => wanted.test(await bench.notice()), 'the words');
    await bench.rest();
    assert.equal(await bench.notice(), '');
  });
});

await checks.withBench({words: ['--disable-webgl', '--disable-3d-apis']}, async (bench) => {
  await check('without WebGL2 a sentence says so, words and buttons stand as text', async () => {
    await bench.rest();
    assert.match(await bench.notice(), /no WebGL2, so the picture is missing/);
    await bench.page.click(`[data-place="${DOOR}"]`);
    await bench.rest();
    assert.match(await bench.job(), /"Marsh Lights"/);
    assert.match(await bench.page.locator('#mirror').innerText(), /wide|long|section/i);
  });
});

checks.end();
