// How a piece is made, by the real pointer and real keys: the slip "How it is made" of a sleeve, a
// section and a panel, what it foretells, what then stands, and that Ctrl+Z gives the job as before.
import assert from 'node:assert/strict';

import {Checks, until} from './page.mjs';

const checks = new Checks();
const check = (sentence, body) => checks.check(sentence, body);

const headline = (bench) => bench.line('headline');
const follows = (bench, answer) => bench.line(`${answer}.follows`);
const section = async (bench) => JSON.parse(await bench.job()).sections[0];

/** Brings the page of the slip that has this answer on the bench. */
async function turnTo(bench, answer) {
  for (let page = 0; page < 8 && !(await bench.places()).has(answer); page += 1) {
    await bench.press('how.more');
  }
}

/** Presses an answer; what it foretold comes back. */
async function choose(bench, answer) {
  await turnTo(bench, answer);
  const told = await follows(bench, answer);
  await bench.press(answer);
  return told;
}

/** Does `act`, then takes it back with Ctrl+Z: the job must be as before, byte for byte. */
async function withUndo(bench, act) {
  const before = await bench.job();
  await act();
  assert.notEqual(await bench.job(), before);
  await bench.key('Control+z');
  assert.equal(await bench.job(), before);
}

await checks.withBench({}, async (bench) => {
  await check('the slip opens by its button and closes by it, by its own and by Esc', async () => {
    await bench.press('door.sleeve');
    for (const way of [() => bench.press('how'), () => bench.press('how.close'),
      () => bench.key('Escape')]) {
      await bench.press('how');
      assert.ok((await bench.places()).has('leaves.folded'));
      await way();
      assert.ok(!(await bench.places()).has('leaves.folded'));
    }
  });
  await check('what lies under the slip cannot be touched', async () => {
    const stop = await bench.place('stop.bottom');
    await bench.press('how');
    const before = await bench.job();
    assert.ok(!(await bench.places()).has('stop.bottom'));
    await bench.page.mouse.move(stop.x, stop.y);
    await bench.page.mouse.down();
    await bench.page.mouse.move(stop.x + 40, stop.y);
    await bench.page.mouse.up();
    assert.equal(await bench.job(), before);
    await bench.press('how');
  });
  await check('exactly 50 leaves 14 over at the top, on the piece and in words', async () => {
    await bench.press('rule.exact');
    assert.equal(await headline(bench), '36 points in each staple row, exactly 50.00 apart');
    assert.equal(await bench.line('headline.because'), '14 left over at the top');
    assert.equal(await bench.line('left_over.top'), '14 left over');
    assert.equal(await bench.line('spacing.top'), '50.00 centre to centre, show the sum');
  });
  await check('half at each end: the first point stands at 25, 7 left over at both', async () => {
    await bench.press('how');
    assert.equal(await choose(bench, 'left_over.split'),
      '36 points, from 25.0 to 1775.0; 14 left over, half at each end');
    await bench.press('how.close');
    assert.equal(await bench.line('slip.first'), 'First point from datum 18.0 → 25.0');
    assert.equal(await bench.line('left_over.top'), '7 left over');
    assert.equal(await bench.line('left_over.bottom'), '7 left over');
  });
  await check('one more point: 37, and the last gap is 14', async () => {
    await bench.press('how');
    assert.equal(await choose(bench, 'left_over.extra_point'),
      '37 points, from 18.0 to 1782.0; the last gap is 14');
    await bench.press('how.close');
    assert.match(await headline(bench), /^37 points/);
    assert.equal(await bench.line('spacing.top'), '14.00 last gap, show the sum');
    assert.equal(await bench.line('left_over.top'), null);
    assert.match(await bench.words(), /the last gap is shorter than/);
    await bench.press('how');
    await choose(bench, 'left_over.end');
    await bench.press('rule.even');
    await bench.press('how.close');
  });
  await check('the clear gap between crowns is foretold, stands, and goes back', async () => {
    await bench.press('how');
    assert.match(await follows(bench, 'measured.centre'), /^37 points at 49\.00/);
    await withUndo(bench, async () => {
      assert.match(await choose(bench, 'measured.clear_gap'), /^30 points at 60\.83/);
      assert.equal(await headline(bench), '30 points in each staple row, 60.83 apart');
      assert.match(await bench.line('last_action'), /clear gap between crowns, for the whole job/);
      await bench.press('how.close');
      assert.equal(await bench.line('spacing.bottom'), '48.83 clear gap, show the sum');
    });
  });
  await check('folded with an inside radius of 0.5 on a sleeve 120 wide: a blank of 240.5',
    async () => {
      await bench.typeInto('box.width', '120');
      await bench.press('how');
      await withUndo(bench, async () => {
        assert.equal(await choose(bench, 'leaves.folded'),
          'blank 240.5 × 1800, fold line at 120.2 from its edge');
        assert.match(await bench.line('last_action'),
          /folded, 0\.5 inside the fold, sewn at the right/);
        const {make, fold_radius_mm: radius, sewn_side: side} = await section(bench);
        assert.deepEqual([make, radius, side], ['folded', 0.5, 'right']);
        assert.equal(await bench.line('slip.staple_holes'), 'Staple holes 148 → 74');
      });
      await choose(bench, 'leaves.folded');
      await turnTo(bench, 'box.fold_radius');
      await withUndo(bench, async () => {
        await bench.typeInto('box.fold_radius', '2');
        assert.equal((await section(bench)).fold_radius_mm, 2);
      });
      await withUndo(bench, () => choose(bench, 'sewn_side.left'));
    });
  await check('round with a flange of 30, and 200 of flange is refused', async () => {
    await choose(bench, 'leaves.round');
    assert.equal((await section(bench)).flange_mm, 30);
    await turnTo(bench, 'box.flange');
    const before = await bench.job();
    await bench.typeInto('box.flange', '200');
    assert.equal(await bench.job(), before);
    await bench.key('Escape');
    assert.ok((await bench.places()).has('how.close'), 'Esc closed the box, not the slip');
    await choose(bench, 'leaves.two_leaf');
  });
  await check('by keys alone: Tab to an answer, Enter, Esc, Ctrl+Z', async () => {
    await bench.key('Escape');
    const before = await bench.job();
    await bench.page.evaluate(() => document.getElementById('bench').focus());
    const focused = () => bench.page.evaluate(() => document.activeElement.dataset.place);
    const tabTo = async (name) => {
      for (let i = 0; i < 60 && await focused() !== name; i += 1) await bench.key('Tab');
      assert.equal(await focused(), name);
    };
    await tabTo('how');
    await bench.key('Enter');
    await tabTo('measured.clear_gap');
    await bench.key('Enter');
    assert.notEqual(await bench.job(), before);
    await bench.key('Escape');
    assert.ok(!(await bench.places()).has('how.close'));
    await bench.key('Control+z');
    assert.equal(await bench.job(), before);
  });
  await check('the page made no mistake', () => assert.deepEqual(bench.mistakes, []));
});

