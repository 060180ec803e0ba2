/** The language server: opens with the editor, keeps its books in step with editor and disk, and shuts with it. */
import { type Connection, TextDocuments } from 'vscode-languageserver';
import { version } from '../version.js';
import { answerRequests } from './answers.js';
import { clientOf, offered } from './client.js';
import { Desk } from './desk.js';
import { Diagnostics } from './diagnostics.js';
import type { Disk } from './disk.js';
import { documentsIn } from './documents.js';
import { Keeper } from './keeper.js';
import type { Encoding } from './places.js';
import { Publisher } from './publisher.js';

/** Answers on the connection until the editor ends it. */
export function serve(connection: Connection, disk: Disk): void {
  let encoding: Encoding = 'utf-16';
  const documents = new TextDocuments(documentsIn(() => encoding));
  connection.onInitialize(({ capabilities, workspaceFolders, rootUri }) => {
    const client = clientOf(capabilities);
    encoding = client.encoding;
    const desk = new Desk(client, disk);
    const diagnostics = new Diagnostics(desk);
    const keeper = new Keeper(connection, documents, desk, new Publisher(connection, desk, diagnostics));
    answerRequests(connection, desk, diagnostics);
    const folders = workspaceFolders?.map(({ uri }) => uri) ?? (rootUri == null ? [] : [rootUri]);
    connection.onInitialized(() => keeper.begin(folders));
    return { capabilities: offered(client), serverInfo: { name: 'tamis', version } };
  });
  documents.listen(connection);
  connection.listen();
}
