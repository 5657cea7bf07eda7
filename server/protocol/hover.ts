/** Hovers as Markdown, or as plain text for clients that show no other. */
import {
  MarkupKind,
  type ClientCapabilities,
  type Connection,
  type MarkupContent,
} from 'vscode-languageserver';
import { hoverAt, type HoverBlock } from '../features/hover.ts';
import type { OpenSessions } from './open-sessions.ts';
import { fenced } from './markdown.ts';
import { toOffset, toRange } from './to-protocol.ts';

export function answerHover(
  connection: Connection,
  sessions: OpenSessions,
  client: ClientCapabilities,
): void {
  const formats = client.textDocument?.hover?.contentFormat ?? [];
  const markdown = formats.includes(MarkupKind.Markdown);
  connection.onHover(({ textDocument, position }) => {
    const session = sessions.at(textDocument.uri);
    if (!session) return null;
    const offset = toOffset(session.document, position);
    const hover = hoverAt(sessions.inspectionOf(session), offset);
    return (
      hover && { contents: contents(hover.blocks, markdown), range: toRange(session.document, hover.at) }
    );
  });
}

function contents(blocks: readonly HoverBlock[], markdown: boolean): MarkupContent {
  return markdown
    ? { kind: MarkupKind.Markdown, value: blocks.map(inMarkdown).join('\n\n') }
    : { kind: MarkupKind.PlainText, value: blocks.map(plain).join('\n\n') };
}

function inMarkdown(block: HoverBlock): string {
  if (block.kind === 'story') return `**${escaped(block.title)}**\n\n${fenced(block.lines, 'text')}`;
  const example = block.example === undefined ? '' : `\n\n${fenced([block.example], 'tribrach')}`;
  return escaped(block.text) + example;
}

const escaped = (text: string) => text.replace(/[\\`*_{}[\]<>()#+\-.!|~&:@]/g, '\\$&');

function plain(block: HoverBlock): string {
  if (block.kind === 'story') return [block.title, ...block.lines].join('\n');
  return block.example === undefined ? block.text : `${block.text}\n${block.example}`;
}
