// Serves one folder of static files to this computer only.
//   node web/server.mjs FOLDER [PORT]
// Without a port: 8137 or the next free one. Prints the address once it answers.
import {createReadStream, promises as files} from 'node:fs';
import {createServer} from 'node:http';
import path from 'node:path';

const FIRST_PORT = 8137;
const PORTS_TRIED = 50;

const TYPES = new Map([
  ['.html', 'text/html; charset=utf-8'],
  ['.css', 'text/css; charset=utf-8'],
  ['.js', 'text/javascript; charset=utf-8'],
  ['.mjs', 'text/javascript; charset=utf-8'],
  ['.json', 'application/json; charset=utf-8'],
  ['.webmanifest', 'application/manifest+json; charset=utf-8'],
  ['.txt', 'text/plain; charset=utf-8'],
  ['.vert', 'text/plain; charset=utf-8'],
  ['.frag', 'text/plain; charset=utf-8'],
  ['.wasm', 'application/wasm'],
  ['.ttf', 'font/ttf'],
  ['.svg', 'image/svg+xml'],
  ['.png', 'image/png'],
  ['.ico', 'image/x-icon'],
]);

// index.html carries the same policy for hosts that send no headers of their own; frame-ancestors
// works in a header only.
const POLICY = [
  "default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "worker-src 'self'",
  "style-src 'self'", "img-src 'self' data: blob:", "font-src 'self'", "connect-src 'self'",
  "frame-src 'self' blob:", "manifest-src 'self'", "base-uri 'none'", "form-action 'none'",
  "frame-ancestors 'none'", "require-trusted-types-for 'script'", 'trusted-types pm-worker',
].join('; ');

const HEADERS = {
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-cache',
};

/** The file behind a request's address, or null when it is none of ours. */
async function fileFor(folder, address) {
  let name;
  try {
    name = decodeURIComponent(new URL(address, 'http://localhost').pathname);
  } catch {
    return null;
  }
  if (name.includes('\0') || !TYPES.has(path.extname(name) || '.html')) return null;
  const wanted = path.join(folder, name.endsWith('/') ? `${name}index.html` : name);
  try {
    // The real path, so that a link cannot lead out of the folder.
    const real = await files.realpath(wanted);
    if (!real.startsWith(folder + path.sep)) return null;
    const seen = await files.stat(real);
    return seen.isFile() ? {real, bytes: seen.size} : null;
  } catch {
    return null;
  }
}

function refuse(response, status, sentence) {
  response.writeHead(status, {...HEADERS, 'content-type': 'text/plain; charset=utf-8'});
  response.end(`${sentence}\n`);
}

async function answer(folder, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    refuse(response, 405, 'Only reading is possible here.');
    return;
  }
  const file = await fileFor(folder, request.url);
  if (!file) {
    refuse(response, 404, 'There is no such file here.');
    return;
  }
  response.writeHead(200, {
    ...HEADERS,
    'content-type': TYPES.get(path.extname(file.real)),
    'content-length': file.bytes,
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  createReadStream(file.real).on('error', () => response.destroy()).pipe(response);
}

function stop(sentence) {
  console.error(`web/server.mjs: ${sentence}`);
  process.exit(1);
}

/** Listens on `port`; on the next one while `left` tries remain and the port is taken. */
function listen(server, port, left) {
  server.once('error', (error) => {
    if (error.code === 'EADDRINUSE' && left > 0) listen(server, port + 1, left - 1);
    else if (error.code === 'EADDRINUSE') stop(`port ${port} is taken; give another with --port.`);
    else stop(`port ${port} cannot be used (${error.code}); give another with --port.`);
  });
  server.listen(port, '127.0.0.1');
}

const [wantedFolder, wantedPort] = process.argv.slice(2);
const folder = await files.realpath(wantedFolder ?? '').catch(() => null);
if (!wantedFolder || !folder) stop(`there is no folder '${wantedFolder ?? ''}'; build the page first.`);
if (wantedPort !== undefined && !(/^\d{1,5}$/.test(wantedPort) && wantedPort <= 65535)) {
  stop(`'${wantedPort}' is no port; give a number from 0 to 65535.`);
}

const server = createServer((request, response) => answer(folder, request, response));
server.on('listening', () => {
  console.log(`Pouncemark is at http://127.0.0.1:${server.address().port}/ (Ctrl+C ends it)`);
});
if (wantedPort === undefined) listen(server, FIRST_PORT, PORTS_TRIED);
else listen(server, Number(wantedPort), 0);
