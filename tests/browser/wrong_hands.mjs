// Everything a hand can do wrong: what was typed is kept with a sentence beside it, what cannot be
// opened is refused in words, the job stays as it was byte for byte, and the page goes on.
import assert from 'node:assert/strict';

import {Checks} from './page.mjs';

const checks = new Checks();
const check = (sentence, body) => checks.check(sentence, body);

/** Does `act`; the job must be untouched, and the bench must still answer. */
async function untouched(bench, act) {
  const before = await bench.job();
  await act();
  assert.equal(await bench.job(), before);
  await bench.key('Escape');
  assert.equal(await bench.job(), before);
  assert.ok((await bench.places()).has('undo'));
}

/** Writes into a box and finishes it: it must stay open with its text. */
async function refusedIn(bench, box, words) {
  await untouched(bench, async () => {
    await bench.press(box);
    await bench.key('Control+a');
    await bench.page.keyboard.insertText(words);
    await bench.rest();
    await bench.key('Enter');
    assert.equal(await bench.pm('isTyping'), true);
  });
}

/** Pastes a text as the browser hands it over. */
async function paste(bench, text) {
  await bench.page.evaluate((words) => {
    const data = new DataTransfer();
    data.setData('text/plain', words);
    document.activeElement.dispatchEvent(
      new ClipboardEvent('paste', {clipboardData: data, bubbles: true, cancelable: true}));
  }, text);
  await bench.rest();
}

await checks.withBench({}, async (bench) => {
  await bench.press('door.sleeve');
  await check('letters in a number box', () => refusedIn(bench, 'box.length', 'abc'));
  await check('0 and 10 000 sleeves, and letters for a count', async () => {
    await bench.press('make.section');
    for (const words of ['0', '10000', 'many']) await refusedIn(bench, 'making.count', words);
  });
  await check('a lap wider than the sleeve is said before it is kept, and cannot be kept', async () => {
    await untouched(bench, async () => {
      await bench.typeInto('making.lap', '120');
      assert.match(await bench.line('making.follows'),
        /^A lap of 120 is too wide: the narrowest sleeve is 110 wide\. Give a lap of 109 or less\.$/);
      await bench.press('making.keep');
    });
  });
  await check('a kept-clear end pulled past the other', async () => {
    await untouched(bench, async () => {
      const {x, y} = await bench.place('stop.bottom');
      await bench.page.mouse.move(x, y);
      await bench.page.mouse.down();
      await bench.page.mouse.move(x + 900, y, {steps: 4});
      await bench.rest();
      await bench.key('Escape');
      await bench.page.mouse.up();
      await bench.rest();
    });
  });
  const large = '9'.repeat(5 * 1024 * 1024);
  await check('5 MB pasted with no box open, and into a box', async () => {
    await untouched(bench, () => paste(bench, large));
    await untouched(bench, async () => {
      await bench.press('box.length');
      await paste(bench, large);
      await bench.key('Enter');
    });
  });
  await check('a folder, a photo, and two files at once', async () => {
    const two = [{name: 'a.json', text: '1'}, {name: 'b.json', text: '2'}];
    const photo = {name: 'photo.png', text: '\x89PNG\r\n\x1a\n'};
    for (const files of [[{name: 'folder', text: ''}], [photo], two]) {
      await untouched(bench, async () => {
        await bench.drop(files);
        assert.match(await bench.line('failed.sentence'), /untouched/);
        await bench.press('failed.away');
      });
    }
  });
  await check('names that are empty, too long, or used already', async () => {
    await bench.press('piece');
    for (const words of [' ', 'x'.repeat(300)]) await refusedIn(bench, 'making.name', words);
    await bench.press('piece.copy');
    await bench.press('piece');
    await bench.press('piece');
    await refusedIn(bench, 'making.code', '1');
  });
  await check('the page made no mistake', async () => {
    assert.deepEqual(await bench.violations(), []);
    assert.deepEqual(bench.strangers, []);
    assert.deepEqual(bench.mistakes, []);
  });
});

checks.end();
