// What stands on the bench, measured: whether any words are cut off or stand on others, how small
// the smallest words and targets are, and whether the figures are those of the batch program.
import {execFileSync} from 'node:child_process';
import {mkdirSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const PROGRAM = path.join(ROOT, 'build/web-release/pouncemark.js');
const SCRATCH = path.join(ROOT, 'build/pictures');

// Edges put on whole pixels may meet by as much.
const ROUNDING = 1;

const meet = (a, b) => a.left < b.right - ROUNDING && b.left < a.right - ROUNDING &&
  a.top < b.bottom - ROUNDING && b.top < a.bottom - ROUNDING;

/** Every run of words of the last frame: {words, left, top, right, bottom, em, isCut}. */
export async function runsOn(bench) {
  await bench.rest();
  const told = await bench.page.evaluate(() => {
    Module._pm_words();
    Module._pm_frame();
    return Module.UTF8ToString(Module._pm_words());
  });
  return JSON.parse(told).map(([words, left, top, right, bottom, em, isCut]) =>
    ({words, left, top, right, bottom, em, isCut: isCut === 1}));
}

/** The things that can be pressed: {name, left, top, right, bottom}. */
async function targetsOn(bench) {
  const told = await bench.page.evaluate(() => Module.UTF8ToString(Module._pm_places()));
  return JSON.parse(told).filter(([, , , , , canBePressed]) => canBePressed === 1)
    .map(([name, left, top, right, bottom]) => ({name, left, top, right, bottom}));
}

/**
 * Parts of a picture in true proportion, which cannot be larger than the piece's own parts are; each
 * is reached by the steps beside it too (WCAG 2.2, 2.5.8: an equivalent target).
 */
const PART_OF_A_PICTURE = /^(sleeve|lap|page|hanging|figure\.total|figure\.out)\b/;

/** Runs cut off, pairs that stand on one another, the smallest em and the smallest target. */
export async function measured(bench) {
  const runs = await runsOn(bench);
  const targets = await targetsOn(bench);
  const overlapping = [];
  for (const [index, run] of runs.entries()) {
    for (const other of runs.slice(index + 1)) {
      if (meet(run, other)) overlapping.push(`'${run.words}' and '${other.words}'`);
    }
  }
  const sides = targets.filter((one) => !PART_OF_A_PICTURE.test(one.name)).map((one) => ({name: one.name,
    px: Math.min(one.right - one.left, one.bottom - one.top)}));
  return {
    runs: runs.length,
    targets: targets.length,
    cut: runs.filter((run) => run.isCut).map((run) => `'${run.words}'`),
    overlapping,
    smallestText: Math.min(...runs.map((run) => run.em)),
    smallestTarget: sides.reduce((a, b) => (b.px < a.px ? b : a), {name: 'none', px: Infinity}),
  };
}

/** One line that says it all. */
export const measuredLine = (found) =>
  `${found.cut.length} of ${found.runs} texts clipped, ${found.overlapping.length} overlapping, ` +
  `smallest text ${found.smallestText.toFixed(1)} px, smallest of ${found.targets} targets ` +
  `${found.smallestTarget.px.toFixed(0)} px (${found.smallestTarget.name})`;

/** What the batch program works out of the open job. */
async function figuresOf(bench) {
  mkdirSync(SCRATCH, {recursive: true});
  const file = path.join(SCRATCH, `open-job-${process.pid}.json`);
  writeFileSync(file, await bench.job());
  const told = execFileSync(process.execPath, ['--no-experimental-fetch', PROGRAM, 'figures', file],
    {encoding: 'utf8', maxBuffer: 1 << 28});
  rmSync(file);
  return JSON.parse(told);
}

const numbersIn = (words) => (words.replaceAll(',', '').match(/\d+(\.\d+)?/g) ?? []);
const sum = (rows, key) => rows.reduce((all, row) => all + row[key], 0);

/** Whether `shown` is `value`, rounded to as many decimals as are shown. */
function isRounded(shown, value) {
  const decimals = shown.split('.')[1]?.length ?? 0;
  return Math.abs(Number(shown) - value) <= 0.5 * 10 ** -decimals + 1e-9;
}

/** What the slip's lines of a section must show, by name. */
function sectionFigures(figures, code) {
  const piece = figures.pieces.find((one) => one.kind === 'section' && one.code === code);
  const rows = figures.rows.filter((row) => row.code.startsWith(`${code}-`));
  const holes = rows.filter((row) => row.kind === 'stitch');
  const staples = rows.filter((row) => row.kind === 'staple');
  return {
    'slip.width': piece.width_mm,
    'slip.likely': piece.likely_mm,
    'slip.worst': piece.worst_mm,
    'slip.side_rows': holes.filter((row) => !row.code.includes('+')).length,
    'slip.joining_rows': holes.filter((row) => row.code.includes('+')).length,
    'slip.staple_points': sum(staples, 'points'),
    'slip.stitch_holes': sum(holes, 'points'),
    'slip.sewing': sum(holes.map((row) => ({m: (row.last_mm - row.first_mm) / 1000})), 'm'),
  };
}

/** The same of a sleeve. */
function sleeveFigures(figures, code) {
  const sleeve = figures.pieces.find((one) => one.kind === 'sleeve' && one.code === code);
  const rows = figures.rows.filter((row) => [`${code} left`, `${code} right`].includes(row.code));
  const staples = rows.filter((row) => row.kind === 'staple');
  const holes = rows.filter((row) => row.kind === 'stitch');
  return {
    'slip.points': staples[0]?.points,
    'slip.spacing': staples[0]?.spacing_mm,
    'slip.first': staples[0]?.first_mm,
    'slip.last': staples[0]?.last_mm,
    'slip.staple_holes': 2 * sum(staples, 'points'),
    'slip.stitch_holes': sum(holes, 'points'),
    'slip.blank': [sleeve.blank_mm, sleeve.length_mm],
  };
}

/** The same of a panel. */
function panelFigures(figures, code) {
  const rows = figures.rows.filter((row) => row.code.startsWith(`${code} `));
  const points = rows.filter((row) => row.kind === 'point');
  const wanted = {};
  for (const row of points) {
    const name = row.code.slice(code.length + 1);
    wanted[`slip.points_${name}`] = row.points;
    wanted[`slip.apart_${name}`] = row.spacing_mm;
  }
  return wanted;
}

/** And of the whole job, wherever its lines stand. */
const jobFigures = ({totals}) => ({
  'slip.job_staples': totals.side_staples + totals.lap_staples,
  'slip.job_stitch_holes': totals.stitch_holes,
  'slip.job_sewing': totals.row_m,
});

/** What the slip's lines of a bay must show. */
function bayFigures(figures, code) {
  const bay = figures.bays.find((one) => one.code === code);
  return {
    'slip.radius': bay.radius_mm,
    'slip.turn': bay.turn_deg,
    'slip.along': bay.along_mm,
    'slip.extra': bay.extra_mm,
    'slip.creep': bay.creep_mm,
    'slip.limit': bay.stay_bent_limit_mm,
    'slip.spare': bay.spare_percent,
    'slip.room': bay.room_mm,
    'slip.ease': bay.ease_percent,
    'slip.bulge': bay.sewn_all_round_bulge_mm,
  };
}

/** The bay that is looked at on the stage Curve, compared as below. */
export async function comparedBay(bench) {
  const code = (await bench.line('bay')).match(/^Bay (\S+),/)[1];
  return compared(bench, bayFigures(await figuresOf(bench), code));
}

/**
 * Compares the slip's figures with the batch program's. Gives how many were compared and those that
 * differ; an older figure before an arrow is not looked at.
 */
export async function comparedWithFigures(bench) {
  const figures = await figuresOf(bench);
  const [kind, code] = (await bench.line('piece')).split(' ');
  const of = {section: sectionFigures, sleeve: sleeveFigures, panel: panelFigures}[kind];
  return compared(bench, {...of(figures, code), ...jobFigures(figures)});
}

async function compared(bench, wanted) {
  const differing = [];
  let count = 0;
  for (const [name, value] of Object.entries(wanted)) {
    const words = await bench.line(name) ?? await bench.line(`tray.${name}`);
    if (words === null) continue;
    const now = words.split('→').at(-1).replace(/ (m|pages|%)$/, '');
    const values = [value].flat();
    const shown = numbersIn(now).slice(-values.length);
    count += 1;
    if (!values.every((one, at) => shown[at] !== undefined && isRounded(shown[at], one))) {
      differing.push(`${name}: '${words}', figures ${value}`);
    }
  }
  return {compared: count, differing};
}
