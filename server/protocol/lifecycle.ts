/** The order in which a client may ask: initialize first and once, nothing after shutdown but exit. */
import {
  ErrorCodes,
  LSPErrorCodes,
  Message,
  ResponseError,
  type Connection,
  type MessageStrategy,
} from 'vscode-languageserver';

/** What is asked out of turn is handed on under this name, with the reason why it is refused. */
const OUT_OF_TURN = 'tribrach/outOfTurn';

interface Reason {
  readonly code: number;
  readonly message: string;
}

const TOO_EARLY: Reason = {
  code: ErrorCodes.ServerNotInitialized,
  message: 'The server is asked to initialize first.',
};
const TWICE: Reason = { code: ErrorCodes.InvalidRequest, message: 'The server is initialized already.' };
const TOO_LATE: Reason = {
  code: ErrorCodes.InvalidRequest,
  message: 'The server has been shut down; it only waits for exit.',
};

/** Looks at each message before anybody answers it. */
export function inTurn(): MessageStrategy {
  let state: 'new' | 'running' | 'shut' = 'new';
  return {
    handleMessage(message, next) {
      if (Message.isNotification(message)) {
        // Notices out of turn are dropped, as the protocol says.
        if (state === 'running' || message.method === 'exit') return next(message);
        return;
      }
      if (!Message.isRequest(message)) return next(message);
      const { method } = message;
      const reason =
        state === 'shut'
          ? TOO_LATE
          : method === 'initialize'
            ? state === 'new'
              ? null
              : TWICE
            : state === 'new'
              ? TOO_EARLY
              : null;
      if (reason) return next({ ...message, method: OUT_OF_TURN, params: reason } as typeof message);
      if (method === 'initialize') state = 'running';
      if (method === 'shutdown') state = 'shut';
      return next(message);
    },
  };
}

/** Answers what came out of turn, and nothing else. */
export function refuseOutOfTurn(connection: Connection): void {
  connection.onRequest(OUT_OF_TURN, ({ code, message }: Reason) => {
    throw new ResponseError(Number(code) || LSPErrorCodes.RequestFailed, String(message));
  });
}
