/** Builds the program with a fault planted in one function, which fails over whatever is named BANG; nothing of it is in the product. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build, type BuildOptions, type Plugin } from 'esbuild';

/** A file and an exported function of it. */
export interface Planted {
  readonly file: string;
  readonly name: string;
}

const root = fileURLToPath(new URL('..', import.meta.url));

/** The function goes by another name, and one that looks through what it is given stands in its place. */
export const planting = ({ file, name }: Planted): Plugin => ({
  name: 'planted fault',
  setup({ onLoad }) {
    const path = `${root}${file}`;
    onLoad({ filter: /\.ts$/ }, (asked) => {
      if (asked.path !== path) return undefined;
      const source = readFileSync(path, 'utf8');
      const head = `export function ${name}`;
      if (source.split(head).length !== 2) throw new Error(`${file} exports no function ${name}`);
      return {
        loader: 'ts',
        contents: `${source.replace(head, `function ${name}_as_it_is`)}
export function ${name}(...given: any): any {
  if (holds(given, new Set())) throw new Error('planted in ${name}');
  return (${name}_as_it_is as any)(...given);
}
function holds(thing: any, seen: Set<any>): boolean {
  if (typeof thing === 'string') return thing.includes('BANG');
  if (typeof thing !== 'object' || thing === null || seen.has(thing) || seen.size > 50_000) return false;
  seen.add(thing);
  const parts = thing instanceof Map ? [...thing.keys(), ...thing.values()] : Object.values(thing);
  return parts.some((part) => holds(part, seen));
}
`,
      };
    });
  },
});

export async function buildPlanted(planted: Planted | null, outfile: string): Promise<void> {
  const options: BuildOptions = {
    entryPoints: [`${root}server/command-line/main.ts`],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    loader: { '.bin': 'binary', '.md': 'text' },
    logLevel: 'warning',
    plugins: planted ? [planting(planted)] : [],
  };
  await build(options);
}
