/** Says in a few words what an opening or end looks like: "3/8-24 female, inverted-flare seat". */
import { writeStated } from '../quantity/index.ts';
import { flareWords } from '../standards/flare-forms.ts';
import { seats } from '../standards/seats.ts';
import type { Connection, ThreadFact } from '../system/connection.ts';

export function connectionWords(connection: Connection): string {
  switch (connection.kind) {
    case 'threaded': {
      const { thread, gender, seat, turning, plugged } = connection;
      const what = [threadWord(thread), gender].filter((word) => word !== undefined).join(' ');
      const rest = [seat && seats[seat].words, turning && turningWords[turning], plugged ? 'plugged' : undefined];
      return [what, ...rest].filter((word) => word !== undefined && word !== '').join(', ');
    }
    case 'tube-end': {
      const { nut, flare } = connection;
      const flared = flare === undefined ? undefined : flare === 'unknown' ? 'flare not known' : flareWords[flare];
      return [`nut ${threadWord(nut) ?? 'not said'}`, flared].filter((word) => word !== undefined).join(', ');
    }
    case 'banjo':
      return connection.hole === undefined ? 'banjo eye' : `banjo eye, hole ${writeStated(connection.hole)}`;
    case 'barb':
      return connection.size === undefined ? 'spigot' : `spigot ${writeStated(connection.size)}`;
  }
}

const turningWords = { swivel: 'swivels', fixed: 'does not turn' } as const;

function threadWord(thread: ThreadFact): string | undefined {
  switch (thread.kind) {
    case 'known':
      return thread.thread.name;
    case 'unknown':
      return 'thread not known';
    case 'unstated':
      return undefined;
  }
}
