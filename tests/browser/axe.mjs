// The page around the picture, for those who hear it or go by keys: axe looks at it in every stage,
// and must find a fault that is planted.
import {createRequire} from 'node:module';

import {Checks} from './page.mjs';
import {SCREENS} from './screens.mjs';

const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
// Those that no screen above opens.
const STAGES = ['measure', 'curve', 'buy', 'hang', 'record'];
// Rules that must have had something to look at, or nothing was looked at.
const LOOKED_AT = ['button-name', 'html-has-lang', 'document-title', 'aria-allowed-attr'];

/** What axe says of the page: the faults, one line each, and the rules that were kept. */
async function faults(bench) {
  await bench.rest();
  const told = await bench.page.evaluate(() => globalThis.axe.run(document, {
    resultTypes: ['violations'],
  }));
  const kept = new Set(told.passes.map((rule) => rule.id));
  const unseen = LOOKED_AT.filter((rule) => !kept.has(rule));
  if (unseen.length > 0) throw new Error(`axe looked at nothing for ${unseen.join(', ')}`);
  return told.violations.map((rule) =>
    `${rule.id}: ${rule.help} (${rule.nodes.slice(0, 3).map((node) => node.html).join(' | ')})`);
}

async function expectNone(bench) {
  const found = await faults(bench);
  if (found.length > 0) throw new Error(found.join('\n'));
}

const checks = new Checks();
const before = (page) => page.addInitScript({path: AXE});

await checks.withBench({before}, async (bench) => {
  for (const screen of SCREENS) {
    await checks.check(`nothing stands in the way: ${screen.name}`, async () => {
      await screen.reach(bench);
      await expectNone(bench);
      await screen.leave?.(bench);
    });
  }
  for (const stage of STAGES) {
    await checks.check(`nothing stands in the way: the stage ${stage}`, async () => {
      await bench.press(`stage.${stage}`);
      await expectNone(bench);
    });
  }
  await checks.check('nothing stands in the way: the page of keys', async () => {
    await bench.key('?');
    await bench.place('keys.close');
    await expectNone(bench);
    await bench.press('keys.close');
  });
  await checks.check('nothing stands in the way: a file that could not be opened', async () => {
    await bench.drop([{name: 'photo.json', text: 'not a job'}]);
    await expectNone(bench);
  });
  await checks.check('the bench in words has its headings, findings first', async () => {
    const words = await bench.page.locator('#mirror').ariaSnapshot();
    const findings = words.indexOf('heading "Findings" [level=2]');
    const figures = words.indexOf('heading "Figures and what can be done" [level=2]');
    if (findings < 0 || figures < findings) throw new Error(words.slice(0, 400));
  });
  await checks.check('a button without a name is found', async () => {
    await bench.page.evaluate(() => {
      document.querySelector('main').append(document.createElement('button'));
    });
    const found = await faults(bench);
    if (!found.some((fault) => fault.startsWith('button-name'))) throw new Error('it was not');
  });
});

await checks.withBench({before, words: ['--disable-webgl', '--disable-webgl2']}, async (bench) => {
  await checks.check('nothing stands in the way: the page without a picture', async () => {
    await bench.press('door.sleeve');
    await expectNone(bench);
  });
});

checks.end();