await checks.withBench({}, async (bench) => {
  const figures = async () => [await headline(bench), ...await Promise.all(
    ['side_rows', 'joining_rows', 'staple_points', 'stitch_holes', 'sewing'].map(
      async (line) => (await bench.line(`slip.${line}`)).replace(/ [\d.,]+ →/, '')))];
  await check('shared seams and back: the two stand side by side, then the figures are as before',
    async () => {
      await bench.press('door.small_job');
      const bytes = await bench.job();
      const before = await figures();
      await bench.press('how');
      await turnTo(bench, 'side_seams.shared');
      assert.match(await follows(bench, 'side_seams.separate'),
        /^26 rows, 6,422 holes; 35\.10 m to sew, 780 staples; can be opened: each sleeve by itself/);
      assert.match(await choose(bench, 'side_seams.shared'),
        /^10 rows, 2,470 holes; 13\.50 m to sew, 300 staples; can be opened: only two neighbours/);
      assert.equal(await bench.line('slip.side_rows'), 'Side rows 18 → 2');
      assert.equal(await bench.line('slip.stitch_holes'), 'Stitch holes 6,422 → 2,470');
      await choose(bench, 'side_seams.separate');
      assert.deepEqual(await figures(), before);
      assert.equal(await bench.job(), bytes);
      await bench.press('how.close');
    });
  await check('sleeve 1-05 missing: a finding, another width, other neighbours; put back as before',
    async () => {
      const bytes = await bench.job();
      for (let i = 0; i < 5; i += 1) await bench.press('place.next');
      assert.equal(await bench.line('place'), 'Sleeve 1-05');
      assert.equal(await bench.line('place.neighbours'),
        'between 1-04, which lies over it, and 1-06, which lies under it');
      await bench.press('how');
      assert.equal(await choose(bench, 'is_there.no'),
        'section 1: 8 sleeves, 564 wide; 1-04 then lies over 1-06');
      assert.equal(await bench.line('place'), 'Sleeve 1-06');
      await bench.press('how.close');
      assert.equal(await bench.line('place.neighbours'),
        'between 1-04, which lies over it, and 1-07, which lies under it');
      assert.match(await bench.words(), /1-05 is missing: the codes go from 1-04 to 1-06/);
      assert.deepEqual((await section(bench)).missing, ['1-05']);
      await bench.press('place.section');
      assert.match(await headline(bench), /\b564 wide/);
      await bench.press('how');
      assert.equal(await choose(bench, 'put_back.1-05'), 'section 1: 9 sleeves, 696 wide');
      assert.equal(await bench.job(), bytes);
      assert.match(await headline(bench), /\b696 wide/);
      await bench.press('how.close');
    });
  await check('a panel\'s rows stop short of the hinge row: first point 16 to 31, and back',
    async () => {
      for (let i = 0; i < 10; i += 1) await bench.press('place.next');
      assert.equal(await bench.line('place'), 'Panel P1');
      await bench.press('how');
      await withUndo(bench, async () => {
        assert.match(await follows(bench, 'corners.share_hole'), /first point at 16\.0/);
        assert.match(await choose(bench, 'corners.stop_short'), /60 points.*first point at 31\.0/);
        assert.match(await headline(bench), /^60 points/);
        await withUndo(bench, async () => {
          await bench.typeInto('box.corner_clear', '20');
          assert.match(await follows(bench, 'corners.stop_short'), /first point at 36\.0/);
        });
      });
      assert.match(await headline(bench), /^58 points/);
      await bench.press('how');
    });
  await check('the page made no mistake', () => assert.deepEqual(bench.mistakes, []));
});

