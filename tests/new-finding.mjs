/**
 * Begins a kind of finding: `npm run new-finding TOPIC-SLIP` writes its page, its file, its broken sample and its line
 * in the catalogue, each with what is still to be said; nothing that exists is written over.
 */
import { access, mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

const CATALOGUE = 'server/findings/catalogue.ts';
const [, topic, slip] = /^([a-z]+)[-/]([a-z][a-z-]*)$/.exec(process.argv[2] ?? '') ?? [];
if (!topic) fail('say which: npm run new-finding TOPIC-SLIP, as in height-extension');

const code = `${topic}/${slip}`;
const name = `${topic}-${slip}`.replace(/-([a-z])/g, (_, letter) => letter.toUpperCase());
const page = `server/findings/${code}.md`;
const file = `server/findings/${code}.ts`;
const sample = `samples/broken/${topic}-${slip}.trib`;
const day = await readFile('samples/example-day.trib', 'utf8');

for (const path of [page, file, sample])
  if (
    await access(path).then(
      () => true,
      () => false,
    )
  )
    fail(`${path} is there already`);

await write(
  page,
  `# ${code}

What is wrong, in a sentence or two.

**Why it hurts.** What follows for the points.

**What to do.** The order, and what to look at.

\`\`\`tribrach wrong
${day.trimEnd()}
\`\`\`

\`\`\`tribrach right
${day.trimEnd()}
\`\`\`
`,
);
await write(
  file,
  `/** One true sentence about what is found here. */
import { kind, type Subject } from '../finding.ts';

export const ${name} = kind({
  code: '${code}',
  find: (subject) => found(subject),
  tell: () => ({ severity: 'hint', headline: '', effect: '', action: '' }),
});

/** The evidence, each with the place where its line is. */
function found({ session }: Subject) {
  return session.job ? [] : [];
}
`,
);
await write(sample, `# What is wrong here, in one sentence.\n${day}`);

const catalogue = await readFile(CATALOGUE, 'utf8');
const line = `import { ${name} } from './${code}.ts';`;
const imports = catalogue.split('\n').filter((one) => /^import \{/.test(one));
const after = imports.filter((one) => one < line || one.includes("'./finding.ts'")).at(-1) ?? imports[0];
await writeFile(
  CATALOGUE,
  catalogue.replace(after, `${after}\n${line}`).replace(/\n\];\s*$/, `\n  ${name},\n];\n`),
);
console.log(`${CATALOGUE}: ${name} is the last of the list; move it to where a reader looks for it`);
console.log(`next: fill in ${page}, then "npm run test-finding ${topic}-${slip}" until it is green`);

async function write(path, text) {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, text, { flag: 'wx' });
  console.log(`wrote ${path}`);
}

function fail(reason) {
  console.error(`new-finding: ${reason}`);
  process.exit(2);
}
