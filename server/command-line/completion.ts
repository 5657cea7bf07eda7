/** `tribrach completion`: what a shell needs to complete commands, options and their choices; file names stay the shell's own. */
import { Argument, type Command } from 'commander';
import type { Io } from './io.ts';

export function register(program: Command, io: Io): void {
  program
    .command('completion')
    .description('print what makes a shell complete commands and options; put it where the shell starts')
    .addArgument(new Argument('<shell>', 'which shell').choices(Object.keys(SHELLS)))
    .action((shell: keyof typeof SHELLS) => io.print(SHELLS[shell](commandsOf(program)), 'file'));
}

interface Completed {
  readonly name: string;
  readonly says: string;
  readonly options: readonly {
    readonly flag: string;
    readonly says: string;
    readonly choices: readonly string[];
  }[];
  /** What the first word behind the command may be, where only some are. */
  readonly words: readonly string[];
}

const commandsOf = (program: Command): Completed[] =>
  program.commands.map((command) => ({
    name: command.name(),
    says: command.description(),
    words: command.registeredArguments[0]?.argChoices ?? [],
    options: command.options
      .filter(({ hidden }) => !hidden)
      .map(({ long, short, description, argChoices }) => ({
        flag: long ?? short ?? '',
        says: description,
        choices: argChoices ?? [],
      })),
  }));

const SHELLS = {
  bash: (commands: readonly Completed[]) =>
    `${HEAD}${bashFunction(commands)}complete -o default -F _tribrach tribrach\n`,
  zsh: (commands: readonly Completed[]) =>
    `${HEAD}autoload -U +X bashcompinit && bashcompinit\n${bashFunction(commands)}complete -o default -F _tribrach tribrach\n`,
  fish: (commands: readonly Completed[]) => HEAD + commands.map(fishLines).join(''),
  powershell: (commands: readonly Completed[]) => HEAD + powershellBlock(commands),
};

const HEAD = '# Completion for tribrach; print it anew after an update.\n';

function bashFunction(commands: readonly Completed[]): string {
  const cases = commands.flatMap(({ name, options, words }) => [
    ...options
      .filter(({ choices }) => choices.length > 0)
      .map(({ flag, choices }) => `    '${name} ${flag}') words='${choices.join(' ')}' ;;`),
    ...(words.length > 0 ? [`    '${name} ${name}') words='${words.join(' ')}' ;;`] : []),
  ]);
  const flags = commands.map(
    ({ name, options }) => `      ${name}) words='${options.map(({ flag }) => flag).join(' ')}' ;;`,
  );
  return `_tribrach() {
  local current=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]} words=''
  if [ "$COMP_CWORD" -eq 1 ]; then
    words='${commands.map(({ name }) => name).join(' ')}'
  else case "$command $before" in
${cases.join('\n')}
    *) case "$current" in -*) case "$command" in
${flags.join('\n')}
    esac ;; esac ;;
  esac; fi
  COMPREPLY=($(compgen -W "$words" -- "$current"))
}
`;
}

const quoted = (text: string) => `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;

const fishLines = ({ name, says, options, words }: Completed) =>
  [
    `complete -c tribrach -n __fish_use_subcommand -f -a ${name} -d ${quoted(says)}`,
    ...(words.length > 0
      ? [`complete -c tribrach -n '__fish_seen_subcommand_from ${name}' -f -a ${quoted(words.join(' '))}`]
      : []),
    ...options.map(
      ({ flag, says: what, choices }) =>
        `complete -c tribrach -n '__fish_seen_subcommand_from ${name}' -l ${flag.replace(/^-+/, '')}${choices.length > 0 ? ` -x -a ${quoted(choices.join(' '))}` : ''} -d ${quoted(what)}`,
    ),
    '',
  ].join('\n');

function powershellBlock(commands: readonly Completed[]): string {
  const list = (texts: readonly string[]) =>
    `@(${texts.map((text) => `'${text.replaceAll("'", "''")}'`).join(', ')})`;
  const rows = commands.flatMap(({ name, options, words }) => [
    `    '${name}' = ${list([...words, ...options.map(({ flag }) => flag)])}`,
    ...options
      .filter(({ choices }) => choices.length > 0)
      .map(({ flag, choices }) => `    '${name} ${flag}' = ${list(choices)}`),
  ]);
  return `Register-ArgumentCompleter -Native -CommandName tribrach -ScriptBlock {
  param($current, $line, $cursor)
  $known = @{
${rows.join('\n')}
  }
  $words = @($line.CommandElements | ForEach-Object { $_.ToString() })
  if ($current -ne '') { $words = @($words | Select-Object -SkipLast 1) }
  $offered = if ($words.Count -le 1) { ${list(commands.map(({ name }) => name))} }
    elseif ($known.ContainsKey("$($words[1]) $($words[-1])")) { $known["$($words[1]) $($words[-1])"] }
    else { $known[$words[1]] }
  $offered | Where-Object { $_ -like "$current*" }
}
`;
}
