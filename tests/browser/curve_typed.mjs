// What is typed on the slips of the stage Curve: stations and the tape round the timber, the facing,
// rows of fixings; each change undone to the same bytes, and the figures those of the batch program.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';

import {comparedBay} from './measured.mjs';
import {Checks, until} from './page.mjs';

const checks = new Checks();

/** A demo job on the bench, at the stage, its second bay: a panel. */
async function curving(bench, name) {
  await bench.rest();
  const text = readFileSync(new URL(`../../demo-jobs/${name}.json`, import.meta.url), 'utf8');
  await bench.drop([{name: `${name}.json`, text}]);
  await until(async () => (await bench.places()).has('stage.curve'), 'the job to open');
  await bench.press('stage.curve');
  await bench.press('bay.next');
}

/** Undoes until the job is these bytes again, in so many steps. */
async function undone(bench, steps, opened) {
  for (let i = 0; i < steps; i += 1) {
    assert.notEqual(await bench.job(), opened, `${i} steps undone of ${steps}`);
    await bench.key('Control+z');
  }
  assert.equal(await bench.job(), opened);
}

/** Types what is refused: one sentence, the text kept, nothing changed. */
async function refused(bench, box, typed, sentence) {
  const before = await bench.job();
  await bench.typeInto(box, typed);
  assert.match(await bench.line('box.refused'), sentence);
  assert.equal(await bench.job(), before);
  await bench.key('Escape');
}

