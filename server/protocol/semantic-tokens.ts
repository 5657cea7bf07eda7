/** Names by kind and numbers that are holes, as semantic tokens; themes know the standard types that stand for them. */
import { SemanticTokensBuilder, type Connection, type SemanticTokensLegend } from 'vscode-languageserver';
import { semanticTokensIn, type SemanticToken } from '../features/semantic-tokens.ts';
import type { OpenSession, OpenSessions } from './open-sessions.ts';
import { toOffsets, toPosition } from './to-protocol.ts';

const TYPES: Readonly<Record<SemanticToken['kind'], string>> = {
  mark: 'variable',
  antenna: 'class',
  rover: 'class',
  'tape-point': 'enumMember',
  surface: 'interface',
  ground: 'type',
  setup: 'function',
  check: 'method',
  point: 'property',
  radio: 'namespace',
  number: 'number',
};
const MODIFIERS = ['declaration', 'hole'];

export const LEGEND: SemanticTokensLegend = {
  tokenTypes: [...new Set(Object.values(TYPES))],
  tokenModifiers: MODIFIERS,
};

export function answerSemanticTokens(connection: Connection, sessions: OpenSessions): void {
  connection.languages.semanticTokens.on(({ textDocument }) => {
    const session = sessions.at(textDocument.uri);
    return session ? tokens(session, 0, session.document.length) : { data: [] };
  });
  connection.languages.semanticTokens.onRange(({ textDocument, range }) => {
    const session = sessions.at(textDocument.uri);
    if (!session) return { data: [] };
    const { start, end } = toOffsets(session.document, range);
    return tokens(session, start, end);
  });

  function tokens(open: OpenSession, start: number, end: number) {
    const builder = new SemanticTokensBuilder();
    for (const token of semanticTokensIn(sessions.inspectionOf(open).session, start, end)) {
      const { line, character } = toPosition(open.document, token.start);
      const type = LEGEND.tokenTypes.indexOf(TYPES[token.kind]);
      const modifiers = (token.declares ? 1 : 0) | (token.hole ? 2 : 0);
      builder.push(line, character, token.end - token.start, type, modifiers);
    }
    return builder.build();
  }
}
