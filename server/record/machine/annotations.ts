/** Findings as workflow commands, one a line, which services that run workflows show beside the lines of a change. */
import type { FindingsJson } from './findings-json.ts';

/** Worst first, since a service shows only so many of a step; a hint is nothing to act on. */
const LEVELS = [
  ['error', 'error'],
  ['warning', 'warning'],
  ['information', 'notice'],
] as const;

export function annotations({ files }: FindingsJson): string {
  return LEVELS.map(([severity, level]) =>
    files
      .flatMap(({ path, findings }) =>
        findings
          .filter((finding) => finding.severity === severity)
          .map(({ code, headline, effect, action, line, column, endLine, endColumn }) => {
            // Columns of a stretch over several lines are not understood.
            const columns =
              line === endLine ? { col: column, endColumn: Math.max(column, endColumn - 1) } : {};
            const properties = {
              file: path,
              line,
              endLine,
              ...columns,
              title: `${headline.replace(/\.$/, '')} (${code})`,
            };
            const body = [effect, action].filter((part) => part !== '').join(' ') || headline;
            return `::${level} ${Object.entries(properties)
              .map(([name, value]) => `${name}=${inProperty(String(value))}`)
              .join(',')}::${inBody(body)}\n`;
          }),
      )
      .join(''),
  ).join('');
}

const inBody = (text: string) => text.replace(/[%\r\n]/g, percent);
const inProperty = (text: string) => text.replace(/[%\r\n:,]/g, percent);
const percent = (sign: string) => `%${sign.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`;
