/** The edit that closes an open port with a plug. */
import type { Part, Port } from '../../system/part.ts';
import type { Mend } from '../../system/problem.ts';
import { outermost } from '../../system/system.ts';
import type { RuleContext } from '../rule.ts';
import { freeName } from './free-name.ts';

/**
 * Declares a plug behind the part and screws it in: to be fitted in the circuit as planned; in the circuit as found it is
 * there already and only was not written. Undefined where the port's thread is not known.
 */
export function plugMend(part: Part, port: Port, { reading, system }: RuleContext): Mend | undefined {
  const { connection } = port;
  const home = outermost(system, part);
  if (connection.kind !== 'threaded' || connection.thread.kind !== 'known' || home.origin.uri !== system.uri)
    return undefined;
  const gender = connection.gender === 'male' ? 'female' : 'male';
  const face = [connection.thread.thread.name, gender, connection.seat].filter((word) => word !== undefined).join(' ');
  const mark = system.state === 'planned' ? 'to-fit ' : port.presence === 'to-remove' ? 'to-remove ' : '';
  const name = freeName(`${port.id.replaceAll('.', '-')}-plug`, reading);
  const text = `\n\n${mark}plug ${name} { port shank: ${face} }\n${mark}screw ${name}.shank into ${port.id}`;
  return {
    title: system.state === 'planned' ? `Plug ${port.id}` : `Say that ${port.id} is plugged`,
    edits: [{ uri: system.uri, start: home.origin.end, end: home.origin.end, text }],
  };
}
