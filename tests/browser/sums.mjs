// Show the sum: every figure of the slip opens its sum when it is pressed, one at a time, and the
// sum ends in the figure; so do the figures of the headline and the running totals, the findings,
// and the keyboard.
import assert from 'node:assert/strict';

import {Checks} from './page.mjs';

const checks = new Checks();
const NUMBER = /\d[\d,]*(\.\d+)?/g;
const lastNumber = (words) => (words.match(NUMBER) ?? []).at(-1);

/** The names of all sums that are open. */
async function openSums(bench) {
  return [...(await bench.places()).keys()].filter((name) => name.endsWith('.sum'));
}

/** The lines of the slip that have a sum. */
async function slipLines(bench) {
  const names = [...(await bench.places()).keys()];
  return names.filter((name) => /^slip\.(?!(more|folded)$)/.test(name) && !name.endsWith('.sum'));
}

/** The one sum that is open is that of `line`, and its numbers end in the line's figure. */
async function isOpen(bench, line) {
  assert.deepEqual(await openSums(bench), [`${line}.sum`]);
  const parts = (await bench.line(`${line}.sum`)).split(' / ');
  assert.ok(parts.length >= 3, `rule, numbers and source: ${parts}`);
  assert.equal(lastNumber(parts.at(-2)), lastNumber(await bench.line(line)), line);
}

/** Lines that make room for the sum of another. */
const GIVES_WAY = /^slip\.(job_|laps$)/;

/** Presses every line in turn: one sum is open, then none. */
async function pressEveryLine(bench, least, unfolds = true) {
  // Those that gave way to the findings are unfolded first.
  if (unfolds && (await bench.line('slip.folded'))?.startsWith('More')) await bench.press('slip.folded');
  const lines = await slipLines(bench);
  assert.ok(lines.length >= least, `${lines.length} lines: ${lines}`);
  let last;
  for (const line of lines) {
    if (GIVES_WAY.test(line) && !(await bench.places()).has(line)) continue;
    await bench.press(line);
    await isOpen(bench, line);
    last = line;
  }
  await bench.press(last);
  assert.deepEqual(await openSums(bench), []);
}

/** Tabs until S opens the sum of `line`. */
async function tabTo(bench, line, most) {
  for (let tabs = 0; tabs < most; tabs += 1) {
    await bench.key('Tab');
    await bench.key('s');
    if ((await openSums(bench)).includes(`${line}.sum`)) break;
  }
  await isOpen(bench, line);
}

await checks.withBench({}, async (bench) => {
  await bench.press('door.sleeve');
  await checks.check('every figure of a sleeve opens its sum, one at a time', () =>
    pressEveryLine(bench, 9));
  await checks.check('the points of a row go from the edge to the count', async () => {
    await bench.press('slip.points');
    assert.equal(await bench.line('slip.points.sum'), 'fewest even gaps, none over 50 / ' +
      '1800 − 18 − 18 = 1764 / 1764 = 35 × 50 + 14, so 36 gaps / 36 + 1 = 37 / ' +
      'exact whole-number arithmetic');
    await bench.press('slip.points');
  });
  await checks.check('the figures of the headline open the same sums', async () => {
    for (const figure of ['points', 'spacing']) {
      await bench.press(`figure.${figure}`);
      await isOpen(bench, `slip.${figure}`);
    }
    await bench.press('figure.spacing');
    assert.deepEqual(await openSums(bench), []);
  });
  await checks.check('Tab reaches a figure, S opens its sum and Enter closes it', async () => {
    await tabTo(bench, 'slip.points', 40);
    await bench.key('Enter');
    assert.deepEqual(await openSums(bench), []);
    await bench.key('Tab');
    await bench.key('Enter');
    await isOpen(bench, 'slip.spacing');
  });
  await checks.check('a sum stays open over an edit and follows it', async () => {
    await bench.press('rule.exact');
    assert.equal(await bench.line('slip.spacing.sum'),
      'exactly as asked for, centre to centre / 50.00 / entered');
  });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({}, async (bench) => {
  await bench.press('door.small_job');
  await checks.check('every figure of a section opens its sum, one at a time', () =>
    pressEveryLine(bench, 9));
  await checks.check('width, likely and at worst open from the headline', async () => {
    for (const figure of ['width', 'likely', 'worst']) {
      await bench.press(`figure.${figure}`);
      await isOpen(bench, `slip.${figure}`);
    }
    assert.match(await bench.line('slip.worst.sum'), /widths ±1 assumed, laps ±0.5 assumed/);
  });
  await checks.check('and from the picture below', async () => {
    for (const figure of ['likely', 'worst']) {
      await bench.press(`figure.out_${figure}`);
      if ((await openSums(bench)).length === 0) await bench.press(`figure.out_${figure}`);
      await isOpen(bench, `slip.${figure}`);
    }
  });
  await checks.check('each running total opens its sum in a line of its own', async () => {
    for (let sleeve = 1; sleeve <= 9; sleeve += 1) {
      await bench.press(`figure.total.${sleeve}`);
      await isOpen(bench, `slip.total.${sleeve}`);
    }
    assert.equal((await slipLines(bench)).filter((line) => line.includes('total')).length, 1);
    await bench.press('figure.total.9');
    assert.ok(!(await slipLines(bench)).includes('slip.total.9'));
  });
  await checks.check('a finding shows its sum, and no other stays open', async () => {
    await bench.press('slip.width');
    await bench.press('finding.0');
    assert.deepEqual(await openSums(bench), ['finding.0.sum']);
    assert.match(await bench.line('finding.0.sum'), /^8 × 1\.40 = 11\.2/);
    await bench.press('finding.0');
    assert.deepEqual(await openSums(bench), []);
  });
  await checks.check('every figure of a sleeve in a section opens its sum', async () => {
    await bench.press('place.next');
    await pressEveryLine(bench, 9);
    await bench.press('spacing.bottom');
    await isOpen(bench, 'slip.spacing');
    await bench.press('spacing.top');
    assert.deepEqual(await openSums(bench), []);
  });
  await checks.check('every figure of a panel opens its sum, and the headline its points',
    async () => {
      for (let steps = 0; steps < 12 && !(await bench.places()).has('slip.points_hinge');
        steps += 1) {
        await bench.press('place.next');
      }
      await pressEveryLine(bench, 10);
      await bench.press('figure.points');
      await isOpen(bench, 'slip.points');
      assert.match(await bench.line('slip.points.sum'), /30 \+ 14 \+ 14 = 58/);
    });
  assert.deepEqual(bench.mistakes, []);
});

await checks.withBench({context: {viewport: {width: 1024, height: 768}}}, async (bench) => {
  await bench.press('door.small_job');
  await checks.check('on a tablet a figure brings all that follows over the bench', async () => {
    await bench.press('figure.total.4');
    await isOpen(bench, 'slip.total.4');
    await bench.press('slip.total.4');
    await pressEveryLine(bench, 5, false);
    await bench.press('tray.all');
    assert.deepEqual(await openSums(bench), []);
  });
  await checks.check('so do the figures and the finding of the tray', async () => {
    await bench.press('tray.slip.side_rows');
    await isOpen(bench, 'slip.side_rows');
    await bench.press('tray.all');
    await bench.press('tray.finding');
    assert.deepEqual(await openSums(bench), ['finding.0.sum']);
  });
  assert.deepEqual(bench.mistakes, []);
});

checks.end();
