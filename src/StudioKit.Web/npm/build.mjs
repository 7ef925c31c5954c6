// Builds the bundles under wwwroot/vendor from this folder's lock file: npm ci && npm run build.
import { build } from 'esbuild';
import { copyFile, mkdir } from 'node:fs/promises';

const out = new URL('../wwwroot/vendor/three/', import.meta.url);
await mkdir(out, { recursive: true });
await build({
    entryPoints: ['three.js'],
    outfile: new URL('three.js', out).pathname,
    bundle: true,
    format: 'esm',
    minify: true,
    target: 'es2022',
    legalComments: 'inline',
});
await copyFile('node_modules/three/LICENSE', new URL('LICENSE.txt', out));
