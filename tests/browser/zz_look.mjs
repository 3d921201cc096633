import {openBench} from './page.mjs';
import {SCREENS} from './screens.mjs';
const [w,h,text,...names]=process.argv.slice(2);
const bench = await openBench({context:{viewport:{width:+w,height:+h},hasTouch:w==1024}});
await bench.press(`text.${text}`);
for (const s of SCREENS) { try { await s.reach(bench); if(!names.length||names.includes(s.name)) await bench.page.screenshot({path:`/tmp/look/me/${s.name}_${w}_${text}.png`}); await s.leave?.(bench);} catch (e) { console.log(s.name, 'FAILED', e.message.slice(0, 200)); } }
await bench.close();
