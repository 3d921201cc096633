// Every key of the bench: pressed, and what it does seen. The list of keys on the page is made from
// the table that handles them, and this test reads that list: a row without a test here fails.
// Then the order of Tab, the wheel, two fingers, and the size of what a finger must meet.
import assert from 'node:assert/strict';

import {Checks} from './page.mjs';

const SLEEVE = 'door.sleeve';
const CLEAR = 'stop.bottom';
const SPACING = 'box.spacing';

const checks = new Checks();
const check = (sentence, body) => checks.check(sentence, body);

/** The page's own focus: the place its button stands for. */
const at = (bench) => bench.page.evaluate(() => document.activeElement?.dataset?.place ?? '');
/** Gives a place the focus, as Tab would. */
async function stand(bench, place) {
  await bench.rest();
  await bench.page.evaluate((id) => {
    document.activeElement?.blur();
    document.querySelector(`[data-place="${id}"]`).focus();
  }, place);
  await bench.rest();
}
const rows = async (bench) => JSON.parse(await bench.job()).sections[0].side_rows;
const spacing = async (bench) => (await rows(bench)).staple.spacing_mm;
const clear = async (bench) => (await rows(bench)).staple.kept_clear_mm[0];
const has = async (bench, place) => (await bench.places()).has(place);
const seen = async (bench) => [await bench.line('frame.bottom'), await bench.line('frame.top')];
const stage = (bench) => bench.page.evaluate(() =>
  document.querySelector('[aria-current]')?.dataset.place);

/** The rows of the list as the page says them: the keys, then what they do. */
async function listed(bench) {
  await bench.key('?');
  const lines = await bench.page.evaluate(() =>
    [...document.querySelectorAll('[data-line^="key."]')].map((line) => line.textContent));
  await bench.key('Escape');
  return lines;
}

