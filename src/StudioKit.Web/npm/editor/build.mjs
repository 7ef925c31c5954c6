// Builds the bundle under wwwroot/vendor/editor from this folder's lock file: npm ci && npm run build.
import { build } from 'esbuild';
import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises';

const out = new URL('../../wwwroot/vendor/editor/', import.meta.url);
await mkdir(out, { recursive: true });
await build({ entryPoints: ['editor.js'], outfile: new URL('editor.js', out).pathname, bundle: true, format: 'esm', minify: true, target: 'es2022', legalComments: 'none' });

// Every package that may be in the bundle goes with its licence.
const licences = [];
for (const home of ['.', '@codemirror', '@lezer', '@marijn']) {
    for (const name of await readdir(`node_modules/${home}`).catch(() => [])) {
        const folder = `node_modules/${home}/${name}`;
        const told = await readFile(`${folder}/package.json`, 'utf8').catch(() => null);
        const text = await readFile(`${folder}/LICENSE`, 'utf8').catch(() => null);
        if (told && text && name !== 'esbuild') {
            licences.push(`${JSON.parse(told).name} ${JSON.parse(told).version}\n\n${text.trim()}\n`);
        }
    }
}

await writeFile(new URL('LICENSE.txt', out), licences.join(`\n${'-'.repeat(72)}\n\n`));