await checks.withBench({}, async (bench) => {
  await check('a job that is to look at only is read, and no answer can be pressed', async () => {
    await bench.press('door.small_job');
    const newer = (await bench.job()).replace('"version":1', '"version":2');
    await bench.drop([{name: 'newer.json', text: newer}]);
    const before = await bench.job();
    await bench.press('how');
    const {x, y} = await bench.place('leaves.folded');
    await bench.page.mouse.click(x, y);
    await bench.rest();
    assert.equal(await bench.job(), before);
    assert.match(await bench.line('last_action'), /to look at only/);
  });
});

/** What can be pressed on the slip now. */
async function slipPlaces(bench) {
  const shown = [...await bench.places()].filter(([name]) => /^(how|box\.(fold|fla|corner))/.test(name)
    || /^(leaves|sewn_side|measured|left_over|staples|lap_staples|side_seams|is_there)\./.test(name)
    || /^(put_back|corners)\./.test(name));
  return shown.filter(([name]) => !/\.(follows|top|bottom)$/.test(name));
}

for (const text of ['text.normal', 'text.large']) {
  await checks.withBench({}, async (bench) => {
    await bench.press(text);
    // Two sleeves and a panel: few steps from one to the other.
    await bench.press('door.small_job');
    const job = JSON.parse(await bench.job());
    job.sections[0].count = 2;
    await bench.drop([{name: 'short.json', text: JSON.stringify(job)}]);
    for (const [width, height] of [[1366, 768], [1920, 1080], [1024, 768]]) {
      await bench.page.setViewportSize({width, height});
      await until(() => bench.page.evaluate((wide) =>
        document.getElementById('bench').width === wide, width), 'the new size');
      await check(`every answer of section, sleeve and panel can be pressed at ${width}, ${text}`,
        async () => {
          const seen = new Set();
          for (const steps of [0, 1, 2]) {
            for (let i = 0; i < steps; i += 1) await bench.press('place.next');
            await bench.press('how');
            for (let page = 0; page < 9; page += 1) {
              for (const [name, place] of await slipPlaces(bench)) {
                seen.add(name);
                const where = `${name}: ${JSON.stringify(place)}`;
                assert.ok(place.bottom - place.top >= 37.9, where);
                assert.ok(place.left >= 0 && place.right <= width && place.bottom <= height, where);
              }
              const more = (await bench.places()).has('how.more');
              if (!more) break;
              await bench.press('how.more');
            }
            await bench.press('how');
          }
          for (let i = 0; i < 3; i += 1) await bench.press('place.back');
          // how, its two buttons, and every question that Marsh Lights is asked.
          for (const name of ['leaves.round', 'measured.clear_gap', 'staples.stay', 'lap_staples.foot',
            'side_seams.shared', 'is_there.no', 'corners.stop_short', 'how', 'how.close']) {
            assert.ok(seen.has(name), `${name} was not seen`);
          }
        });
    }
    await check('the page made no mistake', () => assert.deepEqual(bench.mistakes, []));
  });
}

checks.end();
