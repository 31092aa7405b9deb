/** Rows of the kinds that pass pressure on changed, and of the switches that watch it. */
import type { KindRow, PartKind, PropertyRow, SymbolName } from './kind-row.ts';
import * as p from './properties.ts';

function valve(
  keyword: PartKind,
  title: string,
  about: string,
  properties: readonly PropertyRow[],
  symbol: SymbolName,
): KindRow {
  return {
    keyword,
    title,
    about,
    within: ['file', 'block', 'master', 'primary', 'secondary'],
    properties: [...properties, p.height, p.volume, p.rating, p.partNumber],
    ports: { least: 2, most: 4, named: ['in', 'out'] },
    fluid: 'valve',
    symbol,
  };
}

export const valves: readonly KindRow[] = [
  valve(
    'residual-valve',
    'a residual pressure valve',
    'Keeps a little pressure in the line behind it. Its ports are in and out.',
    [p.holds],
    'residual-valve',
  ),
  valve(
    'proportioning-valve',
    'a proportioning valve',
    'Lets the pressure behind it rise less than the pressure before it, from the split point on. Its ports are in and out.',
    [p.splitPoint, p.slope, p.sensing],
    'proportioning-valve',
  ),
  valve(
    'metering-valve',
    'a metering valve',
    'Holds the front discs off until the rear shoes have met their drums. Its ports are in and out.',
    [p.opensAt, p.fullAt],
    'metering-valve',
  ),
  valve('check-valve', 'a check valve', 'Lets fluid pass from in to out only.', [p.crackingPressure], 'check-valve'),
  {
    ...valve(
      'pressure-differential-valve',
      'a pressure-differential valve',
      'A spool between two circuits that moves when one of them fails and closes the contact of a warning lamp. `path` joins the ports of each side.',
      [p.closesAt],
      'pressure-differential-valve',
    ),
    ports: { least: 2, most: 6 },
    fluid: 'paths',
  },
  {
    ...valve(
      'modulator',
      'a hydraulic modulator',
      'An opaque unit (anti-lock): only its ports are known, and `path` joins those that share fluid.',
      [],
      'modulator',
    ),
    ports: { least: 2, most: 12 },
    fluid: 'paths',
  },
  {
    keyword: 'pressure-switch',
    title: 'a pressure switch',
    about: 'Closes a contact at a pressure, for the stop lamps.',
    within: ['file', 'block'],
    properties: [p.closesAt, p.height, p.volume, p.partNumber],
    ports: { least: 1, most: 1 },
    fluid: 'joined',
    symbol: 'switch',
  },
  {
    keyword: 'pedal-switch',
    title: 'a pedal switch',
    about: 'Switches the stop lamps by the travel of the pedal.',
    within: ['file', 'pedal', 'clutch-pedal'],
    properties: [p.travel, p.partNumber],
    ports: { least: 0, most: 0 },
    fluid: 'none',
    symbol: 'switch',
  },
  {
    keyword: 'warning-switch',
    title: 'a warning switch',
    about:
      'Lights the brake warning lamp: by fluid level in a reservoir or by the spool of a pressure-differential valve.',
    within: ['file', 'reservoir', 'compartment', 'block', 'pressure-differential-valve'],
    properties: [p.partNumber],
    ports: { least: 0, most: 0 },
    fluid: 'none',
    symbol: 'switch',
  },
];