/** By row of the list: presses its keys and sees what they do. */
const TRIED = {
  'Tab: to the next thing': async (bench) => {
    await stand(bench, 'face.front');
    await bench.key('Tab');
    assert.equal(await at(bench), 'face.down');
  },
  'Shift + Tab: to the thing before': async (bench) => {
    await stand(bench, 'face.down');
    await bench.key('Shift+Tab');
    assert.equal(await at(bench), 'face.front');
  },
  'Enter, Space: press what has the ring': async (bench) => {
    for (const key of ['Enter', 'Space']) {
      await stand(bench, 'face.down');
      await bench.key(key);
      assert.match(await bench.page.evaluate(() =>
        document.querySelector('[aria-pressed][data-place^="face"]').dataset.place), /down/);
      assert.equal(await at(bench), 'face.down');
      await bench.press('face.front');
    }
  },
  'Esc: put back, or put away': async (bench) => {
    await bench.press(SPACING);
    await bench.write('77');
    await bench.key('Escape');
    assert.equal(await spacing(bench), 50);
    await bench.key('?');
    await bench.key('Escape');
    assert.equal(await has(bench, 'keys.close'), false);
    const {x, y} = await bench.place(CLEAR);
    await bench.page.mouse.move(x, y);
    await bench.page.mouse.down();
    await bench.page.mouse.move(x + 40, y, {steps: 3});
    await bench.rest();
    assert.notEqual(await clear(bench), 18);
    await bench.key('Escape');
    await bench.page.mouse.up();
    assert.equal(await clear(bench), 18);
  },
  'Up: 1 more, with Shift 10': async (bench) => {
    await stand(bench, SPACING);
    await bench.key('ArrowUp');
    assert.equal(await spacing(bench), 51);
    await bench.key('Shift+ArrowUp');
    assert.equal(await spacing(bench), 61);
    await bench.key('Enter');
    await bench.key('ArrowUp');
    await bench.key('Escape');
    assert.equal(await spacing(bench), 62);
    assert.equal(await at(bench), SPACING);
  },
  'Down: 1 less, with Shift 10': async (bench) => {
    await stand(bench, SPACING);
    await bench.key('Shift+ArrowDown');
    await bench.key('ArrowDown');
    assert.equal(await spacing(bench), 51);
    for (let i = 0; i < 5; i += 1) await bench.key('Control+z');
    assert.equal(await spacing(bench), 50);
  },
  'Arrows: pull by 0.5, Shift 5, Ctrl 0.1': async (bench) => {
    await stand(bench, CLEAR);
    const was = await clear(bench);
    await bench.key('ArrowRight');
    const plain = await clear(bench) - was;
    assert.ok(plain > 0);
    await bench.key('Shift+ArrowRight');
    assert.equal(await clear(bench), was + plain * 11);
    await bench.key('Control+ArrowLeft');
    assert.ok(Math.abs(await clear(bench) - (was + plain * 11 - 0.1)) < 1e-9);
    for (let i = 0; i < 3; i += 1) await bench.key('Control+z');
    assert.equal(await clear(bench), was);
  },
  '0 to 9: write over the figure': async (bench) => {
    await stand(bench, SPACING);
    await bench.write('62');
    await bench.key('Enter');
    assert.equal(await spacing(bench), 62);
    await bench.key('Control+z');
  },
  'Enter: keep what is written': async (bench) => {
    await bench.typeInto(SPACING, '63');
    assert.equal(await spacing(bench), 63);
    await bench.key('Control+z');
  },
  'Right: along, towards the top': async (bench) => {
    await stand(bench, 'frame.bottom');
    await bench.key('ArrowRight');
    assert.match((await seen(bench))[0], /from 50 to/);
  },
  'Left: along, towards the bottom': async (bench) => {
    await stand(bench, 'frame.bottom');
    await bench.key('ArrowLeft');
    assert.match((await seen(bench))[0], /from 0 to/);
  },
  'Home: back to both ends': async (bench) => {
    await bench.key('+');
    await bench.key('Home');
    assert.equal(await has(bench, 'closeups.ends'), false);
    assert.match((await seen(bench))[0], /from 0 to/);
  },
  'End: to the middle': async (bench) => {
    await bench.key('End');
    const [bottom, top] = await seen(bench);
    assert.match(bottom, /to 900$/);
    assert.match(top, /from 900 to/);
    await bench.press('closeups.ends');
    assert.match((await seen(bench))[1], /to 1800$/);
  },
  '+: larger': async (bench) => {
    const whole = Number((await seen(bench))[0].match(/to ([\d.]+)$/)[1]);
    for (const key of ['+', '=']) await bench.key(key);
    assert.ok(Number((await seen(bench))[0].match(/to ([\d.]+)$/)[1]) < whole * 0.7);
    await bench.key('Home');
  },
  '−: smaller': async (bench) => {
    const whole = Number((await seen(bench))[0].match(/to ([\d.]+)$/)[1]);
    await bench.key('-');
    assert.ok(Number((await seen(bench))[0].match(/to ([\d.]+)$/)[1]) > whole * 1.2);
    await bench.key('Home');
  },
  '1 to 8: open a stage of the work': async (bench) => {
    const stages = ['measure', 'make', 'sew', 'curve', 'buy', 'print', 'hang', 'record'];
    await stand(bench, 'stage.make');
    for (let i = 0; i < 8; i += 1) {
      await bench.key(String(i + 1));
      assert.equal(await stage(bench), `stage.${stages[i]}`);
    }
    await bench.key('2');
  },
  'S: the sum behind a figure': async (bench) => {
    await stand(bench, 'figure.points');
    await bench.key('s');
    assert.ok(await has(bench, 'slip.points.sum'));
    await stand(bench, 'slip.points');
    await bench.key('s');
    assert.equal(await has(bench, 'slip.points.sum'), false);
  },
  'F: face down, or the front': async (bench) => {
    const down = () => bench.page.evaluate(() =>
      document.querySelector('[data-place="face.down"]').getAttribute('aria-pressed'));
    await bench.key('f');
    assert.equal(await down(), 'true');
    await bench.key('f');
    assert.equal(await down(), null);
  },
  'Page Up: the piece before': async (bench) => {
    await bench.press('start');
    await bench.press('door.small_job');
    const first = await bench.line('piece');
    await bench.key('PageDown');
    assert.notEqual(await bench.line('piece'), first);
    await bench.key('PageUp');
    assert.equal(await bench.line('piece'), first);
  },
  'Page Down: the next piece': async (bench) => {
    await bench.key('PageDown');
    assert.equal(await bench.line('piece'), 'sleeve 1-01');
    await bench.press('start');
    await bench.press(SLEEVE);
  },
  'P: the map of the pages': async (bench) => {
    await bench.key('p');
    assert.equal(await stage(bench), 'stage.print');
    await bench.key('2');
  },
  'T: small, normal, large text': async (bench) => {
    const height = async () => {
      const {top, bottom} = await bench.place('face.front');
      return bottom - top;
    };
    const was = await height();
    await bench.key('t');
    assert.equal(await height(), 52);
    await bench.key('t');
    await bench.key('t');
    assert.equal(await height(), was);
  },
  '?: this list': async (bench) => {
    await bench.key('?');
    assert.ok(await has(bench, 'keys.close'));
    await bench.key('?');
    assert.equal(await has(bench, 'keys.close'), false);
  },
  'Ctrl + Z: undo the last action': async (bench) => {
    await bench.typeInto(SPACING, '64');
    await bench.key('Control+z');
    assert.equal(await spacing(bench), 50);
  },
  'Ctrl + Y: redo it': async (bench) => {
    for (const keys of ['Control+y', 'Control+Shift+z']) {
      await bench.key(keys);
      assert.equal(await spacing(bench), 64);
      await bench.key('Control+z');
      assert.equal(await spacing(bench), 50);
    }
  },
  'Ctrl + S: save the job as a file': async (bench) => {
    const coming = bench.page.waitForEvent('download');
    await bench.key('Control+s');
    assert.match((await coming).suggestedFilename(), /\.json$/);
  },
  'Ctrl + O: open a job file': async (bench) => {
    const coming = bench.page.waitForEvent('filechooser');
    await bench.key('Control+o');
    await coming;
  },
  'Ctrl + P: print the guides': async (bench) => {
    await bench.key('Control+p');
    assert.equal(await stage(bench), 'stage.print');
    await bench.key('2');
  },
};

