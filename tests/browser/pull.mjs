// Taking hold of things and pulling them: by mouse, by finger and by keys, on a sleeve by itself, a
// sleeve of a section and a panel. Each check reads the job itself, while the hand moves and after.
import assert from 'node:assert/strict';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {Checks, until} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const TABLET = {context: {viewport: {width: 1024, height: 768}, hasTouch: true}};
const checks = new Checks();

/** Opens a job of demo-jobs with the file chooser. */
async function openJob(bench, name) {
  const coming = bench.page.waitForEvent('filechooser');
  await bench.press('door.open');
  await (await coming).setFiles(path.join(ROOT, 'demo-jobs', `${name}.json`));
  await bench.page.waitForTimeout(200);
  await bench.rest();
}

/** Takes a named place in the hand and moves it, in steps as a hand does; it stays held. */
async function hold(bench, name, dx, dy, steps = 4) {
  const {x, y} = await bench.place(name);
  await bench.page.mouse.move(x, y);
  await bench.page.mouse.down();
  for (let i = 1; i <= steps; i += 1) {
    await bench.page.mouse.move(x + dx * i / steps, y + dy * i / steps);
  }
  await bench.rest();
}

async function letGo(bench) {
  await bench.page.mouse.up();
  await bench.rest();
}

const jobOf = async (bench) => JSON.parse(await bench.job());
const endsOf = (job) => job.sections[0].side_rows.staple.kept_clear_mm;

/** A grip pulled once: the figure follows the hand, and one step of undo gives the job again. */
function pulls(bench, name, [dx, dy], what, figure) {
  return checks.check(`${name} is pulled, and the ${what} follows the hand`, async () => {
    const start = await bench.job();
    const was = figure(JSON.parse(start));
    await hold(bench, name, dx, dy);
    const moving = figure(await jobOf(bench));
    assert.notEqual(moving, was, 'while it moves');
    assert.equal(await bench.line('pull.reason'), null);
    await letGo(bench);
    assert.equal(figure(await jobOf(bench)), moving, 'let go, it stays');
    await bench.key('Control+z');
    assert.equal(await bench.job(), start, 'undone byte for byte');
  });
}

/** A pull that resists: the sentence while it is held, the figure where it comes to rest. */
function resists(bench, name, [dx, dy], sentence, figure, stops) {
  return checks.check(`${name} resists: ${sentence}`, async () => {
    const start = await bench.job();
    await hold(bench, name, dx, dy);
    const told = await bench.line('pull.reason');
    assert.ok(told?.match(sentence), `told: ${told}`);
    assert.equal(figure(await jobOf(bench)), stops);
    await bench.key('Escape');
    await letGo(bench);
    assert.equal(await bench.job(), start, 'Esc puts it back byte for byte');
    assert.equal(await bench.line('pull.reason'), null);
  });
}

