// The screens the layout is measured on: how each is reached from the one before, by real presses.
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

import {until} from './page.mjs';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** Takes hold of the named place, pulls it so many pixels and does not let go. */
async function pull(bench, name, across) {
  const from = await bench.place(name);
  await bench.page.mouse.move(from.x, from.y);
  await bench.page.mouse.down();
  for (let step = 1; step <= 4; step += 1) {
    await bench.page.mouse.move(from.x + across * step / 4, from.y);
    await bench.rest();
  }
}

async function putBack(bench) {
  await bench.key('Escape');
  await bench.page.mouse.up();
  await bench.page.mouse.move(2, 2);
  await bench.rest();
}

/** Drops one of the demo jobs on the bench. */
function openDemo(bench, name) {
  const text = readFileSync(path.join(ROOT, 'demo-jobs', `${name}.json`), 'utf8');
  return bench.drop([{name: `${name}.json`, text}]);
}

/** Presses the first of these places that is there. */
async function pressFirst(bench, names) {
  const places = await bench.places();
  const name = names.find((one) => places.has(one));
  if (!name) throw new Error(`none of ${names} is there`);
  await bench.press(name);
}

/** Waits until the file lies over the middle of the stage. */
async function fileSeen(bench) {
  await until(async () => (await bench.places()).has('view'), 'the file to be shown');
}

/** The whole hanging; where its button has no room it stands on the piece's own slip. */
async function goToHanging(bench) {
  if (!(await bench.places()).has('place.hanging')) await bench.press('piece');
  await pressFirst(bench, ['place.hanging', 'piece.all']);
}

/** A section or a panel, by way of the whole hanging. */
async function goTo(bench, code) {
  await goToHanging(bench);
  await bench.press(`hanging.${code}`);
}

/**
 * In the order they are reached, from a page just opened. `leave` puts back what must not stay, `isHeld`: the mouse button is down;
 * `hasSlip`: its slip is compared with the batch program.
 */
export const SCREENS = [
  {name: 'start', reach: (bench) => bench.rest()},
  {name: 'sleeve', hasSlip: true, reach: (bench) => bench.press('door.sleeve')},
  {name: 'sleeve-while-dragging', isHeld: true,
    reach: (bench) => pull(bench, 'stop.bottom', 18), leave: putBack},
  {name: 'sleeve-face-down', hasSlip: true, reach: (bench) => bench.press('face.down'),
    leave: (bench) => bench.press('face.front')},
  {name: 'sleeve-exact', hasSlip: true, reach: (bench) => bench.press('rule.exact'),
    leave: (bench) => bench.key('Control+z')},
  {name: 'make-it-a-section', reach: async (bench) => {
    // Where the button has no room it stands on the piece's own slip.
    if (!(await bench.places()).has('make.section')) await bench.press('piece');
    await pressFirst(bench, ['make.section', 'piece.plan']);
  },
    leave: (bench) => bench.press('making.close')},
  {name: 'this-piece', reach: (bench) => bench.press('piece')},
  {name: 'add-a-panel', reach: async (bench) => {
    await bench.press('piece.add_panel');
    await bench.press('edge.right');
  }, leave: (bench) => bench.press('making.close')},
  {name: 'panel-with-fly-side', hasSlip: true, reach: async (bench) => {
    await openDemo(bench, 'marsh-lights');
    await goTo(bench, 'P1');
  }},
  {name: 'whole-hanging', reach: goToHanging},
  {name: 'section-of-19', hasSlip: true, reach: async (bench) => {
    await openDemo(bench, 'harbour-ledger');
    await goTo(bench, '4');
  }},
  {name: 'findings-with-a-sum-open', hasSlip: true,
    reach: (bench) => pressFirst(bench, ['finding.0', 'tray.finding']),
    // All that follows goes back into its tray.
    leave: async (bench) => {
      if (!(await bench.places()).has('how')) await bench.press('tray.all');
    }},
  {name: 'how-it-is-made', reach: (bench) => bench.press('how'),
    leave: (bench) => bench.press('how.close')},
  {name: 'sleeve-of-a-section', hasSlip: true, reach: (bench) => bench.press('sleeve.4-02')},
  {name: 'actions', reach: (bench) => pressFirst(bench, ['actions', 'last_action']),
    leave: (bench) => bench.key('Escape')},
  {name: 'keys', reach: (bench) => bench.key('?'), leave: (bench) => bench.key('Escape')},
  {name: 'sew-side-rows', reach: (bench) => bench.press('stage.sew')},
  {name: 'sew-at-the-machine', reach: (bench) => bench.press('sew.view.machine')},
  {name: 'sew-machine-too-wide', reach: async (bench) => {
    await bench.press('sew.kind.joining');
    await bench.typeInto('arm.throat', '50');
  }, leave: async (bench) => {
    await bench.key('Control+z');
    await bench.press('sew.kind.side');
    await bench.press('sew.view.stack');
  }},
  {name: 'sew-materials', reach: (bench) => bench.press('sew.materials')},
  {name: 'sew-thread', reach: (bench) => bench.press('material.thread')},
  {name: 'sew-standing', reach: (bench) => bench.press('standing.thread.label'),
    leave: (bench) => bench.press('sew.close')},
  {name: 'sew-trial', reach: async (bench) => {
    await bench.press('sew.trials');
    await bench.press('trial.add');
  }},
  {name: 'sew-trial-results', reach: async (bench) => {
    if ((await bench.places()).has('trial.part.results')) await bench.press('trial.part.results');
    await bench.typeInto('trial.ten_stitches', '58');
    await bench.typeInto('trial.marks', '498.5');
  }, leave: (bench) => bench.press('sew.close')},
  {name: 'sew-panel', reach: async (bench) => {
    await openDemo(bench, 'marsh-lights');
    await goTo(bench, 'P1');
    await bench.press('stage.sew');
    await bench.press('sew.kind.top');
  }},
  {name: 'sew-with-a-sum-open', reach: (bench) => bench.press('figure.sheet_left'),
    leave: async (bench) => {
      if (!(await bench.places()).has('sew.materials')) await bench.press('tray.all');
    }},
  {name: 'curve-panel', reach: async (bench) => {
    await bench.press('stage.curve');
    for (let i = 0; i < 9 && !(await bench.places()).has('figure.edge'); i += 1) {
      await bench.press('bay.next');
    }
  }},
  {name: 'curve-stations', reach: async (bench) => {
    await bench.press('bay.stations');
    await bench.typeInto('stations.add', '0 0; 200 71; 400 95; 600 60; 800 -20');
  }, leave: async (bench) => {
    await bench.key('Control+z');
    await bench.press('stations.close');
  }},
  {name: 'curve-fixings', reach: async (bench) => {
    await bench.press('bay.fixings');
    await bench.press('fixings.add');
  }, leave: async (bench) => {
    await bench.key('Control+z');
    await bench.press('fixings.close');
  }},
  {name: 'later-stage', reach: (bench) => bench.press('stage.buy')},
  {name: 'print', reach: (bench) => bench.press('stage.print')},
  {name: 'print-with-preview', reach: async (bench) => {
    await openDemo(bench, 'marsh-lights');
    await bench.press('stage.print');
    for (const way of ['part.guides', 'guides.further']) {
      const places = await bench.places();
      if (!places.has('guide.full_face.P1') && places.has(way)) await bench.press(way);
    }
    await bench.press('guide.full_face.P1');
    if (!(await bench.places()).has('print.look')) await bench.press('part.map');
    await bench.press('print.look');
    await fileSeen(bench);
  }, leave: (bench) => bench.key('Escape')},
];