await checks.withBench({}, async (bench) => {
  await bench.press(SLEEVE);
  const lines = await listed(bench);
  await check('every row of the list of keys is tried here, and nothing else', () => {
    assert.ok(lines.length > 20);
    assert.deepEqual([...lines].sort(), Object.keys(TRIED).sort());
  });
  for (const [words, body] of Object.entries(TRIED)) await check(words, () => body(bench));
  await check('while a box is open the letters and figures are its own', async () => {
    await bench.press(SPACING);
    await bench.write('fspt?6');
    await bench.key('Home');
    assert.equal(await stage(bench), 'stage.make');
    assert.equal(await has(bench, 'keys.close'), false);
    await bench.key('Escape');
    assert.equal(await spacing(bench), 50);
  });
  await check('the button with the question mark opens the list, and it closes', async () => {
    await bench.press('keys.open');
    assert.equal(await at(bench), 'keys.close');
    assert.equal(await has(bench, 'stage.make'), false);
    await bench.press('keys.close');
    assert.equal(await at(bench), 'keys.open');
  });
  await check('the text size is kept over a reload', async () => {
    await bench.press('keys.open');
    await bench.press('text.large');
    await bench.press('keys.close');
    await bench.page.reload();
    const {top, bottom} = await bench.place('keys.open');
    assert.equal(bottom - top, 52);
    await bench.page.evaluate(() => localStorage.clear());
    await bench.page.reload();
    await bench.rest();
  });
  await check('nothing went wrong on the page', () => assert.deepEqual(bench.mistakes, []));
});

await checks.withBench({}, async (bench) => {
  const {page} = bench;
  await bench.press(SLEEVE);
  await check('Tab goes the way of the hand: stages, switches, piece, slip, findings, Undo',
    async () => {
      const groups = [/^(start|stage|keys)/, /^(face|how|figure|rule|place|piece|box\.spacing|make)/,
        /^(box|frame|spacing|stop|edge|staple|stitch|sheet|lap|strip)/, /^slip/, /^finding/,
        /^(undo|redo|save|open|actions|kept|last|bar)/];
      const names = await page.evaluate(() =>
        [...document.querySelectorAll('#places button')].map((button) => button.dataset.place));
      let group = 0;
      for (const name of names) {
        if (groups[group].test(name)) continue;
        group = groups.findIndex((one, i) => i > group && one.test(name));
        assert.ok(group > 0, `${name} comes too late, or is in no group: ${names.join(' ')}`);
      }
      const lefts = await page.evaluate(() => [...document.querySelectorAll('#places button')]
        .filter((one) => /^(box\.(kept|in_|stitch|width)|frame|stop)/.test(one.dataset.place))
        .map((one) => parseFloat(one.style.left)));
      assert.ok(lefts.length > 6);
      assert.deepEqual(lefts, [...lefts].sort((a, b) => a - b));
      await stand(bench, names[0]);
      for (const name of names.slice(1)) {
        await bench.key('Tab');
        assert.equal(await at(bench), name);
      }
    });
  await check('after Tab in an open box the page and the bench agree on where it stands',
    async () => {
      await bench.press('box.kept_clear');
      await bench.key('Tab');
      const one = await at(bench);
      await bench.key('Tab');
      await bench.key('Shift+Tab');
      assert.notEqual(one, 'box.kept_clear');
      assert.equal(await at(bench), one);
    });
  await check('the wheel moves a close-up only after a press in it, and never a figure',
    async () => {
      const job = await bench.job();
      const {x, y} = await bench.place('spacing.bottom');
      const bare = {x: x + 160, y};
      await bench.press('face.front');
      await page.mouse.move(bare.x, bare.y);
      await page.mouse.wheel(0, 200);
      await bench.rest();
      assert.match((await seen(bench))[0], /from 0 to/);
      await page.mouse.click(bare.x, bare.y);
      await page.mouse.wheel(0, 200);
      await bench.rest();
      const [bottom, top] = await seen(bench);
      assert.doesNotMatch(bottom, /from 0 to/);
      assert.match(top, /to 1800$/);
      await bench.press('closeups.ends');
      for (const name of [SPACING, 'box.length', 'box.width']) {
        const box = await bench.place(name);
        await page.mouse.move(box.x, box.y);
        await page.mouse.wheel(0, -300);
        await bench.rest();
      }
      assert.equal(await bench.job(), job);
    });
  await check('a frame on the strip is pulled along, and puts nothing in the job', async () => {
    const job = await bench.job();
    const {x, y} = await bench.place('frame.bottom');
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 150, y, {steps: 4});
    await page.mouse.up();
    const [, from] = (await seen(bench))[0].match(/from (\d+)/);
    assert.ok(Math.abs(from - 150 / 960 * 1800) < 20, from);
    await bench.key('Home');
    assert.equal(await bench.job(), job);
  });
  await check('nothing is drawn in 2 idle seconds', async () => {
    await bench.rest();
    const before = await bench.pm('frames');
    await new Promise((done) => { setTimeout(done, 2000); });
    assert.equal(await bench.pm('frames'), before);
  });
});

