// The Print stage, by the real pointer and real keys: the paper is chosen, page 0's bars are typed,
// guides are printed and their pages measured and read by readers that are not ours. What was
// printed and a picture of each size of window go to build/print/.
import assert from 'node:assert/strict';
import {execFileSync} from 'node:child_process';
import {createHash} from 'node:crypto';
import {mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {Checks, pause, until} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const OUT = path.join(ROOT, 'build/print');
const MM = 25.4 / 72;
rmSync(OUT, {recursive: true, force: true});
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
const sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex');
const linesOf = async (bench) =>
  [...(await bench.places()).keys()].filter((name) => name.startsWith('guide.'));

/** Steps through the list, back to its beginning first, until the line of this guide is shown. */
async function showLine(bench, key) {
  for (const way of ['guides.back', 'guides.further']) {
    for (let steps = 0; steps < 60; steps += 1) {
      if ((await bench.places()).has(`guide.${key}`)) return;
      if (!(await targets(bench)).some(({name}) => name === way)) break;
      await bench.press(way);
    }
  }
}

/** Ticks these guides and no other. */
async function only(bench, ...keys) {
  await bench.press('guides.none');
  for (const key of keys) {
    await showLine(bench, key);
    await bench.press(`tick.${key}`);
  }
}

/** Says what the line of a guide says, wherever in the list it stands. */
async function lineOf(bench, key) {
  await showLine(bench, key);
  return says(bench, `guide.${key}`);
}

/** Prints one guide and gives its file. */
async function printed(bench, key) {
  await only(bench, key);
  return bench.downloaded('print.go', OUT);
}

/** What the program of the command line makes of a demo job: by name, its bytes. */
function byTheProgram(job, guide, ...words) {
  const folder = mkdtempSync(path.join(OUT, 'program-'));
  execFileSync(process.execPath, ['--no-experimental-fetch',
    path.join(ROOT, 'build/web-release/pouncemark.js'), 'print',
    path.join(ROOT, `demo-jobs/${job}.json`), '--guide', guide, ...words, '--out', folder],
  {stdio: ['ignore', 'ignore', 'pipe']});
  return new Map(readdirSync(folder).map((name) => [name, readFileSync(path.join(folder, name))]));
}

/** Keeps every file the page makes a blob of, by its address. */
const keepBlobs = (page) => page.addInitScript(() => {
  globalThis.blobs = new Map();
  const make = URL.createObjectURL.bind(URL);
  URL.createObjectURL = (blob) => {
    const address = make(blob);
    globalThis.blobs.set(address, blob);
    return address;
  };
});

/** The bytes the viewer shows, by the address it was given. */
async function shownBytes(bench) {
  const shown = await bench.page.evaluate(async () => {
    const [address] = document.getElementById('viewer').src.split('#');
    return [...new Uint8Array(await globalThis.blobs.get(address).arrayBuffer())];
  });
  return Buffer.from(shown);
}

/** Notes from now on how long the page at most keeps a timer waiting. */
function watchGaps(bench) {
  return bench.page.evaluate(() => {
    const gaps = {last: performance.now(), longest: 0};
    globalThis.gaps = gaps;
    setInterval(() => {
      const now = performance.now();
      gaps.longest = Math.max(gaps.longest, now - gaps.last);
      gaps.last = now;
    }, 4);
  });
}
const longestGap = (bench) => bench.page.evaluate(() => Math.round(globalThis.gaps.longest));

const isThere = async (bench, name) => (await bench.places()).has(name);
const viewerPage = (bench) => bench.page.evaluate(() =>
  document.getElementById('viewer')?.src.match(/#page=(\d+)/)[1] ?? null);

await checks.withBench(clipboard, async (bench) => {
  await bench.press('door.sleeve');
  const job = await bench.job();
  await bench.press('stage.print');
  await check('it begins with A4: page 0 and seven pages of the sleeve are ticked', async () => {
    assert.equal(await says(bench, 'sheets'), '8 sheets of A4');
    assert.match(await lineOf(bench, 'full_face.1'), /^Full-face, section 1, .*: 7 pages$/);
    assert.match(await says(bench, 'tick.full_face.1'), /, ticked$/);
    assert.match(await says(bench, 'tick.tick_list.1'), /, not ticked$/);
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
      assert.equal(await says(bench, 'sheets'), '7 sheets of A4');
    });
  await check('Letter: another count of pages, the bars are forgotten and the bar says so',
    async () => {
      await bench.press('paper.letter');
      assert.equal(await says(bench, 'sheets'), '9 sheets of Letter');
      assert.match(await lineOf(bench, 'full_face.1'), /: 8 pages$/);
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
      await only(bench, 'full_face.1');
      await bench.press('print.go');
      await until(() => says(bench, 'print.refused'), 'the refusal');
      assert.match(await says(bench, 'print.refused'), /found 194 of 200; needed 196 to 204/);
      await bench.typeInto('box.bar_across', '199.2');
      assert.equal(await says(bench, 'print.refused'), null);
    });
  await check('another size: 60cm wide, 900 long, and everything follows', async () => {
    assert.equal(await isThere(bench, 'box.paper_width'), false);
    await bench.press('paper.other');
    assert.equal(await says(bench, 'box.paper_width'), 'paper, wide 297');
    await bench.typeInto('box.paper_width', '60cm');
    await bench.typeInto('box.paper_length', '900');
    assert.match(await says(bench, 'sheets'), / sheets of 600 × 900$/);
    assert.match(await lineOf(bench, 'full_face.1'), /: 3 pages$/);
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
    assert.equal(await isThere(bench, 'box.paper_width'), false);
    await bench.press('paper.other');
    assert.equal(await says(bench, 'box.paper_length'), 'paper, long 900');
    assert.equal(await bench.job(), job);
  });
});

await checks.withBench({before: keepBlobs}, async (bench) => {
  await bench.press('door.small_job');
  await bench.press('stage.print');
  await check('the guides to choose: page 0, each of each piece, the job\'s cards, with their pages',
    async () => {
    const all = ['test_page', 'full_face.1', 'tick_list.1', 'seam_card.1', 'full_face.P1',
      'tick_list.P1', 'seam_card.P1', 'panel_card.P1', 'trial_card', 'machine_card',
      'hanging_card'];
    for (const key of all) assert.ok(await lineOf(bench, key), key);
    await showLine(bench, 'test_page');
    assert.deepEqual(all.map((key) => `guide.${key}`).slice(0, (await linesOf(bench)).length),
      await linesOf(bench));
    assert.equal(await lineOf(bench, 'trial_card'),
      'Trial card, 3 kinds of row to try: 3 pages');
    assert.equal(await lineOf(bench, 'machine_card'), 'Machine card, to set it up: 1 page');
    assert.equal(await lineOf(bench, 'panel_card.P1'),
      'Panel card, panel P1, FRONT and FACE DOWN: 1 page');
    assert.equal(await lineOf(bench, 'seam_card.1'),
      'Seam cards, section 1, 26 cards on 13 sheets: 13 pages');
    assert.match(await lineOf(bench, 'full_face.P1'), /24 less 8 left out: 16 pages$/);
    assert.match(await lineOf(bench, 'tick_list.1'), /26 rows share 1 list/);
    assert.equal(await says(bench, 'sheets'), '41 sheets of A4');
    await bench.press('guides.all');
    assert.equal(await says(bench, 'sheets'), '64 sheets of A4');
    await bench.press('guides.none');
    assert.equal(await says(bench, 'sheets'), '0 sheets of A4');
  });
  await check('every count shows its sum', async () => {
    await bench.press('guides.all');
    for (const [place, sum] of [['count.full_face', '16 + 24 = 40'], ['count.tick_list', '2 × 1 = 2'],
      ['count.cards', '3 × 1 + 2 + 3 + 13 = 21'],
      ['count.guide', '(1 + 3) × (1 + 5) = 24']]) {
      await bench.press(place);
      assert.ok((await says(bench, 'print.sum')).includes(sum), await says(bench, 'print.sum'));
      await bench.press(place);
      assert.equal(await says(bench, 'print.sum'), null);
    }
  });
  await check('the map has each page of the grid at its place and says which are left out',
    async () => {
      await showLine(bench, 'full_face.P1');
      await bench.press('guide.full_face.P1');
      const places = await bench.places();
      const cells = [...places].filter(([name]) => /^page\.\d+$/.test(name));
      assert.equal(cells.length, 24);
      const map = places.get('map');
      const perMm = (map.right - map.left) / 690;
      let out = 0;
      for (const [name, cell] of cells) {
        const number = Number(name.slice(5));
        const [column, row] = [(number - 1) % 4, Math.floor((number - 1) / 4)];
        // source: A4 less its borders goes on by 180 across and 267 along.
        assert.ok(Math.abs(cell.left - (map.left + column * 180 * perMm)) < 0.1, name);
        assert.ok(Math.abs(cell.bottom - (map.bottom - row * 267 * perMm)) < 0.1, name);
        const isInner = column > 0 && column < 3 && row > 0 && row < 5;
        assert.equal(await says(bench, name), isInner ? 'left out' : `page ${number}`);
        out += isInner ? 1 : 0;
      }
      assert.equal(out, 8);
      assert.equal(await says(bench, 'map.sides'), 'Fly side at the right: DO NOT SEW');
    });
  await check('printed in the worker: 3 files, byte for byte those of the program', async () => {
    await only(bench, 'test_page', 'full_face.1', 'full_face.P1');
    const files = new Map();
    const take = async (download) => {
      const file = path.join(OUT, download.suggestedFilename());
      await download.saveAs(file);
      files.set(path.basename(file), readFileSync(file));
    };
    bench.page.on('download', take);
    await watchGaps(bench);
    await bench.press('print.go');
    await until(() => files.size === 3, 'three files');
    console.log(`        longest wait of the page while printing: ${await longestGap(bench)} ms`);
    bench.page.off('download', take);
    const wanted = new Map([...byTheProgram('marsh-lights', 'test-page', '--paper', 'A4'),
      ...byTheProgram('marsh-lights', 'full-face', '--paper', 'A4')]);
    assert.deepEqual([...files.keys()].sort(), [...wanted.keys()].sort());
    for (const [name, bytes] of wanted) assert.ok(bytes.equals(files.get(name)), name);
    assert.equal(await says(bench, 'last_action'),
      'Made 3 files, in your downloads. Print them at 100 %, never fit to page');
  });
  await check('the file itself: what is shown is what is saved, and the program\'s own', async () => {
    await bench.press('print.look');
    await until(() => isThere(bench, 'view'), 'the file to be shown');
    const shown = await shownBytes(bench);
    const file = await bench.downloaded('view.save', OUT);
    assert.equal(path.basename(file), 'marsh-lights_panel-1_full-face_A4_front.pdf');
    assert.ok(shown.equals(readFileSync(file)));
    assert.ok(shown.equals(byTheProgram('marsh-lights', 'full-face', '--paper', 'A4')
      .get(path.basename(file))));
    assert.ok((await says(bench, 'view.sum')).startsWith(`SHA-256 ${sha256(shown).slice(0, 12)}, `));
    assert.equal(await viewerPage(bench), '1');
    await bench.page.screenshot({path: path.join(OUT, 'file.png')});
  });
  await check('pressing a page of the map shows it, one that is left out does nothing', async () => {
    const press = async (name) => {
      const {x, y} = await bench.place(name);
      await bench.page.mouse.click(x, y);
      await bench.rest();
    };
    // Page 8 is the sixth of the sixteen that are in the file.
    await press('page.8');
    assert.equal(await viewerPage(bench), '6');
    await press('page.6');
    assert.equal(await viewerPage(bench), '6');
    const box = await bench.page.evaluate(() => {
      const {left, top, right, bottom} = document.getElementById('viewer').getBoundingClientRect();
      return [left, top, right, bottom];
    });
    const {left, top, right, bottom} = await bench.place('view');
    assert.ok([left, top, right, bottom].every((side, i) => Math.abs(side - box[i]) <= 1), `${box}`);
    await bench.press('view.close');
    assert.equal(await viewerPage(bench), null);
    assert.equal(await isThere(bench, 'view'), false);
  });
  await check('Esc puts the file away, and so does another stage', async () => {
    for (const leave of [() => bench.key('Escape'), () => bench.press('stage.make')]) {
      await bench.press('print.look');
      await until(() => isThere(bench, 'view'), 'the file to be shown');
      await leave();
      assert.equal(await viewerPage(bench), null);
    }
    await bench.press('stage.print');
  });
  await check('a full-face guide on A3 has pages of A3, the two in the middle left out', async () => {
    await bench.press('paper.a3');
    const file = await printed(bench, 'full_face.P1');
    assert.equal(path.basename(file), 'marsh-lights_panel-1_full-face_A3_front.pdf');
    assert.equal(pagesOf(file), 10);
    assert.deepEqual(pageBoxes(file), ['297.0 x 420.0']);
  });
  await check('a full-face guide on 600 × 900 has pages of that size', async () => {
    await bench.press('paper.other');
    await bench.typeInto('box.paper_width', '60cm');
    await bench.typeInto('box.paper_length', '900');
    const file = await printed(bench, 'full_face.1');
    assert.equal(path.basename(file), 'marsh-lights_section-1_full-face_600x900_front.pdf');
    assert.equal(pagesOf(file), 4);
    assert.deepEqual(pageBoxes(file), ['600.0 x 900.0']);
  });
  await check('a tick list on Letter has the distances from the datum', async () => {
    await bench.press('paper.letter');
    const file = await printed(bench, 'tick_list.P1');
    const [, pages] = (await lineOf(bench, 'tick_list.P1')).match(/: (\d+) pages?$/);
    assert.equal(path.basename(file), 'marsh-lights_panel-1_tick-list_Letter_front.pdf');
    assert.equal(pagesOf(file), Number(pages));
    assert.deepEqual(pageBoxes(file), ['215.9 x 279.4']);
    // Thirty points from 16 to 1404 are 47.86 apart; the tenth stands at 446.8, on paper 447.0.
    assert.match(read('pdftotext', '-layout', file, '-'), /(^|\D)10\s+447\.0(\D|$)/m);
    await bench.press('paper.other');
  });
  await check('seam cards on A4 lie two on a sheet turned on its side, as the program prints them',
    async () => {
      await bench.press('paper.a4');
      const file = await printed(bench, 'seam_card.1');
      assert.equal(path.basename(file), 'marsh-lights_section-1_seam-cards_A4.pdf');
      assert.equal(pagesOf(file), 13);
      assert.deepEqual(pageBoxes(file), ['297.0 x 210.0']);
      assert.ok(readFileSync(file).equals(byTheProgram('marsh-lights', 'seam-card', '--paper', 'A4')
        .get(path.basename(file))));
      assert.match(read('pdftotext', '-layout', file, '-'), /1-07 over 1-08/);
      await bench.press('paper.other');
    });
  await check('the other cards are printed in the worker, as the program prints them',
    async () => {
      await bench.press('paper.a4');
      for (const [key, guide, name, pages, words] of [
        ['panel_card.P1', 'panel-card', 'panel-1_panel-card', 1, /FACE DOWN/],
        ['trial_card', 'trial-card', 'trial-card', 3, /JOINING ROWS/],
        ['hanging_card', 'hanging-card', 'hanging-cards', 1, /NEVER LIFT/],
        ['machine_card', 'machine-card', 'machine-card', 1, /tension top/]]) {
        const file = await printed(bench, key);
        assert.equal(path.basename(file), `marsh-lights_${name}_A4.pdf`);
        assert.equal(pagesOf(file), pages);
        assert.deepEqual(pageBoxes(file), [/trial|machine/.test(key) ? '210.0 x 297.0' : '297.0 x 210.0']);
        assert.ok(readFileSync(file).equals(byTheProgram('marsh-lights', guide, '--paper', 'A4')
          .get(path.basename(file))));
        assert.match(read('pdftotext', '-layout', file, '-'), words);
      }
      await bench.press('paper.other');
    });
  await check('Tab walks from the paper to page 0, its bars, the guides, the map, the button',
    async () => {
      await showLine(bench, 'test_page');
      const places = [...(await bench.places()).keys()];
      const order = ['paper.a4', 'paper.a3', 'paper.letter', 'paper.tabloid', 'paper.other',
        'box.paper_width', 'box.paper_length', 'print.test_page', 'box.bar_across',
        'box.bar_along', 'tick.full_face.1', 'guide.full_face.1', 'tick.tick_list.1',
        'tick.seam_card.1', 'guide.seam_card.1', 'map',
        'count.full_face', 'count.cards', 'print.go', 'undo'];
      assert.deepEqual(places.filter((name) => order.includes(name)), order);
    });
  await check('0 policy violations on the page and in the worker, no mistakes', async () => {
    assert.deepEqual(await bench.violations(), []);
    assert.deepEqual(await bench.pm('workerViolations'), []);
    assert.deepEqual(bench.mistakes, []);
  });
});

await checks.withBench({}, async (bench) => {
  const coming = bench.page.waitForEvent('filechooser', {timeout: 20000});
  await bench.press('door.open');
  await (await coming).setFiles(path.join(ROOT, 'demo-jobs/harbour-ledger.json'));
  await until(async () => (await bench.job()) !== '', 'the job');
  await check('the bench fetches what index.html names and no more, Print the rest', async () => {
    await bench.rest();
    const {fetched, named} = await bench.page.evaluate(() => ({
      fetched: performance.getEntriesByType('resource').map(({name}) => new URL(name).pathname),
      named: [...document.querySelectorAll('link[href], script[src]')]
        .map((one) => new URL(one.href || one.src)).filter(({protocol}) => protocol !== 'data:')
        .map(({pathname}) => pathname),
    }));
    assert.ok(named.length >= 12);
    assert.deepEqual([...new Set(fetched)].sort(), [...new Set(named)].sort());
    const coming = bench.page.waitForResponse('**/printing.wasm');
    await bench.press('stage.print');
    assert.equal((await coming).status(), 200);
  });
  let downloads = 0;
  bench.page.on('download', () => { downloads += 1; });
  const told = new Set();
  const progress = async () => {
    const words = await says(bench, 'print.progress');
    if (words) told.add(words);
    return words;
  };
  await check('a large job begins with page 0 alone; All ticks every guide', async () => {
    assert.equal(await says(bench, 'sheets'), '1 sheet of A4');
    await bench.press('guides.all');
    assert.ok(Number((await says(bench, 'sheets')).match(/^\d+/)[0]) > 490);
  });
  await check('stopped in the middle: nothing is saved, the bar says where it stopped', async () => {
    const {x, y} = await bench.place('print.go');
    await bench.page.mouse.click(x, y);
    await until(async () => {
      const words = await progress();
      return words && !words.startsWith('sheet 0 ');
    }, 'progress');
    await bench.page.screenshot({path: path.join(OUT, 'progress.png')});
    const ms = await bench.page.evaluate(() => {
      const from = performance.now();
      globalThis.Pm.stopPrinting();
      return performance.now() - from;
    });
    await bench.press('print.stop');
    console.log(`        seen: ${[...told].join(', ')}; stopped in ${ms.toFixed(1)} ms`);
    assert.ok(ms < 100);
    assert.match(await says(bench, 'last_action'),
      /^Stopped printing at sheet \d+ of \d+\. Nothing was saved$/);
    assert.equal(await says(bench, 'print.progress'), null);
    await pause(700);
    assert.equal(downloads, 0);
  });
  await check('a program of the worker that does not come is said by its name', async () => {
    await bench.page.route('**/printing.wasm', (route) => route.fulfill({status: 404, body: 'no'}));
    await bench.page.evaluate(() => globalThis.Pm.stopPrinting());
    await only(bench, 'test_page');
    await bench.press('print.go');
    await until(() => says(bench, 'print.refused'), 'the sentence');
    assert.equal(await says(bench, 'print.refused'),
      'Printing has stopped: printing.wasm did not come. Nothing was saved.');
    await bench.page.unroute('**/printing.wasm');
  });
  await check('a worker that does not come is said, and trying again prints', async () => {
    await bench.page.route('**/worker.js', (route) => route.abort());
    await bench.page.evaluate(() => globalThis.Pm.stopPrinting());
    await only(bench, 'test_page');
    await bench.press('print.go');
    await until(() => says(bench, 'print.refused'), 'the sentence');
    assert.match(await says(bench, 'print.refused'), /^Printing has stopped.*Nothing was saved\.$/);
    await bench.page.unroute('**/worker.js');
    const file = await bench.downloaded('print.again', OUT);
    assert.equal(path.basename(file), 'harbour-ledger_test-page_A4.pdf');
    assert.equal(await says(bench, 'print.refused'), null);
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
      if (await has('part.guides')) await bench.press('part.guides');
      assert.ok(await has('guide.test_page'));
      await bench.press('guides.further');
      assert.ok(!await has('guide.test_page'));
      await bench.press('guides.back');
      assert.ok(await has('guide.test_page'));
      await bench.page.setViewportSize({width: 1920, height: 1080});
      await bench.page.waitForTimeout(150);
      let steps = 0;
      for (; steps < 60 && await canGoOn(); steps += 1) await bench.press('guides.further');
      assert.ok(steps >= 5 && steps < 60, `${steps} steps`);
      assert.ok(await has('guide.seam_card.P24'));
    });
    await check('0 policy violations, 0 requests to anywhere else, no mistakes', async () => {
      assert.deepEqual(await bench.violations(), []);
      assert.deepEqual(bench.strangers, []);
      assert.deepEqual(bench.mistakes, []);
    });
  });
}

checks.end();