await checks.withBench({context: {reducedMotion: 'reduce'}}, async (bench) => {
  await curving(bench, 'marsh-lights');
  const opened = await bench.job();
  await checks.check('stations typed as two figures make the curve, and each is undone', async () => {
    await bench.press('bay.stations');
    // source: a circle of 700 at every 200, the middle one on the crest: 700 - sqrt(700² - x²)
    await bench.typeInto('stations.add', '0 0; 200 70.8; 400 95.5');
    assert.equal(await bench.line('last_action'), '3 stations added to bay B2');
    assert.match(await bench.line('slip.radius'), /Radius, tightest/);
    await bench.typeInto('stations.add', '600 85');
    await bench.typeInto('station.4.off', '84');
    assert.equal(await bench.line('last_action'), 'Station 4 of bay B2 85 → 84 off');
    await bench.press('station.4.away');
    await undone(bench, 4, opened);
  });
  await checks.check('they are asked for every 200, and why', async () => {
    assert.equal(await bench.line('stations.said.0'),
      'No station yet: chord and rise say how the bay bends.');
    assert.match(await bench.line('stations.said.1'), /^Why 200: .* 200 apart, and ± \d+ % with 100/);
  });
  await checks.check('what is no station has a sentence, and the text is kept', async () => {
    await refused(bench, 'stations.add', '400', /give how far along the batten and how far off/);
    await refused(bench, 'stations.add', '-4 2', /-4/);
    await bench.typeInto('stations.add', '0 0; 200 70');
    await refused(bench, 'station.2.along', '0', /0 is not after the station before, at 0/);
    await undone(bench, 1, opened);
  });
  await checks.check('a taped length says how far it is off', async () => {
    const along = Number((await bench.line('slip.along')).match(/[\d.]+$/)[0]);
    await bench.typeInto('stations.taped', (along + 3.8).toFixed(1));
    assert.match(await bench.line('stations.taped.said'), /^3\.[789] longer .*measure again$/);
    await bench.typeInto('stations.taped', (along + 0.8).toFixed(1));
    assert.match(await bench.line('stations.taped.said'), /^0\.[789] apart, within 2$/);
    await undone(bench, 2, opened);
    await bench.press('stations.close');
  });
  await checks.check('along the bay the slip is said where the pointer goes', async () => {
    const mark = await bench.place('curve.place');
    const before = await bench.line('curve.place');
    await bench.page.mouse.move(mark.x, mark.y);
    await bench.page.mouse.down();
    await bench.rest();
    await bench.page.mouse.move(mark.x + 160, mark.y);
    await bench.rest();
    await bench.page.mouse.up();
    await bench.rest();
    assert.notEqual(await bench.line('curve.place'), before);
    assert.match(await bench.line('curve.place'), /^slip [\d.]+ out, \d+ from the hinge side$/);
    await bench.press('curve.place');
    const pressed = await bench.line('curve.place');
    await bench.key('ArrowUp');
    assert.notEqual(await bench.line('curve.place'), pressed);
    await bench.press('curve.bulge');
    assert.match(await bench.line('curve.bulge.said'), /would stand up [\d.]+$/);
    await bench.press('curve.bulge');
    assert.equal(await bench.job(), opened);
  });
  await checks.check('a facing is typed and taken away', async () => {
    await bench.press('bay.force');
    await bench.typeInto('facing', '2');
    assert.equal(await bench.line('last_action'), 'Facing of panel P1: 2 thick');
    assert.match(await bench.line('force.0'), /^Backing, 1, [\d.]+ N, [\d.]+ N$/);
    assert.match(await bench.line('force.1'), /^Facing, 2, [\d.]+ N, [\d.]+ N$/);
    assert.match(await bench.line('force.said.1'), /over \.05: the exact push counts\. The small-/);
    await refused(bench, 'facing', '90', /too much/);
    await undone(bench, 1, opened);
    await bench.press('force.close');
  });
  await checks.check('a row of fixings is added, typed, and undone', async () => {
    await bench.press('bay.fixings');
    await bench.press('fixings.add');
    assert.equal(await bench.line('last_action'), 'Fixings of bay B2, hinge side: added');
    await bench.typeInto('fixing.spacing', '250');
    await bench.typeInto('fixing.in', '12');
    await bench.press('fixing.tight.2');
    assert.equal(await bench.line('last_action'),
      'Fixings of bay B2, hinge side: the last is tight');
    await bench.press('fixing.edge.top');
    await refused(bench, 'fixing.spacing', '0', /too little/);
    await bench.press('fixing.away');
    assert.equal(await bench.job(), opened);
    await bench.key('Control+z');
    await undone(bench, 5, opened);
    await bench.press('fixings.values');
    await bench.press('material.hanging');
    await bench.typeInto('value.hanging.today_c', '12');
    await undone(bench, 1, opened);
  });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({context: {viewport: {width: 1024, height: 768}, hasTouch: true}},
  async (bench) => {
    await curving(bench, 'marsh-lights');
    await checks.check('a finger bends the sheet, on a tablet', async () => {
      const track = await bench.place('curve.slider');
      await bench.page.touchscreen.tap(track.x, track.y);
      await until(async () => /, (4[5-9]|5[0-5]) %$/.test(await bench.line('curve.slider')),
        'the slider to follow the finger');
      assert.match(await bench.line('figure.edge'), /^creep 0\.\d+ out/);
    });
    assert.deepEqual(bench.mistakes, []);
  });

await checks.withBench({context: {reducedMotion: 'reduce'}}, async (bench) => {
  await curving(bench, 'orchard-year');
  await checks.check('a bay of Orchard Year shows the figures of the batch program', async () => {
    if ((await bench.line('slip.folded'))?.startsWith('More')) await bench.press('slip.folded');
    const {compared, differing} = await comparedBay(bench);
    assert.deepEqual(differing, []);
    assert.ok(compared >= 6, `${compared} figures compared`);
  });
  await checks.check('its 84 bays are a list that leads on, tightest first', async () => {
    await bench.press('bay.all');
    const shown = async () => [...(await bench.places()).keys()]
      .filter((name) => /^bays\.B\d+$/.test(name));
    const seen = new Set(await shown());
    for (let i = 0; i < 20 && seen.size < 84; i += 1) {
      await bench.press('bays.more');
      for (const name of await shown()) seen.add(name);
    }
    assert.equal(seen.size, 84);
  });
  assert.deepEqual(bench.mistakes, []);
});

checks.end();
