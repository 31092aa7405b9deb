/** What fits at a place in the text, and nothing else: kinds, facts, words, units, names, ports. */
import { units } from '../quantity/index.ts';
import { rules } from '../rules/index.ts';
import type { Block } from '../scoping/block.ts';
import type { Lendings, NamedThing } from '../scoping/lendings.ts';
import { flaresFor } from '../standards/mating.ts';
import { findKind, type KindRow, kindRows } from '../system/kinds/index.ts';
import { partIdOf } from '../system/part.ts';
import { readingDimensions } from '../system/read/read-record.ts';
import type { System } from '../system/system.ts';
import { expectedDimension } from './expected-dimension.ts';
import { factOffers, wordOffers } from './fact-offers.ts';
import type { Offer } from './offer.ts';
import { endOf, partOffers, portNamed, portOffers, relationOffers } from './port-offers.ts';
import { isAwaited } from './statement.ts';
import { threadOffers } from './thread-offers.ts';
import { meaningOf } from './word-meanings.ts';

/** What the grammar allows next: a word of its own, a word of some class, or the name of something. */
export type Wanted =
  | { readonly kind: 'keyword'; readonly word: string; readonly rule: string }
  | { readonly kind: 'terminal'; readonly name: string; readonly rule: string; readonly property: string | undefined }
  | { readonly kind: 'name'; readonly rule: string; readonly property: string };

export interface OfferSite {
  readonly block: Block;
  /** The line up to the word that is being written. */
  readonly lineBefore: string;
  readonly system: System;
  readonly lendings: Lendings;
}

export function offersFor(wanted: Wanted, site: OfferSite): readonly Offer[] {
  if (!isAwaited(wanted, site.lineBefore)) return [];
  switch (wanted.kind) {
    case 'keyword':
      return keywordOffers(wanted.word, wanted.rule, site);
    case 'terminal':
      return terminalOffers(wanted.name, wanted.rule, wanted.property, site);
    case 'name':
      return nameOffers(wanted.rule, wanted.property, site);
  }
}

function keywordOffers(word: string, rule: string, site: OfferSite): readonly Offer[] {
  if (!/^[A-Za-z?]/.test(word)) return [];
  switch (rule) {
    case 'Kind':
      return kindOffers(word, site);
    // Facts come from the table of the kind, with what they mean.
    case 'PropertyKey':
      return [];
    case 'Variant':
      return headKind(site)?.variants?.includes(word) === true ? [wordOffer(word, 2)] : [];
    case 'ThreadForm':
      return /\d\/\d+\s+$/.test(site.lineBefore) ? [wordOffer(word, 2)] : [];
    case 'FeatureWord':
      return [{ ...wordOffer(word, 3), documentation: meaningOf(word, 'seat') ?? '' }];
    case 'FlareForm':
      return [{ ...wordOffer(word, flareRank(word, site)), documentation: meaningOf(word, 'flare') ?? '' }];
    case 'Material':
      return [{ ...wordOffer(word, 2), documentation: meaningOf(word, 'material') ?? '' }];
    case 'FluidGrade':
      return [{ ...wordOffer(word, 2), documentation: meaningOf(word, 'fluid') ?? '' }];
    default:
      if (word === '?')
        return [{ label: '?', kind: 'word', detail: 'not known yet: onto the measuring list', rank: 6 }];
      return belongs(word, site) ? [{ label: word, kind: 'keyword', rank: 5, ...documented(word) }] : [];
  }
}

function kindOffers(word: string, { block, lineBefore }: OfferSite): readonly Offer[] {
  const row = findKind(word);
  if (row === undefined) return [];
  const home = block.kind === 'part' ? block.of : block.kind;
  const fits = /\bstock\s+\S+\s+$/.test(lineBefore) || home === '' || row.within.some((place) => place === home);
  return fits ? [{ label: word, kind: 'kind', detail: row.title, documentation: row.about, rank: 3 }] : [];
}

/** Statements that only some kinds of part can have. */
function belongs(word: string, { block }: OfferSite): boolean {
  if (block.kind !== 'part') return true;
  const row = findKind(block.of);
  if (row === undefined) return true;
  const isLine = row.symbol === 'line';
  switch (word) {
    case 'port':
    case 'ports':
      return row.ports.most > 0;
    case 'from':
    case 'to':
    case 'route':
      return isLine;
    case 'tube':
    case 'nut':
    case 'flare':
    case 'clip':
      return row.keyword === 'run';
    case 'path':
      return row.fluid === 'paths' || row.keyword === 'block';
    case 'feeds':
      return row.keyword === 'reservoir' || row.keyword === 'compartment' || row.keyword === 'feed-hose';
    case 'pushes':
      return ['pedal', 'clutch-pedal', 'booster'].includes(row.keyword);
    case 'acts-on':
      return ['parking-brake', 'cable', 'equaliser'].includes(row.keyword);
    default:
      return true;
  }
}

