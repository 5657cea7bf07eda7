/** The stub in the place of the command line's `serve --stdio`. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { answer } from './answers.ts';

answer(createConnection(ProposedFeatures.all, process.stdin, process.stdout));
