/** The rooms and their order: an import points to the same room or an earlier one, and some packages belong to one room. */
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const ROOMS = [
  'grammar/',
  'server/quantities/',
  'server/geodesy/',
  'server/link/',
  'server/evidence/',
  'server/witness/',
  'server/session/',
  'server/derive/remembered.ts',
  'server/derive/reviews.ts',
  'server/derive/positions/',
  'server/derive/heights/',
  'server/derive/marks/',
  'server/derive/setups/',
  'server/derive/evidence/',
  'server/derive/checks/',
  'server/derive/points/',
  'server/derive/link/',
  'server/derive/derivation.ts',
  'server/derive/listing.ts',
  'server/derive/trust/',
  'server/derive/repair/',
  'server/slips/',
  'server/findings/',
  'server/inspect.ts',
  'server/features/',
  'server/record/',
  'server/library/',
  'server/protocol/',
  'server/command-line/',
  'client/',
];
/** Who alone may import a package. */
const OWNERS: readonly (readonly [RegExp, string])[] = [
  [/^proj4/, 'server/geodesy/projection.ts'],
  [/^vscode-languageserver/, 'server/protocol/'],
  [/^(node:|commander$|picocolors$)/, 'server/command-line/'],
  [/^(vscode$|vscode-languageclient)/, 'client/'],
];

const files = ['grammar', 'server', 'client'].flatMap((top) =>
  readdirSync(top, { recursive: true, encoding: 'utf8' })
    .map((path) => posix.join(top, path.replaceAll('\\', '/')))
    .filter((path) => path.endsWith('.ts') && !/\.test(-support)?\.ts$/.test(path)),
);
const imports = files.flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(/(?:\bfrom|\bimport\(|^import)\s*'([^']+)'/gm)].map(
    ([, what = '']) => ({
      file,
      what: what.startsWith('.') ? posix.join(posix.dirname(file), what) : what,
    }),
  ),
);
/** Files whose values, and not only types, a file imports; read by the compiler, since an import may run over many lines. */
function valuesFrom(file: string): readonly string[] {
  const { statements } = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
  return statements.flatMap((one) => {
    if (!ts.isImportDeclaration(one) && !ts.isExportDeclaration(one)) return [];
    const from = one.moduleSpecifier;
    if (!from || !ts.isStringLiteral(from) || !from.text.startsWith('.') || isOfTypes(one)) return [];
    return [posix.join(posix.dirname(file), from.text)];
  });
}

function isOfTypes(one: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(one)) return one.isTypeOnly;
  const { isTypeOnly, name, namedBindings } = one.importClause ?? {};
  if (isTypeOnly || name || !namedBindings || !ts.isNamedImports(namedBindings)) return isTypeOnly === true;
  return namedBindings.elements.every((element) => element.isTypeOnly);
}

const roomOf = (path: string) => ROOMS.findIndex((room) => path.startsWith(room));

describe('the rooms', () => {
  it('hold every file', () => {
    expect(files.length).toBeGreaterThan(100);
    expect(imports.map(({ what }) => what)).toEqual(expect.arrayContaining(['proj4', 'server/inspect.ts']));
    expect(files.filter((file) => roomOf(file) < 0)).toEqual([]);
  });

  it('know no later room', () => {
    const wrong = imports.filter(({ file, what }) => roomOf(what) > roomOf(file));
    expect(wrong.map(({ file, what }) => `${file} must not know ${ROOMS[roomOf(what)] ?? what}`)).toEqual([]);
  });

  it('have no circle of imports, but for types alone', () => {
    const knows = new Map(files.map((file) => [file, valuesFrom(file)]));
    expect(knows.get('server/inspect.ts')).toContain('server/derive/derivation.ts');
    expect(knows.get('server/session/patched.ts')).not.toContain('server/session/session.ts');
    // What knows nothing that is left is taken away, again and again; what stays stands in a circle, or behind one.
    for (let before = -1; before !== knows.size;) {
      before = knows.size;
      for (const [file, others] of knows) if (!others.some((other) => knows.has(other))) knows.delete(file);
    }
    expect([...knows.keys()]).toEqual([]);
  });

  it('keep packages to the one room that they belong to', () => {
    const wrong = imports.filter(({ file, what }) =>
      OWNERS.some(([name, owner]) => name.test(what) && !file.startsWith(owner)),
    );
    expect(wrong.map(({ file, what }) => `${file} must not import ${what}`)).toEqual([]);
  });

  it('below the protocol and the command line know no clock, console or environment', () => {
    const pure = files.filter((file) => roomOf(file) < roomOf('server/protocol/'));
    const wrong = pure.filter((file) =>
      /\b(?:process\.|console\.|Date\.now|new Date\(\)|Math\.random)/.test(readFileSync(file, 'utf8')),
    );
    expect(wrong).toEqual([]);
  });

  it('have a true sentence at the head of every file', () => {
    expect(files.filter((file) => !/^\/\*\*\s[^]*?[.:!]\s/.test(readFileSync(file, 'utf8')))).toEqual([]);
  });
});
