// The section on the bench: a lap is chosen, its edge and a sleeve's width are pulled by mouse and
// by finger, what is found stands at its place and leads there, what helps is one press, and what
// follows shows before and after, undone as well.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';

import {Checks, pause, until} from './page.mjs';

const checks = new Checks();
const HARBOUR = readFileSync(new URL('../../demo-jobs/harbour-ledger.json', import.meta.url), 'utf8');
const BEFORE_AND_AFTER = /(\S+) → (\S+)$/;

/** Harbour Ledger's section 2, seventeen sleeves lapped by 18. */
async function sectionTwo(bench) {
  await bench.rest();
  await bench.drop([{name: 'harbour-ledger.json', text: HARBOUR}]);
  await until(async () => (await bench.places()).has('place.next'), 'the job to open');
  for (let steps = 0; steps < 20 && await bench.line('place') !== 'Section 2'; steps += 1) {
    await bench.press('place.next');
  }
  assert.equal(await bench.line('place'), 'Section 2');
}

const section = async (bench) => JSON.parse(await bench.job()).sections[1];

/** A hand that pulls: with the mouse, or with a finger. */
function mouseOf(bench) {
  const {mouse} = bench.page;
  return {
    async down(x, y) { await mouse.move(x, y); await bench.rest(); await mouse.down(); },
    move: (x, y) => mouse.move(x, y),
    up: () => mouse.up(),
  };
}

async function fingerOf(bench) {
  const session = await bench.page.context().newCDPSession(bench.page);
  const send = (type, points) => session.send('Input.dispatchTouchEvent',
    {type, touchPoints: points});
  return {
    down: (x, y) => send('touchStart', [{x, y}]),
    move: (x, y) => send('touchMove', [{x, y}]),
    up: () => send('touchEnd', []),
  };
}

/** Pulls a named thing along (dx, dy) until the slip beside the hand says `figure`. */
async function pull(bench, hand, name, [dx, dy], figure, letGo = true) {
  const {x, y} = await bench.place(name);
  const at = async (px) => {
    const was = await bench.line('pull.figure');
    await hand.move(x + dx * px, y + dy * px);
    // The browser hands a finger's way over when it has time; a figure may stay as it is.
    for (let waits = 0; waits < 8; waits += 1) {
      await bench.rest();
      if (await bench.line('pull.figure') !== was) break;
      await pause(60);
    }
    return Number(await bench.line('pull.figure'));
  };
  await hand.down(x, y);
  await bench.rest();
  // Two places tell how far a pixel goes; a step of the figure is never finer than one.
  const [near, far] = [await at(12), await at(24)];
  const most = Math.round(12 + (figure - near) * 12 / (far - near));
  let now;
  for (const off of [0, -1, 1, -2, 2, -3, 3]) {
    now = await at(most + off);
    if (now === figure) break;
  }
  assert.equal(now, figure, `${name}: ${near} at 12 px, ${far} at 24 px`);
  if (letGo) await hand.up();
  await bench.rest();
}

/** Pulls a named thing far along (dx, dy) and gives why it goes no farther; puts it back. */
async function whyNot(bench, hand, name, [dx, dy]) {
  const {x, y} = await bench.place(name);
  await hand.down(x, y);
  await bench.rest();
  await hand.move(x + dx * 240, y + dy * 240);
  await bench.rest();
  const reason = await bench.line('pull.reason');
  await bench.key('Escape');
  await hand.up();
  await bench.rest();
  return reason;
}

/** No two of these places lie over one another. */
function apart(places, one, others) {
  const a = places.get(one);
  for (const other of others) {
    const b = places.get(other);
    const over = a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
    assert.ok(!over, `${one} lies over ${other}`);
  }
}

/** Tags lie within the close-up, over no figure, box, label or step of it. */
async function tagsAreInPlace(bench, least) {
  const places = await bench.places();
  const tags = [...places.keys()].filter((name) => /^tag\.\d+$/.test(name));
  assert.ok(tags.length >= least, `${tags.length} tags`);
  const others = [...places.keys()].filter((name) =>
    /^(box|figure|closeup|lap\.(above|below|shown)|sleeve|slip|finding|lap_rule)\b/.test(name));
  assert.ok(others.length > 30, `${others.length} other places`);
  const {right, top} = places.get('lap.above');
  const {bottom} = places.get('lap.below');
  for (const tag of tags) {
    apart(places, tag, others.concat(tags.filter((one) => one !== tag)));
    const area = places.get(tag);
    assert.ok(area.left > right && area.top >= top - 1 && area.bottom <= bottom + 1, tag);
  }
}

