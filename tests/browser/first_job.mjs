// The first job, as a new user does it: start with a sleeve, read its figures, move the ends, take it
// back, print page 0 and the guide, save, load the page anew and open the file again. Everything by
// the real pointer and real keys. A picture of each step goes to build/first-job/.
import {execFileSync} from 'node:child_process';
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {openBench} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const OUT = path.join(ROOT, 'build/first-job');
const AT_START = '37 points in each staple row, 49.00 apart';
const AT_25 = '36 points in each staple row, 50.00 apart';

let passed = 0;
let failed = 0;
mkdirSync(OUT, {recursive: true});
const bench = await openBench();
let step = 0;

async function picture(name) {
  step += 1;
  await bench.page.mouse.move(640, 734);
  await bench.rest();
  const file = `${String(step).padStart(2, '0')}-${name}.png`;
  await bench.page.screenshot({path: path.join(OUT, file)});
}

/** One line a check; `seen` is told when it failed. */
function check(what, isSo, seen) {
  if (isSo) passed += 1;
  else failed += 1;
  console.log(isSo ? `ok      ${what}` : `FAILED  ${what}\n        seen: ${seen ?? isSo}`);
}

const headline = () => bench.line('headline');

/** Takes a named place and moves it by `dx` CSS pixels, in steps as a hand does. */
async function drag(name, dx) {
  const {x, y} = await bench.place(name);
  await bench.page.mouse.move(x, y);
  await bench.page.mouse.down();
  for (let part = 1; part <= 6; part += 1) await bench.page.mouse.move(x + dx * part / 6, y);
  await bench.rest();
}

/** Chooses a file in the chooser that a named place opens. */
async function choose(name, file) {
  const coming = bench.page.waitForEvent('filechooser', {timeout: 20000});
  await bench.press(name);
  await (await coming).setFiles(file);
  await bench.page.waitForTimeout(200);
  await bench.rest();
}

/** Width and height in millimetres of every filled rectangle on a page, as mutool reads them. */
function rectangles(file, page = 1) {
  const trace = execFileSync('mutool', ['trace', file, String(page)], {encoding: 'utf8'});
  const found = [];
  for (const [, transform, inside] of
    trace.matchAll(/<fill_path[^>]*transform="([^"]*)">([\s\S]*?)<\/fill_path>/g)) {
    const [a, , , d] = transform.split(' ').map(Number);
    const xs = [...inside.matchAll(/x="([^"]*)"/g)].map((one) => Number(one[1]));
    const ys = [...inside.matchAll(/y="([^"]*)"/g)].map((one) => Number(one[1]));
    const mm = 25.4 / 72;
    found.push([(Math.max(...xs) - Math.min(...xs)) * Math.abs(a) * mm,
      (Math.max(...ys) - Math.min(...ys)) * Math.abs(d) * mm]);
  }
  return found;
}

const pagesOf = (file) =>
  Number(execFileSync('qpdf', ['--show-npages', file], {encoding: 'utf8'}).trim());