await checks.withBench({}, async (bench) => {
  await bench.press('door.sleeve');
  const first = await bench.job();
  await checks.check('the ends go from 18 to 25 with the hand and back by undo', async () => {
    const {x, y} = await bench.place('stop.bottom');
    await hold(bench, 'stop.bottom', 6, 0);
    for (let px = 6; px < 40 && endsOf(await jobOf(bench))[0] < 25; px += 0.5) {
      await bench.page.mouse.move(x + px, y);
    }
    assert.deepEqual(endsOf(await jobOf(bench)), [25, 25]);
    await letGo(bench);
    assert.deepEqual(endsOf(await jobOf(bench)), [25, 25]);
    await bench.key('Control+z');
    assert.equal(await bench.job(), first);
  });
  const rows = (job) => job.sections[0].side_rows;
  await pulls(bench, 'stop.top', [-15, 0], 'kept-clear end', (job) => endsOf(job)[1]);
  for (const row of ['staple_row.up', 'staple_row.up.top']) {
    await pulls(bench, row, [0, 12], 'staple row', (job) => rows(job).staple.in_from_edge_mm);
  }
  for (const row of ['stitch_row.down', 'stitch_row.down.top']) {
    await pulls(bench, row, [0, 9], 'stitch row', (job) => rows(job).stitch.in_from_edge_mm);
  }
  const width = (job) => job.sections[0].widths_mm[0];
  const length = (job) => job.sections[0].length_mm;
  await pulls(bench, 'edge.bottom', [0, 14], 'width', width);
  await pulls(bench, 'edge.top', [0, -14], 'width', width);
  await pulls(bench, 'sheet_end', [-20, 0], 'length', length);
  await pulls(bench, 'strip_end', [-20, 0], 'length', length);
  await resists(bench, 'staple_row.up', [0, 200], /110 wide, a row .* past the middle/,
    (job) => rows(job).staple.in_from_edge_mm, 55);
  await resists(bench, 'stitch_row.up', [0, -150], /^0 in from the edge: further out/,
    (job) => rows(job).stitch.in_from_edge_mm, 0);
  await resists(bench, 'stop.bottom', [-100, 0], /^0 kept clear: beyond it/,
    (job) => endsOf(job)[0], 0);
  await resists(bench, 'edge.top', [0, -190], /wide, a row 26 in from the edge: past the middle/,
    width, 52);
  await checks.check('margins that meet resist with their figures', async () => {
    await bench.typeInto('box.length', '60');
    await hold(bench, 'stop.bottom', 120, 0);
    const told = await bench.line('pull.reason');
    assert.match(told, /^60 long, [\d.]+ \+ [\d.]+ kept clear: no room for a row$/);
    assert.deepEqual(endsOf(await jobOf(bench)), [30, 30]);
    await letGo(bench);
    assert.deepEqual(endsOf(await jobOf(bench)), [30, 30], 'it stays at the last that can be');
    await bench.key('Control+z');
    await bench.key('Control+z');
    assert.equal(await bench.job(), first);
  });
  await checks.check('with Shift it moves by 5, with Ctrl by 0.1', async () => {
    await bench.page.keyboard.down('Shift');
    await hold(bench, 'stop.bottom', 17, 0);
    assert.equal(endsOf(await jobOf(bench))[0] % 5, 0);
    await bench.page.keyboard.up('Shift');
    await bench.page.keyboard.down('Control');
    const {x, y} = await bench.place('stop.bottom');
    const seen = new Set();
    for (let px = 0; px < 6; px += 1) {
      await bench.page.mouse.move(x + px, y);
      seen.add(endsOf(await jobOf(bench))[0]);
    }
    assert.ok([...seen].some((mm) => Math.round(mm * 10) % 5 !== 0), `seen: ${[...seen]}`);
    await bench.page.keyboard.up('Control');
    await bench.key('Escape');
    await letGo(bench);
    assert.equal(await bench.job(), first);
  });
  await checks.check('a press without a move changes nothing', async () => {
    for (const name of ['stop.bottom', 'staple_row.up', 'edge.top', 'sheet_end']) {
      await bench.press(name);
      assert.equal(await bench.job(), first);
    }
  });
  await checks.check('let go outside the window it stays', async () => {
    await hold(bench, 'stop.bottom', 15, 900);
    const moving = endsOf(await jobOf(bench));
    await letGo(bench);
    assert.deepEqual(endsOf(await jobOf(bench)), moving);
    assert.notDeepEqual(moving, [18, 18]);
    await bench.key('Control+z');
    assert.equal(await bench.job(), first);
  });
  await checks.check('the wheel changes no figure, held or not', async () => {
    for (const name of ['stop.bottom', 'staple_row.up', 'box.kept_clear', 'box.width']) {
      const {x, y} = await bench.place(name);
      await bench.page.mouse.move(x, y);
      for (const keys of [[], ['Shift'], ['Control']]) {
        for (const key of keys) await bench.page.keyboard.down(key);
        await bench.page.mouse.wheel(0, 240);
        for (const key of keys) await bench.page.keyboard.up(key);
      }
      await bench.rest();
      assert.equal(await bench.job(), first, name);
      // It moves the close-up instead, which goes back to its end.
      await bench.key('Home');
    }
    await hold(bench, 'stop.bottom', 15, 0);
    const moving = await bench.job();
    await bench.page.mouse.wheel(0, 240);
    await bench.rest();
    assert.equal(await bench.job(), moving);
    assert.match(await bench.line('frame.bottom'), /from 0 to/);
    await bench.key('Escape');
    await letGo(bench);
    assert.equal(await bench.job(), first);
  });
  await checks.check('a grip that has the focus moves by the arrows, a step of undo a key', async () => {
    const keys = [
      ['stop.bottom', 'ArrowRight', 1, (job) => endsOf(job)[0]],
      ['stop.top', 'Shift+ArrowLeft', 10, (job) => endsOf(job)[1]],
      ['staple_row.up', 'Control+ArrowDown', 0.1, (job) => rows(job).staple.in_from_edge_mm],
      ['stitch_row.up', 'ArrowUp', -1, (job) => rows(job).stitch.in_from_edge_mm],
      ['edge.top', 'ArrowDown', 1, width],
      ['sheet_end', 'Shift+ArrowRight', 10, length],
    ];
    for (const [name, key, by, figure] of keys) {
      const was = figure(JSON.parse(first));
      await bench.press(name);
      await bench.key(key);
      assert.equal(figure(await jobOf(bench)), Math.round((was + by) * 10) / 10, `${name} ${key}`);
      await bench.key(key);
      await bench.key('Control+z');
      await bench.key('Control+z');
      assert.equal(await bench.job(), first, `${name} undone`);
    }
    await bench.press('stitch_row.up');
    await bench.key('Shift+ArrowUp');
    await bench.key('Shift+ArrowUp');
    assert.match(await bench.line('pull.reason'), /further out there is no sheet/);
    await bench.key('Control+z');
    await bench.key('Control+z');
    assert.equal(await bench.job(), first);
  });
});

