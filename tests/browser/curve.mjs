// The stage Curve: bays are stepped through, chord and rise typed where they lie, the sheet bends
// from flat to hung while the free edge creeps, every figure has its sum, and bays are added and
// taken away, each undone to the same bytes.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';

import {Checks, until} from './page.mjs';

const checks = new Checks();
const lastNumber = (words) => (words.match(/\d[\d,]*(\.\d+)?/g) ?? []).at(-1);
const creep = (bench) => bench.line('figure.edge');

/** A demo job on the bench, at the stage. */
async function curving(bench, name) {
  await bench.rest();
  const text = readFileSync(new URL(`../../demo-jobs/${name}.json`, import.meta.url), 'utf8');
  await bench.drop([{name: `${name}.json`, text}]);
  await until(async () => (await bench.places()).has('stage.curve'), 'the job to open');
  await bench.press('stage.curve');
}

/** Presses every line of the slip in turn: its sum ends in its figure and names a source. */
async function pressEveryLine(bench, least) {
  if ((await bench.line('slip.folded'))?.startsWith('More')) await bench.press('slip.folded');
  const lines = [...(await bench.places()).keys()].filter((name) =>
    /^slip\.(?!(more|folded)$)/.test(name) && !name.endsWith('.sum'));
  let pressed = 0;
  for (const line of lines) {
    if (!(await bench.places()).has(line)) continue;
    await bench.press(line);
    const sum = await bench.line(`${line}.sum`);
    assert.ok(sum, `${line} opens no sum`);
    const parts = sum.split(' / ');
    assert.ok(parts.length >= 3, `rule, numbers and source: ${sum}`);
    assert.equal(lastNumber(parts.at(-2)), lastNumber(await bench.line(line)), line);
    pressed += 1;
    await bench.press(line);
  }
  assert.ok(pressed >= least, `${pressed} lines pressed of ${lines}`);
}