function terminalOffers(name: string, rule: string, property: string | undefined, site: OfferSite): readonly Offer[] {
  const { block, lineBefore, system } = site;
  if (name === 'UNIT') return unitOffers(lineBefore);
  if (rule === 'PropertyKey' && name === 'ID') return factOffers(block, system);
  if (property === 'key' && name === 'ID') {
    return Object.keys(readingDimensions).map((key) => ({ label: key, kind: 'fact', detail: 'a reading', rank: 6 }));
  }
  if (property === 'word' && name === 'NAME') return wordOffers(block, lineBefore, system);
  if (property === 'rule') return rules.filter(({ acceptable }) => acceptable).map(ruleOffer);
  if (name === 'INCH_THREAD') return threadOffers(site);
  if (rule === 'Port' && block.kind === 'part') {
    const here = new Set(
      (block.path === undefined ? undefined : system.partById.get(partIdOf(block.path.split('.'))))?.ports.map(
        (port) => port.name,
      ),
    );
    return (findKind(block.of)?.ports.named ?? [])
      .filter((port) => !here.has(port))
      .map((port) => ({ label: port, kind: 'port', rank: 2 }));
  }
  return [];
}

const ruleOffer = ({ code, question }: (typeof rules)[number]): Offer => ({
  label: code,
  kind: 'rule',
  detail: question,
  rank: 2,
});

function unitOffers(lineBefore: string): readonly Offer[] {
  const dimension = expectedDimension(lineBefore);
  return units
    .filter((unit) => dimension === undefined || unit.dimension === dimension)
    .map((unit, index) => ({ label: unit.symbol, kind: 'unit', detail: unit.dimension, rank: 2 + index / 1000 }));
}

function nameOffers(rule: string, property: string, site: OfferSite): readonly Offer[] {
  const { block, lineBefore, system, lendings } = site;
  switch (property) {
    case 'stock':
      return stockOffers(site);
    case 'place':
    case 'parent':
      return lendings.places.map(({ name, kind }) => ({ label: name, kind: 'place', detail: kind, rank: 2 }));
    case 'source':
      return lendings.parts.map(named('part'));
    case 'parts':
      return lendings.lentBy(/from\s+"([^"]*)"/.exec(lineBefore)?.[1] ?? '').map(named('part'));
    case 'ports':
      return block.kind === 'part' && block.path !== undefined
        ? portOffers({ own: undefined, base: block.path }, system).filter(({ label }) => !label.includes('.'))
        : [];
    case 'segments':
      return rule === 'Reference' ? referenceOffers(site) : [];
    default:
      return [];
  }
}

function referenceOffers({ block, lineBefore, system }: OfferSite): readonly Offer[] {
  const base = /([\p{L}_][\w\p{L}-]*(?:\.[\p{L}_][\w\p{L}-]*)*)\.$/u.exec(lineBefore)?.[1] ?? '';
  const statement = lineBefore.slice(0, lineBefore.length - (base === '' ? 0 : base.length + 1));
  const side = /\b(from|to)\s+$/.exec(statement)?.[1];
  if (side !== undefined && block.kind === 'part') {
    const ports = portOffers({ own: endOf(block.path, side, system), base }, system);
    return base === '' ? ports : [...ports, ...partOffers(base, system).filter(({ kind }) => kind === 'part')];
  }
  const screwed = /\bscrew\s+(\S+)\s+into\s+$/.exec(statement)?.[1];
  if (screwed !== undefined || /\bscrew\s+$/.test(statement)) {
    return portOffers({ own: screwed === undefined ? undefined : portNamed(screwed, system), base }, system);
  }
  const verb = /\b(feeds|pushes|acts-on)\s+(?:[^,]+,\s*)*$/.exec(statement)?.[1];
  return verb === undefined ? partOffers(base, system) : relationOffers(verb, base, system);
}

function stockOffers({ lendings, ...site }: OfferSite): readonly Offer[] {
  const kind = headKind({ lendings, ...site })?.keyword;
  return lendings.stocks
    .filter((stock) => kind === undefined || stock.kind === kind)
    .map((stock) => ({ label: stock.name, kind: 'stock', detail: stock.kind, rank: 2 }));
}

/** The kind at the head of the line: `run` in `to-fit run front-line of`. */
function headKind({ lineBefore }: OfferSite): KindRow | undefined {
  const words = lineBefore.match(/[a-z][\w-]*/g) ?? [];
  return kindRows.find((row) => row.keyword === words.find((word) => !['to-fit', 'to-remove', 'stock'].includes(word)));
}

/** Flares that seal in the port at this end come first. */
function flareRank(word: string, { block, system }: OfferSite): number {
  if (block.kind !== 'end') return 2;
  const own = endOf(block.path, block.side, system);
  const [joint] = own === undefined ? [] : (system.jointsAt.get(own) ?? []);
  const there = joint && system.portById.get(joint.a === own ? joint.b : joint.a);
  if (there?.connection.kind !== 'threaded' || there.connection.seat === undefined) return 2;
  return flaresFor(there.connection.seat).some((form) => form === word) ? 1 : 4;
}

const wordOffer = (label: string, rank: number): Offer => ({ label, kind: 'word', rank });

const documented = (word: string): Pick<Offer, 'documentation'> => {
  const documentation = meaningOf(word, 'grammar');
  return documentation === undefined ? {} : { documentation };
};

const named =
  (kind: 'part') =>
  (thing: NamedThing): Offer => ({ label: thing.name, kind, detail: thing.kind, rank: 2 });
