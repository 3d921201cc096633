// The stage Sew: needle, thread, stitch and stack are typed where they lie and what follows goes
// along, a trial seam takes the place of the stitch as set, materials keep their sources, every
// figure has its sum, and undo brings the bytes back.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';

import {runsOn} from './measured.mjs';
import {Checks, until} from './page.mjs';

const checks = new Checks();
const demo = (name) => ({name: `${name}.json`,
  text: readFileSync(new URL(`../../demo-jobs/${name}.json`, import.meta.url), 'utf8')});
const lastNumber = (words) => (words.match(/\d[\d,]*(\.\d+)?/g) ?? []).at(-1);

/** A demo job on the bench, at the stage. */
async function sewing(bench, name) {
  await bench.rest();
  await bench.drop([demo(name)]);
  await until(async () => (await bench.places()).has('stage.sew'), 'the job to open');
  await bench.press('stage.sew');
}

/** Presses every line of the slip in turn: its sum ends in its figure and names a source. */
async function pressEveryLine(bench, least) {
  if ((await bench.line('slip.folded'))?.startsWith('More')) await bench.press('slip.folded');
  const lines = [...(await bench.places()).keys()].filter((name) =>
    /^slip\.(?!(more|folded)$)/.test(name) && !name.endsWith('.sum'));
  let pressed = 0;
  for (const line of lines) {
    // One that gives way to the sum of another comes back with it.
    if (!(await bench.places()).has(line)) continue;
    await bench.press(line);
    const sum = await bench.line(`${line}.sum`);
    assert.ok(sum, `${line} opens no sum`);
    const parts = sum.split(' / ');
    assert.ok(parts.length >= 3, `rule, numbers and source: ${sum}`);
    if (/\d/.test(await bench.line(line))) {
      assert.equal(lastNumber(parts.at(-2)), lastNumber(await bench.line(line)), line);
    }
    pressed += 1;
    await bench.press(line);
  }
  assert.ok(pressed >= least, `${pressed} lines pressed of ${lines}`);
}

/** Undoes until the job is as it was, in no more than so many steps. */
async function undoneTo(bench, before, steps) {
  for (let i = 0; i < steps; i += 1) await bench.key('Control+z');
  assert.equal(await bench.job(), before);
}

