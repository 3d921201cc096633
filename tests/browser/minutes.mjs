// The first ten minutes of somebody who has never seen the page, minute by minute, with real mouse
// and keys; a picture of each in build/minutes/.
import assert from 'node:assert/strict';
import {mkdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {Checks, until} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const OUT = path.join(ROOT, 'build/minutes');
const checks = new Checks();
mkdirSync(OUT, {recursive: true});

/** One minute: what is done and seen, and a picture of it. */
async function minute(bench, time, sentence, body) {
  await checks.check(`${time} ${sentence}`, async () => {
    await body();
    await bench.page.screenshot({path: path.join(OUT, `${time.replace(':', '-')}.png`)});
  });
}

const headline = (bench) => bench.line('headline');
const job = async (bench) => JSON.parse(await bench.job());

await checks.withBench({}, async (bench) => {
  let sleeve;
  await minute(bench, '0:00', 'the page is there within ten seconds, and says what it is',
    async () => {
      await bench.rest();
      assert.ok(await bench.pm('firstFrameMs') < 10000);
      assert.equal(await bench.notice(), '');
    });
  await minute(bench, '0:10', 'three doors, and where the file is kept', async () => {
    const places = await bench.places();
    for (const door of ['door.small_job', 'door.sleeve', 'door.open']) assert.ok(places.has(door));
    assert.match(await bench.line('start.promise'), /a file on this computer.*Nothing is sent/i);
  });
  await minute(bench, '0:20', 'a sleeve is drawn, 110 by 1800, four boxes to begin with', async () => {
    await bench.press('door.sleeve');
    const places = await bench.places();
    for (const box of ['box.length', 'box.width', 'box.in_from_edge', 'box.spacing']) {
      assert.ok(places.has(box), box);
    }
    assert.match(await headline(bench), /^37 points in each staple row, 49\.00 apart/);
    sleeve = await bench.job();
  });
  await minute(bench, '0:50', '5 cm over the 50 moves nothing; exactly 50 leaves 14 over', async () => {
    await bench.typeInto('box.spacing', '5 cm');
    assert.equal(await bench.job(), sleeve);
    assert.match(await bench.line('headline.because'), /50 does not divide 1764/);
    await bench.press('rule.exact');
    assert.match(await headline(bench), /^36 points/);
    assert.equal(await bench.line('headline.because'), '14 left over at the top');
  });
  await minute(bench, '1:40', 'the ends dragged from 18 to 25: 36 at 50.00, and back by undo',
    async () => {
      await bench.press('rule.even');
      const before = await bench.job();
      const stop = await bench.place('stop.bottom');
      await bench.page.mouse.move(stop.x, stop.y);
      await bench.page.mouse.down();
      const is25 = async () => (await job(bench)).sections[0].side_rows.staple.kept_clear_mm[0] === 25;
      for (let px = 2; px < 60 && !await is25(); px += 0.5) {
        await bench.page.mouse.move(stop.x + px, stop.y);
        await bench.rest();
      }
      await bench.page.mouse.up();
      await bench.rest();
      assert.match(await headline(bench), /^36 points in each staple row, 50\.00 apart/);
      assert.equal(await bench.line('slip.points'), 'Points in each row 37 → 36');
      await bench.key('Control+z');
      assert.equal(await bench.job(), before);
    });
  await minute(bench, '2:30', 'made a section: 14 sleeves, lap 18, 1306 wide, ±4.2, at worst ±20.5',
    async () => {
      await bench.press('make.section');
      await bench.typeInto('making.count', '14');
      await bench.press('making.keep');
      assert.match(await headline(bench), /^1306 wide, .*±4\.2.*±20\.5/);
      assert.equal((await job(bench)).sections[0].lap_mm, 18);
    });
  await minute(bench, '3:30', 'a panel: the edge that was not pointed at is the fly side', async () => {
    await bench.press('piece');
    await bench.press('piece.add_panel');
    await bench.press('edge.right');
    await bench.press('making.add');
    assert.match(await bench.words(), /fly side, do not sew/i);
    const rows = (await job(bench)).panels[0].rows_on ?? ['hinge_side', 'top', 'bottom'];
    assert.ok(!rows.includes('fly_side'));
  });
  await minute(bench, '4:30', 'needle and thread: what is left of the sheet, and to try it first',
    async () => {
      await bench.press('stage.sew');
      assert.match(await headline(bench), /^Needle size 140, tex 135, stitch \S+: \d\d % of the sheet/);
      assert.equal(await bench.line('sew.verdict'), 'try: try it, then sew a trial seam');
      assert.doesNotMatch(await bench.words(), /\bNM\b|\bNm\b/);
      const before = await bench.job();
      await bench.typeInto('box.stitch', '5');
      assert.match(await headline(bench), /stitch 5: 72 % of the sheet is left/);
      await bench.key('Control+z');
      assert.equal(await bench.job(), before);
    });
  await minute(bench, '5:30', 'the guides: a map of pages, page 0 first, its bar is typed', async () => {
    await bench.press('stage.print');
    const file = await bench.downloaded('print.test_page', OUT);
    assert.ok(readFileSync(file).subarray(0, 5).equals(Buffer.from('%PDF-')));
    await bench.typeInto('box.bar_along', '199.2');
    await bench.typeInto('box.bar_across', '180');
    assert.match(await bench.words(), /short 0\.4 %/);
    const places = [...(await bench.places()).keys()];
    assert.ok(places.some((name) => /^page\.\d+$/.test(name)), 'a map of pages');
  });
  await minute(bench, '7:30', 'the file itself can be looked at before it is saved', async () => {
    await bench.press('print.look');
    await until(async () => (await bench.places()).has('view'), 'the file to be shown');
    assert.match(await bench.line('view.sum'), /^SHA-256 [0-9a-f]{12}/);
  });
  await minute(bench, '9:00', 'the job is saved, the page loaded again: nothing is lost', async () => {
    await bench.key('Escape');
    await bench.press('stage.make');
    const file = await bench.downloaded('save', OUT);
    const now = await bench.job();
    assert.equal(readFileSync(file, 'utf8'), now);
    await until(async () => /kept in this browser/.test(await bench.line('kept')), 'it to be kept');
    await bench.page.reload();
    await bench.rest();
    await until(async () => await bench.job() === now, 'the job to come back');
    await bench.key('Control+z');
    assert.notEqual(await bench.job(), now);
    await bench.key('Control+y');
    assert.equal(await bench.job(), now);
  });
  await minute(bench, '9:30', 'what is not known yet is said', async () => {
    assert.match(await bench.words(), /trial seam/i);
    assert.deepEqual(bench.strangers, []);
    assert.deepEqual(bench.mistakes, []);
    assert.deepEqual(await bench.violations(), []);
  });
});
checks.end();