await checks.withBench({}, async (bench) => {
  await curving(bench, 'harbour-ledger');
  const opened = await bench.job();
  await checks.check('a section says its curve and no creep, a panel creep and its fly side',
    async () => {
      assert.equal(await bench.line('bay'), 'Bay B1, holds section 1');
      assert.equal(await bench.line('headline'),
        '951 along the curve, 46 more than the straight distance');
      assert.ok(!(await bench.places()).has('slip.creep'));
      await bench.press('bay.next');
      assert.equal(await bench.line('bay'), 'Bay B2, holds panel P1');
      assert.equal(await bench.line('headline'), '863 along the curve, 43 more than the ' +
        'straight distance; the cloth creeps 1.65 out at the fly side');
      assert.equal(await bench.line('curve.fly'), 'FLY SIDE - DO NOT SEW');
    });
  await checks.check('hollow panels creep 1.65, 1.67, 1.71, 1.67 and 1.65 out', async () => {
    const creeps = [];
    for (let bay = 2; bay <= 10; bay += 2) {
      creeps.push(lastNumber(await bench.line('slip.creep')));
      assert.match(await bench.line('slip.creep'), /moves out/);
      if (bay === 10) break;
      await bench.press('bay.next');
      await bench.press('bay.next');
    }
    assert.deepEqual(creeps, ['1.65', '1.67', '1.71', '1.67', '1.65']);
    while (!(await bench.line('bay')).startsWith('Bay B2,')) await bench.press('bay.back');
  });
  await checks.check('every figure of the bay has its sum', () => pressEveryLine(bench, 11));
  await checks.check('the sheet goes flat and hung by itself, and the cloth creeps back and out',
    async () => {
      assert.match(await creep(bench), /^creep 1\.65 out, drawn ×\d+ the picture/);
      await bench.press('curve.flat');
      await until(async () => /^creep 0,/.test(await creep(bench)), 'the sheet to lie flat');
      await bench.press('curve.hung');
      await until(async () => /^creep 1\.65 out/.test(await creep(bench)), 'the sheet to be hung');
    });
  await checks.check('the slider is pulled by its knob and moved by keys', async () => {
    const track = await bench.place('curve.slider');
    await bench.page.mouse.click(track.x, track.y);
    await bench.rest();
    assert.match(await bench.line('curve.slider'), /, (49|50|51) %$/);
    assert.match(await creep(bench), /^creep 0\.8\d out/);
    await bench.key('ArrowUp');
    assert.match(await bench.line('curve.slider'), /, (54|55|56) %$/);
    await bench.key('ArrowDown');
    assert.match(await bench.line('curve.slider'), /, (49|50|51) %$/);
    assert.equal(await bench.job(), opened, 'bending is no action');
  });
  await checks.check('a rise is typed where it lies, and undone to the same bytes', async () => {
    await bench.typeInto('box.rise', '130');
    assert.equal(await bench.line('last_action'), 'Rise of bay B2 116 → 130');
    assert.match(await bench.line('slip.creep'), /1\.65 → /);
    await bench.key('Control+z');
    assert.equal(await bench.job(), opened);
    await bench.typeInto('box.chord', '-5');
    assert.equal(await bench.job(), opened);
    await bench.key('Escape');
    assert.equal(await bench.line('box.chord'), 'chord 820');
  });
  await checks.check('turned bulging the cloth moves in', async () => {
    await bench.press('bay.bulging');
    assert.match(await bench.line('slip.creep'), /moves in 1\.65/);
    await bench.key('Control+z');
    assert.equal(await bench.job(), opened);
  });
  await checks.check('all bays stand in their ranks, and one pressed is looked at', async () => {
    await bench.press('bay.all');
    const order = async () => [...(await bench.places()).keys()]
      .filter((name) => /^bays\.B\d+$/.test(name));
    assert.equal((await order())[0], 'bays.B2');
    await bench.press('bays.by_force');
    assert.match(await bench.line((await order())[0]), /holds P/);
    await bench.press('bays.B6');
    assert.equal(await bench.line('bay'), 'Bay B6, holds panel P3');
  });
  await checks.check('a bay is taken away and comes back', async () => {
    await bench.press('bay.all');
    await bench.press('bay.away');
    assert.equal(await bench.line('last_action'), 'Bay B6 taken away');
    await bench.key('Control+z');
    assert.equal(await bench.job(), opened);
    await bench.press('bays.close');
  });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({context: {reducedMotion: 'reduce'}}, async (bench) => {
  await bench.rest();
  await bench.press('door.sleeve');
  await bench.press('stage.curve');
  const begun = await bench.job();
  await checks.check('a job without bays says so, and one is added with its figures', async () => {
    assert.equal(await bench.line('headline'), 'No bay is entered');
    await bench.press('bay.add');
    assert.equal(await bench.line('last_action'), 'Bay B1 added');
    assert.equal(await bench.line('box.chord'), 'chord 110');
    await bench.typeInto('box.chord', '800');
    await bench.typeInto('box.rise', '120');
    // source: checks of the trade: 800/120: radius 726.7, turn 66.80, along 847.2
    assert.match(await bench.line('slip.radius'), /726\.7$/);
    assert.match(await bench.line('slip.turn'), /66\.80°$/);
    assert.match(await bench.line('slip.along'), /847\.2$/);
    for (let i = 0; i < 3; i += 1) await bench.key('Control+z');
    assert.equal(await bench.job(), begun);
  });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({context: {viewport: {width: 1024, height: 768}, hasTouch: true}},
  async (bench) => {
    await curving(bench, 'marsh-lights');
    await checks.check('on a tablet the free edge creeps 1.64 out', async () => {
      for (let i = 0; i < 9 && !(await bench.places()).has('figure.edge'); i += 1) {
        await bench.press('bay.next');
      }
      assert.match(await creep(bench), /^creep 1\.64 out/);
    });
    assert.deepEqual(bench.mistakes, []);
  });

checks.end();