await checks.withBench({}, async (bench) => {
  await sewing(bench, 'marsh-lights');
  const opened = await bench.job();
  await checks.check('the sentence says needle, thread, stitch and what is left, and to try it',
    async () => {
      assert.equal(await bench.line('headline'),
        'Needle size 140, tex 135, stitch 5.5: 75 % of the sheet is left');
      assert.equal(await bench.line('sew.verdict'), 'try: try it, then sew a trial seam');
      assert.equal(await bench.line('sew.plies'), 'as typed 1.1');
      assert.doesNotMatch(await bench.words(), /\bNM\b|\bNm\b/);
    });
  await checks.check('every figure of the side rows, the joining rows and the panel has its sum',
    async () => {
      await pressEveryLine(bench, 8);
      await bench.press('sew.kind.joining');
      await pressEveryLine(bench, 8);
      for (let i = 0; i < 12 && !(await bench.places()).has('sew.kind.hinge'); i += 1) {
        await bench.press('place.next');
      }
      await pressEveryLine(bench, 8);
      await bench.press('figure.sheet_left');
      assert.match(await bench.line('slip.sheet_left.sum'), /\(5\.5 − 1\.4 assumed\) ÷ 5\.5 = 74\.5 %/);
      await bench.press('slip.sheet_left');
    });
  await checks.check('a stitch of this kind of row is typed, and undone to the same bytes',
    async () => {
      await bench.typeInto('box.stitch', '7');
      assert.equal(await bench.line('last_action'), 'Stitch of the hinge side row of panel P1 5.5 → 7');
      assert.match(await bench.line('slip.sheet_left'), /74\.5 % → 80 %/);
      assert.match(await bench.line('slip.row_holes'), / → /);
      await undoneTo(bench, opened, 1);
    });
  await checks.check('tex 135 in needle 90 fills the eye: don\'t', async () => {
    await bench.typeInto('box.needle_size', '90');
    assert.equal(await bench.line('last_action'), 'Needle size 140 → 90');
    assert.match(await bench.line('sew.verdict'), /^don't: the thread fills the eye/);
    assert.match(await bench.line('slip.eye'), /32\.6 % → 50\.7 %/);
    await bench.typeInto('box.thread_tex', '45');
    assert.match(await bench.line('sew.verdict'), /^try: /);
    await undoneTo(bench, opened, 2);
  });
  await checks.check('135x17 is a needle system, not a size, and what was typed stays', async () => {
    await bench.typeInto('box.needle_size', '135x17');
    assert.equal(await bench.job(), opened);
    await bench.key('Escape');
    assert.equal(await bench.job(), opened);
    assert.equal(await bench.line('box.needle_size'), 'needle size 140');
  });
  await checks.check('the wheel changes no figure', async () => {
    const {x, y} = await bench.place('box.needle_size');
    await bench.page.mouse.move(x, y);
    await bench.page.mouse.wheel(0, 240);
    await bench.rest();
    assert.equal(await bench.job(), opened);
  });
  await checks.check('a material is typed, gets a standing and a source, each one step', async () => {
    await bench.press('sew.materials');
    await bench.press('material.thread');
    await bench.typeInto('weighing', '1.35');
    assert.equal(await bench.line('last_action'), 'Thread, weighed not known → 135');
    assert.match(await bench.line('standing.thread.weighed_tex'),
      /measured here, 10 m weigh 1\.35 g/);
    await bench.typeInto('value.thread.density_g_cm3', '1,14');
    await bench.press('standing.thread.density_g_cm3');
    await bench.press('standing.to.2');
    assert.match(await bench.line('standing.thread.density_g_cm3'), /: supplier/);
    await bench.typeInto('source', 'lot 7');
    assert.match(await bench.line('standing.thread.density_g_cm3'), /supplier, lot 7/);
    assert.deepEqual(JSON.parse(await bench.job()).materials.thread, {
      weighed_tex: 135, density_g_cm3: 1.14, sources: {
        weighed_tex: {standing: 'measured_here', words: '10 m weigh 1.35 g'},
        density_g_cm3: {standing: 'supplier', words: 'lot 7'}}});
    await undoneTo(bench, opened, 4);
  });
  await checks.check('a value that cannot be is refused and stays as it was typed', async () => {
    await bench.typeInto('value.thread.packing', '1.5');
    assert.equal(await bench.job(), opened);
    await bench.key('Escape');
    await bench.key('Escape');
    assert.ok(!(await bench.places()).has('sew.close'), 'Esc puts the slip away');
  });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({}, async (bench) => {
  await sewing(bench, 'marsh-lights');
  const opened = await bench.job();
  await checks.check('at the machine: a joining row that the arm cannot reach is a stop', async () => {
    await bench.press('sew.kind.joining');
    await bench.press('sew.view.machine');
    assert.match(await bench.line('sew.arm'), /not known: type how far the arm stands/);
    assert.match(await bench.line('sew.order'), /one by one from the left; widest side 141, at 1-0\d\+0\d$/);
    await bench.typeInto('arm.throat', '50');
    assert.equal(await bench.line('last_action'), 'Machine, right of the needle not known → 50');
    assert.equal(JSON.parse(await bench.job()).materials.machine.throat_mm, 50);
    // source: a sleeve of 150 less half a lap of 18 is 141, and 141 − 50 = 91
    assert.match(await bench.line('sew.arm'), /does not fit: 91(\.0)? too wide/);
    const found = await Promise.all([0, 1, 2, 3].map((i) => bench.line(`finding-${i}`)));
    assert.ok(found.some((one) => /^STOP .*: 91(\.0)? too wide: .*cannot be reached/.test(one)), found);
    await bench.press('figure.arm_side');
    assert.match(await bench.line('slip.arm_side.sum'), /the smaller of .* and .*: 141/);
    await bench.press('figure.arm_side');
  });
  await checks.check('an arm long enough takes it flat, a shorter one rolled where that is high enough',
    async () => {
      await bench.typeInto('arm.throat', '141');
      assert.match(await bench.line('sew.arm'), /flat: the arm takes 141$/);
      assert.doesNotMatch(await bench.line('finding-0') ?? '', /cannot be reached/);
      await bench.typeInto('arm.throat', '140.9');
      assert.match(await bench.line('sew.arm'), /not known: rolled it is [\d.]+ across: type/);
      await bench.typeInto('arm.height', '140');
      assert.match(await bench.line('sew.arm'), /rolled: the arm takes 140\.9; rolled it is/);
      await undoneTo(bench, opened, 4);
    });
  await checks.check('a side row lies with its own edge right of the needle', async () => {
    await bench.press('sew.kind.side');
    assert.match(await bench.line('figure.arm_side'), /^16(\.0)? right of the needle/);
    assert.ok(!(await bench.places()).has('sew.order'));
    await bench.press('sew.view.stack');
  });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({}, async (bench) => {
  await sewing(bench, 'harbour-ledger');
  const opened = await bench.job();
  const holes = async () => (await bench.line('slip.row_holes'));
  await checks.check('one stitch of 6 and the needle stand at twenty times', async () => {
    assert.ok((await runsOn(bench)).some(({words}) => words === '×20, cut along the row'));
  });
  await checks.check('thread, rows a bobbin and fills of Harbour Ledger', async () => {
    assert.match(await bench.line('slip.thread_each'), /836\.77 m/);
    assert.match(await bench.line('slip.rows_per_bobbin'), / 7$/);
    await bench.press('slip.folded');
    assert.match(await bench.line('slip.fills.0'), / 27$/);
    assert.match(await bench.line('slip.fills.1'), / 13$/);
  });
  await checks.check('a chosen trial of ten stitches 58 changes the holes of its rows everywhere',
    async () => {
      assert.match(await holes(), / 377$/);
      await bench.press('sew.trials');
      await bench.press('trial.add');
      await bench.press('trial.of.3');
      await bench.typeInto('trial.ten_stitches', '58');
      await bench.typeInto('trial.marks', '498.5');
      assert.match(await bench.line('trial.real_stitch'), /58 ÷ 10 = 5\.80/);
      // source: 0.30 % of a row of 2256
      assert.match(await bench.line('trial.take_up'), /^6\.8 shorter/);
      assert.match(await holes(), /377$/);
      const before = await bench.line('slip.job_holes');
      await bench.press('trial.choose');
      // source: ceil(2256 ÷ 5.8) + 1
      assert.match(await holes(), /377 → 390$/);
      assert.notEqual(await bench.line('slip.job_holes'), before);
      assert.match(await bench.line('headline'), /stitch 5\.8:/);
      assert.match(await bench.line('slip.thread_each'), /836\.77 → /);
      await bench.press('sew.close');
    });
  await checks.check('signed, it fits; with another stitch it is not what was approved', async () => {
    await bench.press('sew.trials');
    await bench.typeInto('trial.signed_by', 'workshop, 26 Nov');
    await bench.press('sew.close');
    assert.match(await bench.line('sew.verdict'), /^fits: as on the signed trial seam/);
    await bench.typeInto('box.stitch', '5');
    assert.match(await bench.line('sew.verdict'), /^try: not as approved: stitch 5 instead of 6/);
  });
  await checks.check('all undone, the job is what was opened, byte for byte', () =>
    undoneTo(bench, opened, 7));
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({context: {viewport: {width: 1024, height: 768}, hasTouch: true}},
  async (bench) => {
    await sewing(bench, 'marsh-lights');
    await checks.check('on a tablet the boxes are typed and the tray says before and after',
      async () => {
        await bench.typeInto('box.thread_tex', '90');
        assert.match(await bench.line('tray.slip.eye'), /32\.6 % → 26\.6 %/);
        await bench.key('Control+z');
      });
    assert.deepEqual(bench.mistakes, []);
  });

checks.end();