async function choosesLaps(bench) {
  await checks.check('the middle lap is shown until one is chosen', async () => {
    assert.match(await bench.line('lap.shown'), /^lap 8 to 9/);
  });
  await checks.check('a lap is chosen on the strip, by the steps and on the whole section',
    async () => {
      await bench.press('lap.2-07');
      assert.match(await bench.line('lap.shown'), /^lap 7 to 8/);
      assert.match(await bench.line('closeup.2-07'), /^2-07 lies over/);
      assert.match(await bench.line('closeup.2-08'), /^2-08 lies under/);
      await bench.press('lap.below');
      assert.match(await bench.line('lap.shown'), /^lap 8 to 9/);
      await bench.press('lap.above');
      assert.match(await bench.line('lap.shown'), /^lap 7 to 8/);
      const {x, bottom} = await bench.place('whole');
      await bench.page.mouse.click(x, bottom - 4);
      await bench.rest();
      assert.match(await bench.line('lap.shown'), /^lap 16 to 17/);
      assert.ok(!(await bench.places()).has('figure.middle.7'));
      await bench.press('lap.2-07');
    });
}

async function pullsLap(bench, hand, name, direction) {
  const before = await bench.job();
  await pull(bench, hand, name, direction, 20);
  assert.equal((await section(bench)).lap_mm, 20);
  assert.equal(await bench.line('last_action'), 'Lap of section 2: 18 to 20');
  await bench.press('undo');
  assert.equal(await bench.job(), before);
}

async function pullsWidth(bench, hand) {
  const before = await bench.job();
  await pull(bench, hand, 'pull.width', [1, 0], 89);
  assert.deepEqual((await section(bench)).changes['2-07'], {width_mm: 89});
  assert.equal(await bench.line('last_action'), 'Width of sleeve 2-07: 84 to 89');
  await bench.press('undo');
  assert.equal(await bench.job(), before);
}