try {
  // Three doors, and where the file is kept.
  await bench.rest();
  const doors = ['door.small_job', 'door.sleeve', 'door.open'];
  const places = await bench.places();
  check('three doors stand on the start page', doors.every((door) => places.has(door)));
  check('it says where the job is kept',
    (await bench.line('start.promise'))?.includes('a file on this computer'));
  await picture('start');

  // Start with a sleeve.
  await bench.press('door.sleeve');
  check('a sleeve is drawn and read', await headline() === AT_START, await headline());
  check('and says why not 50',
    await bench.line('headline.because') === 'because 50 does not divide 1764, first point to last',
    await bench.line('headline.because'));
  const first = await bench.job();
  await picture('sleeve');

  // `5 cm` typed over the 50: nothing moves.
  await bench.typeInto('box.spacing', '5 cm');
  check('5 cm typed over 50 changes nothing', await bench.job() === first);

  // Exactly 50 says what is left over.
  await bench.press('rule.exact');
  check('exactly 50 says what is left over',
    await bench.line('headline.because') === '14 left over at the top', await headline());
  await picture('exactly');
  await bench.press('rule.even');
  check('back on even', await headline() === AT_START, await headline());

  // Both ends from 18 to 25 with the rule stop.
  const stop = await bench.place('stop.bottom');
  await drag('stop.bottom', 4);
  for (let pixels = 4; pixels < 40 && await headline() !== AT_25; pixels += 0.5) {
    await bench.page.mouse.move(stop.x + pixels, stop.y);
    await bench.rest();
  }
  check('dragging the rule stop brings 36 at 50.00 while it moves', await headline() === AT_25,
    await headline());
  check('the slip shows before and after while it moves',
    await bench.line('slip.points') === 'Points in each row 37 → 36', await bench.line('slip.points'));
  await bench.page.screenshot({path: path.join(OUT, 'dragging.png')});
  await bench.page.mouse.up();
  await bench.rest();
  check('let go, it stays', await headline() === AT_25, await headline());
  const dragged = JSON.parse(await bench.job()).sections[0].side_rows;
  check('one figure moved both ends of both rows',
    [...dragged.staple.kept_clear_mm, ...dragged.stitch.kept_clear_mm].every((one) => one === 25),
    JSON.stringify(dragged));
  await picture('dragged');

  // Ctrl+Z.
  await bench.key('Control+z');
  const undone = await bench.job();
  check('Ctrl+Z gives the job as before, byte for byte', undone === first);
  check('and its figures', await headline() === AT_START, await headline());
  await picture('undone');

  // Esc puts back what is being dragged.
  await drag('stop.top', -30);
  await bench.key('Escape');
  await bench.page.mouse.up();
  await bench.rest();
  check('Esc puts the dragged end back', await bench.job() === undone);

  // The wheel never changes a number.
  await bench.page.mouse.move(stop.x, stop.y);
  await bench.page.mouse.wheel(0, 300);
  await bench.rest();
  check('the wheel changes nothing', await bench.job() === undone);

  // The same, typed; refused text stays with its sentence.
  await bench.press('box.kept_clear');
  await bench.write('25 apples');
  await bench.key('Enter');
  check('a wrong entry changes nothing', await bench.job() === undone);
  await picture('refused');
  await bench.key('Escape');
  await bench.typeInto('box.kept_clear', '25');
  check('25 typed gives 36 at 50.00', await headline() === AT_25, await headline());
  await picture('typed');
  await bench.key('Control+z');
  check('and Ctrl+Z takes it back', await bench.job() === undone);
  await bench.key('Control+y');
  check('and Ctrl+Y does it again', await headline() === AT_25, await headline());

  // Show the sum.
  await bench.press('slip.points');
  await picture('sum');
  await bench.press('slip.points');

  // Print page 0 and the guide.
  await bench.press('stage.print');
  await picture('print');
  const pageZero = await bench.downloaded('print.test_page', OUT);
  const bars = rectangles(pageZero);
  const along = bars.find(([wide, high]) => wide < 20 && high > 150);
  const across = bars.find(([wide, high]) => high < 20 && wide > 150);
  check('page 0 measures 200.00 along', along?.[1].toFixed(2) === '200.00', along?.[1]);
  check('page 0 measures 180.00 across', across?.[0].toFixed(2) === '180.00', across?.[0]);
  await bench.press('guides.none');
  await bench.press('tick.full_face.1');
  const guide = await bench.downloaded('print.go', OUT);
  check('the full-face guide has 7 pages', pagesOf(guide) === 7, pagesOf(guide));
  console.log(`printed ${path.basename(pageZero)} and ${path.basename(guide)}`);
  await bench.typeInto('box.bar_along', '199.2');
  check('199.2 typed says what the printer does',
    (await bench.line('last_action'))?.includes('199.2'), await bench.line('last_action'));
  await picture('printed');

  // Save, load anew, open.
  await bench.press('stage.make');
  const saved = await bench.downloaded('save', OUT);
  const kept = await bench.job();
  check('the saved file is the open job', readFileSync(saved, 'utf8') === kept);
  check('the file has a sensible name', path.basename(saved) === 'first-sleeve.json',
    path.basename(saved));
  check('the bar says when it was saved',
    /in your file: \d+ [A-Z][a-z]+ \d\d:\d\d$/.test(await bench.line('kept')),
    await bench.line('kept'));
  await picture('saved');
  await bench.page.reload();
  await bench.rest();
  check('loaded again the browser brings the job back', await bench.job() === kept);
  await choose('open', saved);
  check('opened again it reads the same', await headline() === AT_25, await headline());
  check('and is the same job, byte for byte', await bench.job() === kept);
  await picture('opened');

  // A broken file.
  const broken = path.join(OUT, 'broken.json');
  writeFileSync(broken, `${kept.slice(0, kept.length / 2)}`);
  await choose('open', broken);
  const sentence = await bench.line('failed.sentence');
  check('a broken file is refused with its place',
    sentence?.includes('Line') && sentence?.includes('untouched'), sentence);
  check('and the open job is unchanged', await bench.job() === kept);
  console.log(`broken file: ${sentence}`);
  await picture('broken');
  await bench.press('failed.away');
  check('the bench is there again', await headline() === AT_25, await headline());

  check('nothing was asked of anywhere else', bench.strangers.length === 0, bench.strangers);
  check('the page made no mistake', bench.mistakes.length === 0, bench.mistakes);
  check('the policy was kept', (await bench.violations()).length === 0);
} catch (error) {
  check(`the steps came to an end: ${error.message}`, false);
  await bench.page.screenshot({path: path.join(OUT, 'stopped-here.png')}).catch(() => {});
} finally {
  await bench.close();
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
