// The Print stage, by the real pointer and real keys: the paper is chosen, page 0's bars are typed,
// guides are printed and their pages measured and read by readers that are not ours. What was
// printed and a picture of each size of window go to build/print/.
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {mkdirSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {Checks} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const OUT = path.join(ROOT, 'build/print');
const MM = 25.4 / 72;
mkdirSync(OUT, {recursive: true});

const checks = new Checks();
const check = (sentence, body) => checks.check(sentence, body);

const read = (program, ...words) => execFileSync(program, words, {encoding: 'utf8'});
const pagesOf = (file) => Number(read('pdfinfo', file).match(/^Pages:\s+(\d+)/m)[1]);

/** Every page's box, "wide x long" in millimetres with one decimal: each size once. */
function pageBoxes(file) {
  const told = read('pdfinfo', '-f', '1', '-l', String(pagesOf(file)), '-box', file);
  const boxes = [...told.matchAll(/MediaBox:\s+0\.00\s+0\.00\s+([\d.]+)\s+([\d.]+)/g)]
    .map(([, wide, long]) => `${(wide * MM).toFixed(1)} x ${(long * MM).toFixed(1)}`);
  assert.equal(boxes.length, pagesOf(file));
  return [...new Set(boxes)];
}

/** Width and height in millimetres of every filled rectangle on the first page. */
function rectangles(file) {
  const trace = read('mutool', 'trace', file, '1');
  const found = [];
  for (const [, transform, inside] of
    trace.matchAll(/<fill_path[^>]*transform="([^"]*)">([\s\S]*?)<\/fill_path>/g)) {
    const [a, , , d] = transform.split(' ').map(Number);
    const xs = [...inside.matchAll(/x="([^"]*)"/g)].map((one) => Number(one[1]));
    const ys = [...inside.matchAll(/y="([^"]*)"/g)].map((one) => Number(one[1]));
    found.push([(Math.max(...xs) - Math.min(...xs)) * Math.abs(a) * MM,
      (Math.max(...ys) - Math.min(...ys)) * Math.abs(d) * MM]);
  }
  return found;
}

/** The long sides of page 0's two bars, millimetres: across, along. */
function barsOf(file) {
  const bars = rectangles(file).filter((sides) => Math.max(...sides) > 50);
  const across = bars.filter(([wide, high]) => wide > high).map(([wide]) => wide.toFixed(2));
  const along = bars.filter(([wide, high]) => high > wide).map(([, high]) => high.toFixed(2));
  return [...across, ...along];
}

/** The words of a place, as they are read aloud. */
const says = (bench, name) => bench.line(name);

/** What stands in the open box. */
async function boxWords(bench) {
  await bench.key('Control+a');
  await bench.key('Control+c');
  return bench.page.evaluate(() => navigator.clipboard.readText());
}

const clipboard = {context: {permissions: ['clipboard-read', 'clipboard-write']}};

