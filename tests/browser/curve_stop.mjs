// Top and bottom rows of a panel stop where the slip comes to its limit: one press accepts, another
// takes it away, rows and guides follow, and undone the job is byte for byte as it was.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';

import {Checks, until} from './page.mjs';

const checks = new Checks();

await checks.withBench({}, async (bench) => {
  await bench.rest();
  const text = readFileSync(new URL('../../demo-jobs/marsh-lights.json', import.meta.url), 'utf8');
  await bench.drop([{name: 'marsh-lights.json', text}]);
  await until(async () => (await bench.places()).has('stage.curve'), 'the job to open');
  const opened = await bench.job();
  const stop = async () => JSON.parse(await bench.job()).panels[0].rows_stop_mm;
  await bench.press('stage.curve');
  await bench.press('bay.next');
  await checks.check('a panel is offered the stop its bay asks for, a section none', async () => {
    assert.equal(await bench.line('bay'), 'Bay B2, holds panel P1');
    // source: 0.5 × 640.887 / 1.5 = 213.629 along the curve, rounded down to a half.
    assert.equal(await bench.line('curve.stop_at'), 'Stop at 213.5');
    assert.equal(await bench.line('curve.stop'), 'top and bottom rows run on to the fly side');
    await bench.press('bay.back');
    assert.ok(!(await bench.places()).has('curve.stop_at'));
    await bench.press('bay.next');
  });
  await checks.check('one press accepts it, said in the bar', async () => {
    await bench.press('curve.stop_at');
    assert.equal(await stop(), 213.5);
    assert.equal(await bench.line('last_action'), 'Rows of panel P1 stop 213.5 from the hinge side');
    assert.equal(await bench.line('curve.stop_at'), 'Let them run on');
  });
  await checks.check('undone it is as it was, done again it stops again', async () => {
    const accepted = await bench.job();
    await bench.press('undo');
    assert.equal(await bench.job(), opened);
    await bench.press('redo');
    assert.equal(await bench.job(), accepted);
  });
  await checks.check('the other press lets the rows run on', async () => {
    await bench.press('curve.stop_at');
    assert.equal(await bench.job(), opened);
    assert.equal(await bench.line('curve.stop_at'), 'Stop at 213.5');
  });
  await checks.check('a typed stop is taken, letters are kept with a sentence', async () => {
    await bench.typeInto('box.stop', '180');
    assert.equal(await stop(), 180);
    await bench.typeInto('box.stop', 'here');
    assert.ok(await bench.line('box.refused'));
    assert.equal(await stop(), 180);
    await bench.key('Escape');
  });
  await checks.check('the rows on Make follow, and come back', async () => {
    const points = async () => Number((await bench.line('slip.points')).match(/\d+$/)[0]);
    await bench.press('stage.make');
    for (let i = 0; i < 12 && !(await bench.places()).has('slip.points_hinge'); i += 1) {
      await bench.press('place.next');
    }
    const stopped = await points();
    await bench.press('undo');
    assert.equal(await bench.job(), opened);
    assert.equal(await points(), 58);
    assert.ok(stopped >= 30 + 2 * 3 && stopped <= 30 + 2 * 5, `${stopped} points`);
  });
  assert.deepEqual(bench.mistakes, []);
});

checks.end();