await checks.withBench({}, async (bench) => {
  await bench.press('door.sleeve');
  for (const [answer, grip, by, member] of [
    ['leaves.folded', 'fold', [0, 6], 'fold_radius_mm'],
    ['leaves.round', 'flange', [0, -12], 'flange_mm']]) {
    await bench.press('how');
    await bench.press(answer);
    await bench.press('how.close');
    await pulls(bench, grip, by, member, (job) => job.sections[0][member]);
  }
  await resists(bench, 'flange', [0, 80], /: a round sleeve is sewn in its flange only$/,
    (job) => job.sections[0].flange_mm, 26);
});

await checks.withBench({}, async (bench) => {
  await openJob(bench, 'harbour-ledger');
  await bench.press('sleeve.1-05');
  const change = (job) => job.sections[0].changes?.['1-05'];
  await pulls(bench, 'stop.bottom', [14, 0], 'end of this sleeve alone',
    (job) => change(job)?.side_rows?.staple?.kept_clear_mm?.[0]);
  await pulls(bench, 'staple_row.down', [0, -10], 'staple row of this sleeve',
    (job) => change(job)?.side_rows?.staple?.in_from_edge_mm);
  await pulls(bench, 'edge.top', [0, 12], 'width of this sleeve', (job) => change(job)?.width_mm);
  await checks.check('stitch rows with ends of their own are pulled by them', async () => {
    await bench.typeInto('box.kept_clear', '30');
    await pulls(bench, 'stitch_end.bottom.up', [20, 0], 'end of the stitch rows',
      (job) => change(job)?.side_rows?.stitch?.kept_clear_mm?.[0]);
  });
});

await checks.withBench({}, async (bench) => {
  await openJob(bench, 'marsh-lights');
  for (let i = 0; i < 12 && await bench.line('piece') !== 'panel P1'; i += 1) {
    await bench.press('place.next');
  }
  const panel = (job) => job.panels[0];
  for (const [row, by] of [['row.hinge', [0, 20]], ['row.top', [-20, 0]], ['row.bottom', [20, 0]]]) {
    await pulls(bench, row, by, 'rows, in from the edge', (job) => panel(job).panel_in_mm);
  }
  await pulls(bench, 'edge.hinge', [0, 20], 'width', (job) => panel(job).backing_mm[0]);
  await pulls(bench, 'sheet_end', [-20, 0], 'length', (job) => panel(job).backing_mm[1]);
  await resists(bench, 'fly_side', [0, -60], /^FLY SIDE, DO NOT SEW: this edge must stay unsewn/,
    (job) => panel(job).panel_in_mm, 16);
  await resists(bench, 'row.bottom', [900, 0], /no room for a row$/,
    (job) => panel(job).panel_in_mm, 345);
  await bench.press('how');
  await bench.press('corners.stop_short');
  await bench.press('how.close');
  await pulls(bench, 'corner.top', [0, 14], 'corner of a row',
    (job) => panel(job).corner_clear_mm);
});

await checks.withBench(TABLET, async (bench) => {
  await bench.press('door.sleeve');
  const first = await bench.job();
  const tools = await bench.page.context().newCDPSession(bench.page);
  const touch = async (type, points) => {
    await tools.send('Input.dispatchTouchEvent',
      {type, touchPoints: points.map(([x, y], id) => ({x, y, id}))});
    await bench.rest();
  };
  await checks.check('what is pulled is at least 9 mm to a finger', async () => {
    let looked = 0;
    for (const [name, {left, right, top, bottom}] of await bench.places()) {
      if (!/^(stop|staple_row|stitch_row|edge|sheet_end|strip_end)/.test(name)) continue;
      assert.ok(right - left >= 46 && bottom - top >= 46, `${name} ${right - left}`);
      looked += 1;
    }
    assert.ok(looked >= 10, `${looked} looked at`);
  });
  await checks.check('a finger beside the rule stop still takes it, and pulls', async () => {
    const {x, y} = await bench.place('stop.bottom');
    await touch('touchStart', [[x + 20, y]]);
    await touch('touchMove', [[x + 30, y]]);
    await touch('touchMove', [[x + 50, y]]);
    const end = async () => endsOf(await jobOf(bench))[0];
    await until(async () => await end() > 30, 'the end to follow the finger');
    const moving = await end();
    await touch('touchStart', [[x + 50, y], [x + 300, y - 100]]);
    await touch('touchMove', [[x + 60, y], [x + 320, y - 150]]);
    await touch('touchMove', [[x + 70, y], [x + 320, y - 150]]);
    await until(async () => await end() > moving + 2, 'the first finger to go on pulling');
    const last = await end();
    await touch('touchEnd', []);
    assert.ok(await end() >= last, 'lifted, it stays');
    await bench.key('Control+z');
    assert.equal(await bench.job(), first);
  });
  await checks.check('a row resists a finger and says why', async () => {
    const {x, y} = await bench.place('staple_row.up');
    await touch('touchStart', [[x, y]]);
    await touch('touchMove', [[x, y + 20]]);
    await touch('touchMove', [[x, y + 220]]);
    await until(async () => /past the middle of the sleeve/.test(await bench.line('pull.reason')),
      'the sentence');
    await bench.key('Escape');
    await touch('touchEnd', []);
    assert.equal(await bench.job(), first);
  });
});

checks.end();
