/** The house style is asked for again when its file changes, and what is wrong with it is told once. */
import { PassThrough } from 'node:stream';
import { expect, it } from 'vitest';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { createProtocolConnection } from 'vscode-languageserver-protocol/node';
import type { Disk } from '../../src/editor/disk.js';
import { serve } from '../../src/editor/serve.js';
import { undecided } from '../../src/manuscript/house-style.js';

it('a house style that changes is read again, and its trouble is told to the editor', async () => {
  const asked: string[] = [];
  let trouble: string | null = null;
  const disk: Disk = {
    gather: () => [],
    text: () => null,
    style: async (folder) => {
      asked.push(folder);
      return { style: undecided, trouble };
    },
    watch: () => () => {},
    explanation: () => null,
  };
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  serve(createConnection(ProposedFeatures.all, toServer, toClient), disk);
  const client = createProtocolConnection(toClient, toServer);
  const watched: unknown[] = [];
  client.onRequest('client/registerCapability', ({ registrations }) => {
    watched.push(...registrations[0].registerOptions.watchers);
    return null;
  });
  const told: string[] = [];
  client.onNotification('window/showMessage', ({ message }) => {
    told.push(message);
  });
  client.listen();
  await client.sendRequest('initialize', {
    processId: null,
    rootUri: null,
    capabilities: { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } },
    workspaceFolders: [{ uri: 'file:///book', name: 'book' }],
  });
  await client.sendNotification('initialized', {});
  await client.sendRequest('workspace/symbol', { query: '' });
  expect(asked).toEqual(['/book']);
  expect(watched).toContainEqual({ globPattern: '**/house-style.yaml' });

  trouble = 'house-style.yaml:3: there is no system "metrik"';
  for (let saved = 0; saved < 2; saved++) {
    await client.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: 'file:///book/house-style.yaml', type: 2 }],
    });
  }
  await client.sendRequest('workspace/symbol', { query: '' });
  expect(asked).toHaveLength(3);
  expect(told).toEqual([trouble]);
  client.dispose();
});