const TABLET = {context: {viewport: {width: 1024, height: 768}, hasTouch: true}};
await checks.withBench(TABLET, async (bench) => {
  const tools = await bench.page.context().newCDPSession(bench.page);
  const touch = (type, points) => tools.send('Input.dispatchTouchEvent',
    {type, touchPoints: points.map(([x, y], id) => ({x: Math.round(x), y: Math.round(y), id}))});
  await bench.press(SLEEVE);
  await check('two fingers move a close-up and make it larger, and press nothing', async () => {
    const job = await bench.job();
    const {x, y} = await bench.place('spacing.bottom');
    const whole = Number((await seen(bench))[0].match(/to ([\d.]+)$/)[1]);
    await touch('touchStart', [[x + 100, y]]);
    await touch('touchStart', [[x + 100, y], [x + 200, y]]);
    await touch('touchMove', [[x + 50, y], [x + 250, y]]);
    await touch('touchEnd', []);
    await bench.rest();
    const [bottom, top] = await seen(bench);
    assert.match(bottom, /from 0 to/);
    const now = Number(bottom.match(/to ([\d.]+)$/)[1]);
    assert.ok(Math.abs(now - whole / 2) < whole * 0.05, `${whole} to ${now}`);
    assert.match(top, /to 1800$/);
    await touch('touchStart', [[x + 100, y]]);
    await touch('touchStart', [[x + 100, y], [x + 200, y]]);
    await touch('touchMove', [[x, y], [x + 100, y]]);
    await touch('touchEnd', []);
    await bench.rest();
    assert.doesNotMatch((await seen(bench))[0], /from 0 to/);
    await bench.press('closeups.ends');
    assert.match((await seen(bench))[0], /from 0 to/);
    assert.equal(await bench.job(), job);
  });
  await check('nothing a finger must meet is under 34 high or wide; buttons are 48', async () => {
    let least = 1e6;
    let name = '';
    for (const view of [SLEEVE, 'tray.all', 'keys.open', 'keys.close', 'stage.print']) {
      if (view !== SLEEVE) await bench.press(view);
      const told = JSON.parse(await bench.page.evaluate(() =>
        Module.UTF8ToString(Module._pm_places())));
      for (const [id, left, top, right, bottom, state] of told) {
        const size = Math.min(right - left, bottom - top);
        if (state && size < least) [least, name] = [size, `${id} on ${view}`];
      }
      for (const [id, , top, , bottom] of told) {
        if (/^(face|rule|tray\.all|keys|text)\.?/.test(id) && !/hands|^keys$/.test(id)) {
          assert.ok(bottom - top >= 48, `${id} is ${bottom - top} high`);
        }
      }
    }
    console.log(`        smallest target ${least.toFixed(1)} px: ${name}`);
    assert.ok(least >= 33.9, `${name}: ${least}`);
  });
});

checks.end();
