/** Asks the server for the pictures of one panel and tells the page what came of it. */
import { type LogOutputChannel, l10n } from 'vscode';
import type { Location } from 'vscode-languageclient';
import type { CircuitView, PictureAnswer, PictureParams, Placement } from '../../server/protocol.ts';
import { isOutOfDate, request } from '../client/requests.ts';
import type { Server } from '../client/server.ts';
import type { ToPage } from './messages.ts';
import { createPull } from './pull.ts';

export interface Pictures {
  readonly ask: () => void;
  /** Another document or circuit is meant from now on, or the page has lost what it was shown. */
  readonly turnTo: (subject: PictureSubject) => void;
  readonly subject: () => PictureSubject;
  /** Where the text is broken now, if it is. */
  readonly brokenAt: () => Location | undefined;
}

export interface PictureSubject {
  readonly uri: string;
  readonly circuit: CircuitView;
  readonly placement?: Placement;
}

export interface PictureReceiver {
  readonly server: Server;
  readonly log: LogOutputChannel;
  readonly post: (message: ToPage) => void;
}

export function createPictures(receiver: PictureReceiver, first: PictureSubject): Pictures {
  let subject = first;
  let shown: 'nothing' | 'part' | 'whole' = 'nothing';
  let brokenAt: Location | undefined;

  const pull = createPull<PictureSubject, PictureAnswer>({
    fetch: (question) => fetchPicture(receiver.server, question, shown === 'whole' ? 'say-so' : 'draw-what-is-left'),
    deliver: (answer) => {
      brokenAt =
        answer.kind === 'broken' ? answer.location : answer.kind === 'drawn' ? answer.broken?.location : undefined;
      if (answer.kind === 'drawn') {
        subject = { ...subject, placement: answer.placement };
        shown = answer.broken === undefined ? 'whole' : 'part';
      }
      if (answer.kind === 'none' && answer.reason === 'empty') shown = 'nothing';
      receiver.post(asMessage(answer, subject.uri));
    },
    fail: (error) => {
      if (isOutOfDate(error)) return;
      const message = error instanceof Error ? error.message : String(error);
      receiver.log.error(`No picture of ${subject.uri}: ${message}`);
      receiver.post({ type: 'trouble', message: l10n.t('The schematic could not be drawn: {0}', message) });
    },
  });

  return {
    ask: () => pull.ask(subject),
    turnTo: (next) => {
      pull.drop();
      subject = next;
      shown = 'nothing';
      brokenAt = undefined;
    },
    subject: () => subject,
    brokenAt: () => brokenAt,
  };
}

async function fetchPicture(
  server: Server,
  subject: PictureSubject,
  whenBroken: PictureParams['whenBroken'],
): Promise<PictureAnswer> {
  const client = server.client();
  if (client === undefined) return { kind: 'none', reason: 'failed', message: withoutServer(server) };
  const { uri, circuit, placement } = subject;
  const previous = placement === undefined ? {} : { previous: placement };
  return request(client, 'linewright/picture', { uri, circuit, theme: 'vscode', whenBroken, ...previous });
}

export function withoutServer(server: Server): string {
  return server.state().kind === 'starting'
    ? l10n.t('The language server is starting.')
    : l10n.t('The language server is not running. The command “Restart Language Server” starts it.');
}

function asMessage(answer: PictureAnswer, uri: string): ToPage {
  switch (answer.kind) {
    case 'drawn': {
      const { circuit, svg, title, description, parts, views, tally, placement } = answer;
      const broken =
        answer.broken === undefined
          ? undefined
          : { message: answer.broken.message, line: answer.broken.location.range.start.line + 1 };
      return {
        type: 'picture',
        picture: { uri, circuit, svg, title, description, parts, views, tally, placement, broken },
      };
    }
    case 'broken':
      return { type: 'broken', message: answer.message, line: answer.location.range.start.line + 1 };
    case 'none':
      return { type: answer.reason === 'empty' ? 'nothing' : 'trouble', message: answer.message };
  }
}