await checks.withBench(clipboard, async (bench) => {
  await bench.press('door.sleeve');
  const job = await bench.job();
  await bench.press('stage.print');
  await check('it begins with A4: page 0, seven pages of the sleeve, its tick list', async () => {
    const [, list] = (await says(bench, 'print.tick_list')).match(/tick list: (\d+) pages?$/i);
    assert.equal(await says(bench, 'sheets'), `${1 + 7 + Number(list)} sheets of A4`);
    assert.match(await says(bench, 'print.full_face'), /full-face.*: 7 pages$/i);
    assert.equal(await says(bench, 'page_zero'), 'Page 0, 180 across, 200 along, on A4');
  });
  await check('199.2 of 200 is short 0.4 %, 180 as it stands is true: the printer is proved',
    async () => {
      await bench.typeInto('box.bar_along', '199.2');
      assert.equal(await says(bench, 'said.along'), 'short 0.4 %');
      await bench.press('box.bar_across');
      await bench.key('Enter');
      assert.equal(await says(bench, 'said.across'), 'true');
      assert.match(await says(bench, 'printer'), /^Your printer is short 0\.4 %: 9\.6 on a row of 2400/);
    });
  await check('Letter: another count of pages, the bars are forgotten and the bar says so',
    async () => {
      await bench.press('paper.letter');
      assert.match(await says(bench, 'sheets'), / sheets of Letter$/);
      assert.match(await says(bench, 'print.full_face'), /full-face.*: 8 pages$/i);
      assert.equal(await says(bench, 'said.along'), 'not measured');
      assert.equal(await says(bench, 'said.across'), 'not measured');
      assert.match(await says(bench, 'printer'), /Measure both bars/);
      assert.equal(await says(bench, 'last_action'),
        'Paper: Letter. Prove the printer again: the bars typed for A4 are forgotten');
    });
  await check('leaving a bar\'s box without typing says nothing of the bar', async () => {
    await bench.press('box.bar_across');
    await bench.press('box.bar_along');
    await bench.key('Escape');
    assert.equal(await says(bench, 'said.across'), 'not measured');
  });
  await check('A3 by keys alone: its bars are 200 both ways', async () => {
    await bench.page.evaluate(() => document.querySelector('[data-place="paper.a3"]').focus());
    await bench.key('Enter');
    assert.equal(await says(bench, 'page_zero'), 'Page 0, 200 across, 200 along, on A3');
    const page0 = await bench.downloaded('print.test_page', OUT);
    assert.equal(path.basename(page0), 'first-sleeve_test-page_A3.pdf');
    assert.deepEqual(barsOf(page0), ['200.00', '200.00']);
    assert.deepEqual(pageBoxes(page0), ['297.0 x 420.0']);
  });
  await check('194 of 200 is refused, and so is every guide until it is measured again',
    async () => {
      await bench.typeInto('box.bar_across', '194');
      assert.equal(await says(bench, 'said.across'), 'over 2 % out');
      assert.match(await says(bench, 'printer'), /Was fit to page on\?/);
      await bench.press('print.full_face');
      assert.match(await says(bench, 'print.refused'), /found 194 of 200; needed 196 to 204/);
      await bench.typeInto('box.bar_across', '199.2');
      assert.equal(await says(bench, 'print.refused'), null);
    });
  await check('another size: 60cm wide, 900 long, and everything follows', async () => {
    assert.equal((await bench.places()).has('box.paper_width'), false);
    await bench.press('paper.other');
    assert.equal(await says(bench, 'box.paper_width'), 'paper, wide 297');
    await bench.typeInto('box.paper_width', '60cm');
    await bench.typeInto('box.paper_length', '900');
    assert.match(await says(bench, 'sheets'), / sheets of 600 × 900$/);
    assert.match(await says(bench, 'print.full_face'), /full-face.*: 3 pages$/i);
    assert.equal(await says(bench, 'page_zero'), 'Page 0, 200 across, 200 along, on 600 × 900');
  });
  await check('a side in inches is taken as inches', async () => {
    await bench.typeInto('box.paper_width', '23.4in');
    assert.equal(await says(bench, 'box.paper_width'), 'paper, wide 594.4');
    assert.match(await says(bench, 'sheets'), / sheets of 594\.4 × 900$/);
  });
  await check('a size that cannot carry a guide is refused with its sentence, the text stays',
    async () => {
      const refused = 'This paper cannot carry the guide; found 50x900; needed at least 100x140; ' +
        'take larger paper.';
      await bench.typeInto('box.paper_width', '5cm');
      assert.equal(await says(bench, 'paper.refused'), refused);
      await bench.page.screenshot({path: path.join(OUT, 'refused.png')});
      assert.equal(await boxWords(bench), '5cm');
      await bench.key('Enter');
      assert.equal(await says(bench, 'paper.refused'), refused);
      assert.match(await says(bench, 'sheets'), / sheets of 594\.4 × 900$/);
      await bench.key('Escape');
      assert.equal(await says(bench, 'paper.refused'), null);
      await bench.typeInto('box.paper_length', '2 sheets');
      assert.match(await says(bench, 'paper.refused'), /^This is not a length; found "?2 sheets/);
      assert.equal(await boxWords(bench), '2 sheets');
      await bench.key('Escape');
      assert.equal(await says(bench, 'box.paper_length'), 'paper, long 900');
    });
  await check('the size comes back after A4, and the job knows nothing of paper', async () => {
    await bench.press('paper.a4');
    assert.equal((await bench.places()).has('box.paper_width'), false);
    await bench.press('paper.other');
    assert.equal(await says(bench, 'box.paper_length'), 'paper, long 900');
    assert.equal(await bench.job(), job);
  });
});

await checks.withBench({}, async (bench) => {
  await bench.press('door.small_job');
  await bench.press('stage.print');
  await check('a full-face guide on A3 has pages of A3, the two in the middle left out', async () => {
    await bench.press('paper.a3');
    assert.match(await says(bench, 'print.full_face.P1'), /: 10 pages$/);
    const file = await bench.downloaded('print.full_face.P1', OUT);
    assert.equal(path.basename(file), 'marsh-lights_panel-1_full-face_A3_front.pdf');
    assert.equal(pagesOf(file), 10);
    assert.deepEqual(pageBoxes(file), ['297.0 x 420.0']);
  });
  await check('a full-face guide on 600 × 900 has pages of that size', async () => {
    await bench.press('paper.other');
    await bench.typeInto('box.paper_width', '60cm');
    await bench.typeInto('box.paper_length', '900');
    const file = await bench.downloaded('print.full_face', OUT);
    assert.equal(path.basename(file), 'marsh-lights_section-1_full-face_600x900_front.pdf');
    assert.equal(pagesOf(file), 4);
    assert.deepEqual(pageBoxes(file), ['600.0 x 900.0']);
  });
  await check('a tick list on Letter has the distances from the datum', async () => {
    await bench.press('paper.letter');
    const [, pages] = (await says(bench, 'print.tick_list.P1')).match(/: (\d+) pages?$/);
    const file = await bench.downloaded('print.tick_list.P1', OUT);
    assert.equal(path.basename(file), 'marsh-lights_panel-1_tick-list_Letter_front.pdf');
    assert.equal(pagesOf(file), Number(pages));
    assert.deepEqual(pageBoxes(file), ['215.9 x 279.4']);
    // Thirty points from 16 to 1404 are 47.86 apart; the tenth stands at 446.8, on paper 447.0.
    assert.match(read('pdftotext', '-layout', file, '-'), /(^|\D)10\s+447\.0(\D|$)/m);
    await bench.press('paper.other');
  });
  await check('Tab walks from the paper to page 0, its bars, then the guides', async () => {
    const places = [...(await bench.places()).keys()];
    const order = ['paper.a4', 'paper.a3', 'paper.letter', 'paper.tabloid', 'paper.other',
      'box.paper_width', 'box.paper_length', 'print.test_page', 'box.bar_across', 'box.bar_along',
      'print.full_face', 'print.tick_list', 'print.full_face.P1', 'print.tick_list.P1', 'undo'];
    assert.deepEqual(places.filter((name) => order.includes(name)), order);
  });
});

/** What can be pressed, with its name. */
async function targets(bench) {
  await bench.rest();
  const names = await bench.page.evaluate(() =>
    [...document.querySelectorAll('[data-place]')].map((button) => button.dataset.place));
  const places = await bench.places();
  return names.map((name) => ({name, ...places.get(name)}));
}

/** Every target lies in the window, is high enough and meets no other. */
function checkTargets(all, width, height, least) {
  assert.ok(all.length >= 20, `only ${all.length} targets`);
  for (const one of all) {
    assert.ok(one.left >= 0 && one.top >= 0 && one.right <= width && one.bottom <= height,
      `${one.name} lies outside`);
    assert.ok(one.bottom - one.top >= least, `${one.name} is ${one.bottom - one.top} high`);
    for (const other of all) {
      if (other === one) break;
      const apart = one.left >= other.right || other.left >= one.right ||
        one.top >= other.bottom || other.top >= one.bottom;
      assert.ok(apart, `${one.name} meets ${other.name}`);
    }
  }
}

for (const [size, least] of [['normal', 38], ['large', 48]]) {
  await checks.withBench({}, async (bench) => {
    await bench.press(`text.${size}`);
    const coming = bench.page.waitForEvent('filechooser', {timeout: 20000});
    await bench.press('door.open');
    await (await coming).setFiles(path.join(ROOT, 'demo-jobs/orchard-year.json'));
    await bench.page.waitForTimeout(300);
    await bench.press('stage.print');
    await bench.press('paper.other');
    for (const [width, height] of [[1366, 768], [1920, 1080], [1024, 768]]) {
      await check(`at ${width} × ${height} with ${size} text no two targets meet`, async () => {
        await bench.page.setViewportSize({width, height});
        await bench.page.waitForTimeout(150);
        checkTargets(await targets(bench), width, height, least);
        await bench.page.screenshot({path: path.join(OUT, `${size}-${width}.png`)});
      });
    }
    await check(`with ${size} text a long list steps on, to its end and back`, async () => {
      const canGoOn = async () =>
        (await targets(bench)).some(({name}) => name === 'guides.further');
      const has = async (name) => (await bench.places()).has(name);
      assert.ok(await has('print.full_face'));
      await bench.press('guides.further');
      assert.ok(!await has('print.full_face'));
      await bench.press('guides.back');
      assert.ok(await has('print.full_face'));
      await bench.page.setViewportSize({width: 1920, height: 1080});
      await bench.page.waitForTimeout(150);
      let steps = 0;
      for (; steps < 30 && await canGoOn(); steps += 1) await bench.press('guides.further');
      assert.ok(steps >= 5 && steps < 30, `${steps} steps`);
      assert.ok(await has('print.full_face.P24') && await has('print.tick_list.P24'));
    });
    await check('0 policy violations, 0 requests to anywhere else, no mistakes', async () => {
      assert.deepEqual(await bench.violations(), []);
      assert.deepEqual(bench.strangers, []);
      assert.deepEqual(bench.mistakes, []);
    });
  });
}

checks.end();
