/** `tribrach join`: the parts that the shares of a `check` printed, as the answer that one run over all gives. */
import { type Command, Option } from 'commander';
import { isRefusal } from '../quantities/refusal.ts';
import { answer, CHECK_FORMATS, type CheckFormat } from './check-answer.ts';
import { CannotRun, type Io } from './io.ts';
import { LARGEST_EVIDENCE, readWhole } from './read-file.ts';
import { joined, partIn, type Part } from './shard.ts';

export function register(program: Command, io: Io): void {
  program
    .command('join')
    .description('answer as one check of all sessions, from the parts that check --shard printed')
    .argument('<parts...>', 'the files with the parts, all of them, in any order')
    .addOption(new Option('--format <format>', 'how to answer').choices(CHECK_FORMATS).default('text'))
    .action((paths: string[], { format }: { readonly format: CheckFormat }) => {
      const all = joined(readParts(paths));
      if (isRefusal(all)) throw new CannotRun([all.refused]);
      answer(all.examined, format, all.run, io);
    });
}

function readParts(paths: readonly string[]): (Part & { readonly path: string })[] {
  const reasons: string[] = [];
  const parts = paths.flatMap((path) => {
    const read = readWhole(path, LARGEST_EVIDENCE);
    const part = isRefusal(read) ? read : partIn(new TextDecoder().decode(read.bytes));
    if (!isRefusal(part)) return [{ ...part, path }];
    reasons.push(`cannot use ${path}: ${part.refused}`);
    return [];
  });
  if (reasons.length > 0) throw new CannotRun(reasons);
  return parts;
}
