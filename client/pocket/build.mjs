/** Writes dist/pocket.html: the pocket page with everything inside, which loads nothing and sends nothing. */
import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';

const here = (name) => new URL(name, import.meta.url);

const { outputFiles } = await build({
  entryPoints: [here('page.ts').pathname],
  bundle: true,
  minify: true,
  write: false,
  format: 'iife',
  platform: 'browser',
  conditions: ['browser'],
  target: 'es2022',
  charset: 'utf8',
  legalComments: 'none',
  loader: { '.bin': 'binary', '.md': 'text' },
});
// A closing tag inside a string of the script would end the script.
const script = outputFiles[0].text.replaceAll('</script', '<\\/script');
const style = (await readFile(here('page.css'), 'utf8')).trim();
const template = await readFile(here('page.html'), 'utf8');
const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const policy = `default-src 'none'; script-src ${hash(script)}; style-src ${hash(style)}; img-src data:`;
const page = template
  .replace('@policy@', () => policy)
  .replace('@style@', () => style)
  .replace('@script@', () => script);
await mkdir('dist', { recursive: true });
await writeFile('dist/pocket.html', page);
console.log(`wrote dist/pocket.html, ${Math.round(Buffer.byteLength(page) / 1024)} KB`);
