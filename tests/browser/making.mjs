// A job made without a file: a sleeve, a section of 14, which neighbour lies over, a panel by pointing
// at its edge, a copy, names, order, numbers, the whole hanging, a piece taken away; then all undone.
import assert from 'node:assert/strict';

import {Checks} from './page.mjs';

const checks = new Checks();
const check = (sentence, body) => checks.check(sentence, body);

const job = async (bench) => JSON.parse(await bench.job());
const action = (bench) => bench.line('last_action');

/** Opens the slip of what can be done with a piece. */
async function openPiece(bench) {
  if (!(await bench.places()).has('making.close')) await bench.press('piece');
}

/** Pastes a text into a box and finishes it; every sign goes in at once. */
async function nameIt(bench, box, words) {
  await bench.press(box);
  await bench.key('Control+a');
  await bench.page.keyboard.insertText(words);
  await bench.rest();
  await bench.key('Enter');
}

await checks.withBench({}, async (bench) => {
  let start;
  await check('a lone sleeve has a button that makes it a section', async () => {
    await bench.press('door.sleeve');
    start = await bench.job();
    await bench.press('make.section');
    assert.match(await bench.line('making.follows'), /^202 wide; could end up ±/);
  });
  await check('14 sleeves, lap 18: 1306 wide, ±4.2, at worst ±20.5, foretold before it is kept',
    async () => {
      await bench.typeInto('making.count', '14');
      assert.equal(await bench.line('making.follows'), '1306 wide; could end up ±4.2 (at worst ' +
        '±20.5); 28 side rows, 13 joining rows; 1,517 staples, 12,095 stitch holes');
      assert.equal(await bench.job(), start);
    });
  await check('each sleeve over its left neighbour, and the section is kept as one action',
    async () => {
      await bench.press('making.over.left');
      await bench.press('making.keep');
      const [section] = (await job(bench)).sections;
      assert.deepEqual([section.count, section.lap_mm, section.lies_over], [14, 18, 'left']);
      assert.match(await bench.line('headline'), /^1306 wide, .*±4\.2.*±20\.5/);
      await bench.press('sleeve.1-05');
      assert.match(await bench.line('place.neighbours'),
        /1-04(, which lies under it,)? and 1-06(, which lies over it)?/);
      await bench.key('Control+z');
      assert.equal(await bench.job(), start);
      await bench.key('Control+y');
    });
  await check('a panel: the edge that is pressed is the hinge side, the other the fly side',
    async () => {
      await openPiece(bench);
      await bench.press('piece.add_panel');
      await bench.press('edge.top');
      assert.match(await bench.line('making.refused'), /upright edges/);
      await bench.typeInto('making.wide', '700');
      await bench.press('edge.right');
      await bench.press('making.add');
      const [panel] = (await job(bench)).panels;
      assert.deepEqual([panel.code, panel.hinge_side, panel.backing_mm], ['P1', 'right', [700, 1420]]);
    });
  await check('a copy, another code and other names; markup stays letters', async () => {
    await openPiece(bench);
    await bench.press('piece.copy');
    assert.equal(await action(bench), 'Copied panel P1 as P2');
    await nameIt(bench, 'making.code', 'South');
    assert.equal((await job(bench)).panels[1].code, 'South');
    for (const name of ['<img src=x onerror=alert(1)>', 'אורות הביצה']) {
      await nameIt(bench, 'making.name', name);
      assert.equal((await job(bench)).name, name);
      assert.ok((await bench.words()).includes(name));
    }
    assert.equal(await bench.page.evaluate(() => document.querySelectorAll('img').length), 0);
  });
  await check('300 signs are refused with a sentence, the text is kept; Esc puts back', async () => {
    const before = await bench.job();
    await nameIt(bench, 'making.name', 'x'.repeat(300));
    assert.equal(await bench.job(), before);
    assert.equal(await bench.pm('isTyping'), true);
    await bench.key('Escape');
    assert.equal(await bench.job(), before);
  });
  await check('earlier, numbers anew, the whole hanging, and a piece taken away', async () => {
    await openPiece(bench);
    await bench.press('piece.earlier');
    assert.deepEqual((await job(bench)).panels.map(({code}) => code), ['South', 'P1']);
    await bench.press('piece.number');
    assert.deepEqual((await job(bench)).panels.map(({code}) => code), ['P1', 'P2']);
    await bench.press('piece.all');
    assert.match(await bench.line('headline'), /^3 pieces: 1 section, 2 panels/);
    await bench.press('hanging.P2');
    assert.equal(await bench.line('place'), 'Panel P2');
    await openPiece(bench);
    await bench.press('piece.away');
    assert.equal((await job(bench)).panels.length, 1);
  });
  await check('all undone is the job as it began, byte for byte', async () => {
    for (let i = 0; i < 20 && await bench.job() !== start; i += 1) await bench.key('Control+z');
    assert.equal(await bench.job(), start);
  });
  await check('the page made no mistake', async () => {
    assert.deepEqual(await bench.violations(), []);
    assert.deepEqual(bench.strangers, []);
    assert.deepEqual(bench.mistakes, []);
  });
});

await checks.withBench({}, async (bench) => {
  await check('the way leads to the whole hanging: codes, sizes and bays; a piece leads back',
    async () => {
      await bench.press('door.small_job');
      await bench.press('place.hanging');
      assert.equal(await bench.line('headline'), '2 pieces: 1 section, 1 panel');
      assert.match(await bench.line('hanging.1'), /^section 1, \d+ × 1400, bay B1$/);
      assert.match(await bench.line('hanging.P1'), /^panel P1, 690 × 1420, bay B2$/);
      await bench.press('hanging.P1');
      assert.equal(await bench.line('place'), 'Panel P1');
      await bench.key('PageUp');
      assert.notEqual(await bench.line('place'), 'Panel P1');
    });
  await check('the bay of a piece that is taken away stands empty', async () => {
    await bench.press('place.hanging');
    await bench.press('hanging.P1');
    await bench.press('piece');
    await bench.press('piece.away');
    assert.equal(await action(bench), 'Took panel P1 away; bay B2 stands empty');
    assert.deepEqual((await job(bench)).bays.map(({stands}) => stands), [undefined, 'empty']);
    assert.equal(await bench.notice(), '');
  });
});

checks.end();