await checks.withBench({}, async (bench) => {
  await sectionTwo(bench);
  const mouse = mouseOf(bench);
  await choosesLaps(bench);
  await checks.check('what is found stands at the lap, over nothing else', () =>
    tagsAreInPlace(bench, 2));
  await checks.check('a tag opens the sum of its finding in the list', async () => {
    await bench.press('tag.0');
    assert.match(await bench.line('finding.0.sum'), /half a foot 7 \+ tolerance 2 = 9/);
    await bench.press('tag.0');
    assert.ok(!(await bench.places()).has('finding.0.sum'));
  });
  await checks.check('the joining row has its sum', async () => {
    await bench.press('figure.middle.7');
    assert.match(await bench.line('slip.middle.7.sum'), /532 − 18 ÷ 2 = 523/);
    await bench.press('figure.middle.7');
  });
  await checks.check('the lap is pulled from 18 to 20 in the close-up and on the strip, and back',
    async () => {
      await pullsLap(bench, mouse, 'pull.lap', [0, 1]);
      await pullsLap(bench, mouse, 'pull.lap_on_strip', [-1, 0]);
    });
  await checks.check('after the undo what follows shows before and after', async () => {
    assert.match(await bench.line('slip.width'), BEFORE_AND_AFTER);
    const [, was, is] = (await bench.line('slip.width')).match(BEFORE_AND_AFTER);
    // source: 16 laps 2 wider each take 32 off 1200, by hand
    assert.deepEqual([was, is], ['1168', '1200']);
  });
  await checks.check('a width is pulled on the strip, of that sleeve alone', () =>
    pullsWidth(bench, mouse));
  await checks.check('Esc puts a pull back, byte for byte', async () => {
    const before = await bench.job();
    await pull(bench, mouse, 'pull.width', [1, 0], 89, false);
    await bench.key('Escape');
    await mouse.up();
    assert.equal(await bench.job(), before);
  });
  await checks.check('a lap wider than a sleeve and a sleeve narrower than its lap resist',
    async () => {
      const before = await bench.job();
      assert.match(await whyNot(bench, mouse, 'pull.lap', [0, 1]), /lap|wide|row/);
      assert.match(await whyNot(bench, mouse, 'pull.width', [-1, 0]), /2-07|wide|edge/);
      assert.equal(await bench.job(), before);
    });
  await checks.check('the joining row is kept clear farther, its staples with it', async () => {
    const before = await bench.job();
    await pull(bench, mouse, 'pull.joining_end', [1, 0], 30);
    const rows = (await section(bench)).lap_rows;
    assert.deepEqual([rows.stitch.kept_clear_mm, rows.staple.kept_clear_mm], [[30, 30], [30, 30]]);
    await bench.press('undo');
    assert.equal(await bench.job(), before);
  });
  await checks.check('the lap staples are spaced exactly, and evenly again', async () => {
    const before = await bench.job();
    await bench.press('lap_rule.exact');
    assert.equal((await section(bench)).lap_rows.staple.rule, 'exact');
    assert.equal(await bench.line('last_action'),
      'Chose exactly 55 for the lap staples of section 2');
    await bench.press('undo');
    assert.equal(await bench.job(), before);
  });
  await checks.check('what helps is one press, clears the stop, and is undone', async () => {
    const before = await bench.job();
    await bench.press('finding.0.staples_out');
    assert.equal((await section(bench)).lap_rows.staple.staples, 'before_the_row');
    assert.match(await bench.line('slip.job_stops'), /1 → 0$/);
    await bench.press('undo');
    assert.equal(await bench.job(), before);
    assert.match(await bench.line('slip.job_stops'), /0 → 1$/);
  });
  await checks.check('all findings can be reached, and a place that is pressed goes there',
    async () => {
      const elsewhere = async () => {
        for (const name of (await bench.places()).keys()) {
          const led = /^finding\.\d+\.place$/.test(name)
            && (await bench.line(name)).match(/^go to (section|panel) (\w+)/);
          if (led) return {name, kind: led[1], code: led[2]};
        }
        return null;
      };
      const seen = new Set();
      let last;
      for (let turns = 0; turns < 16; turns += 1) {
        for (const name of (await bench.places()).keys()) {
          if (/^finding\.\d+$/.test(name)) seen.add(name);
        }
        last = await bench.line('finding.more');
        if (last.startsWith('Back')) break;
        await bench.press('finding.more');
      }
      assert.equal(last, 'Back to the first found');
      for (let i = 0; i < seen.size; i += 1) assert.ok(seen.has(`finding.${i}`), `finding.${i}`);
      assert.ok(seen.size > 10, `${seen.size} findings`);
      for (let turns = 0; turns < 16 && !await elsewhere(); turns += 1) {
        await bench.press('finding.more');
      }
      const led = await elsewhere();
      await bench.press(led.name);
      assert.equal(await bench.line('place'),
        `${led.kind === 'section' ? 'Section' : 'Panel'} ${led.code}`);
    });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({context: {viewport: {width: 1024, height: 768}, hasTouch: true}},
  async (bench) => {
    await sectionTwo(bench);
    const finger = await fingerOf(bench);
    await checks.check('on a tablet the tags stand in the close-up too', async () => {
      const {x, y} = await bench.place('lap.2-07');
      await bench.page.touchscreen.tap(x, y);
      await bench.rest();
      assert.match(await bench.line('lap.shown'), /^lap 7 to 8/);
      await tagsAreInPlace(bench, 2);
    });
    await checks.check('a finger pulls the lap and a width, and undo brings them back', async () => {
      await pullsLap(bench, finger, 'pull.lap', [0, 1]);
      await pullsWidth(bench, finger);
    });
    await checks.check('the tray says before and after', async () => {
      const lines = [...(await bench.places()).keys()].filter((name) => /^tray\.slip\./.test(name));
      assert.ok(lines.length > 0);
      assert.match(await bench.line(lines[0]), BEFORE_AND_AFTER);
    });
    assert.deepEqual(bench.mistakes, []);
  });

checks.end();
