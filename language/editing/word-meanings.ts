/** What the words of the notation mean, one sentence each, for whoever rests the pointer on one. */
import { flareForms, flareWords } from '../standards/flare-forms.ts';
import { fluidNames, fluids } from '../standards/fluids.ts';
import { seatNames, seats } from '../standards/seats.ts';
import { tubeMaterialNames, tubeMaterials } from '../standards/tube-materials.ts';

const grammarWords: ReadonlyMap<string, string> = new Map([
  ['vehicle', 'The vehicle: its class and year, its measures, the places that parts ride on, its load cases.'],
  ['fluid', 'The brake fluid that the file is about, and when it was filled in.'],
  ['stock', 'Something said once and used by many parts: a tube with its nut and flare, a hose, a cylinder.'],
  ['mirror', 'The same part or run on the other side of the vehicle; only what differs is said again.'],
  ['screw', 'Two parts screwed into each other without a tube between them.'],
  [
    'accept',
    'Answers a finding with a date and a reason. It silences that one finding and is reported once it no longer matches.',
  ],
  ['use', 'Brings in the stock of another file, and by name parts of it; its records and accepts stay there.'],
  ['to-fit', 'Still to be fitted: it belongs to the circuit as planned, not to the one as found.'],
  ['to-remove', 'To be removed: it belongs to the circuit as found, not to the one as planned.'],
  ['port', 'An opening with its thread, gender and seat. Without a word for its gender it is female.'],
  ['ports', 'Openings that share thread, gender and seat.'],
  ['from', 'The end at which a run or hose is measured from, and the port that it joins.'],
  ['to', 'The other end of a run or hose, and the port that it joins.'],
  ['tube', 'Outside diameter, wall and material of the tube.'],
  ['wall', 'Thickness of the wall of the tube.'],
  ['nut', 'The tube nut at both ends, by its thread.'],
  ['flare', 'The form of the flare at both ends.'],
  ['route', 'The way of a run, step by step from its “from” end, measured from flare face to flare face.'],
  ['straight', 'A straight length between two tangents.'],
  ['corner', 'A length from corner to corner, as a tape reads it.'],
  ['bend', 'A bend by an angle, about a radius of the centre line.'],
  ['turn', 'A rotation about the axis of the tube before the next bend.'],
  ['coil', 'Full turns of a coil that takes up movement.'],
  ['turns', 'The number of turns of a coil.'],
  ['diameter', 'Diameter, of a coil measured at the centre line of the tube.'],
  ['radius', 'Radius of the centre line of the tube in a bend.'],
  ['point', 'A place in the axes of ISO 8855: x forward, y to the left, z up.'],
  ['clip', 'The clips that hold a run, by their spacing or by their places.'],
  ['every', 'The distance from clip to clip.'],
  ['at', 'Where a clip or port is, or the push at which a reading was taken.'],
  ['after', 'How long after the push a reading was taken.'],
  ['path', 'Ports of this part that share fluid inside it.'],
  ['feeds', 'The chamber that this compartment or reservoir keeps supplied.'],
  ['pushes', 'What this pedal pushes.'],
  ['acts-on', 'The brakes that this lever or cable works.'],
  ['load', 'A load case: axle loads, or mass with its centre of gravity.'],
  ['fixed', 'Does not move: of a place, against what it is on; of an end, it cannot turn without its part.'],
  [
    'rubber-mounted',
    'A place that shakes a little on its mounts; a rigid tube to it should have a coil or bend to give.',
  ],
  ['sprung', 'A place that moves with its springs; no rigid tube may bridge this movement.'],
  ['travel', 'How far a sprung place moves from stop to stop.'],
  ['on', 'The place that a part rides on, or what an accept is about.'],
  ['of', 'The stock that a part is made of.'],
  ['as', 'The name of the other side.'],
  ['into', 'What a part is screwed into.'],
  ['because', 'The reason, in quotes; every reader of a change sees it.'],
  ['circuit', 'The circuit as a whole as the cause of a finding.'],
  ['height', 'Height above the datum of the file, upward.'],
  ['assume', 'A value to go on with until it is measured; what follows from it is marked as assumed.'],
  ['about', 'A rough value that claims no limits; what follows from it is shown as about.'],
  ['±', 'A hard limit either way, carried through everything computed from it.'],
  ['+/-', 'A hard limit either way, carried through everything computed from it.'],
  ['..', 'A range: a property with a lower and an upper end.'],
  ['single', 'One chamber.'],
  ['tandem', 'Two chambers in line, one for each circuit.'],
  ['sliding', 'A caliper with pistons on one side that slides to press the other pad.'],
  ['long', 'A long tube nut.'],
  ['short', 'A short tube nut.'],
  ['found', 'A record of what was found on the vehicle.'],
  ['keep', 'Decided: it stays as it is.'],
  ['clean', 'Decided: it is cleaned and goes back.'],
  ['reseal', 'Decided: it gets new seals.'],
  ['replace', 'Decided: a new one takes its place.'],
  ['remove', 'Decided: it comes off.'],
  ['fit', 'Decided: it is fitted.'],
  ['done', 'The work is done.'],
  ['number', 'The number that it is bought by.'],
  ['bought', 'The day it was bought.'],
  ['arrived', 'The day it arrived.'],
  ['male', 'With an outside thread.'],
  ['female', 'With an inside thread.'],
  ['swivel', 'Turns without the part that it belongs to, so a hose can be fitted without twisting it.'],
  ['plugged', 'Closed on purpose.'],
  ['barb', 'A spigot for a low-pressure hose.'],
]);

export type WordList = 'seat' | 'flare' | 'material' | 'fluid' | 'grammar';

/** The meaning as a sentence; undefined for a word that has none of its own. */
export function meaningOf(word: string, list: WordList): string | undefined {
  switch (list) {
    case 'seat': {
      const seat = seatNames.find((name) => name === word);
      return seat === undefined
        ? grammarWords.get(word)
        : sentence(`${seats[seat].words}: it seals ${seats[seat].seals}.`);
    }
    case 'flare': {
      const form = flareForms.find((name) => name === word);
      return form === undefined ? undefined : sentence(`${flareWords[form]}.`);
    }
    case 'material': {
      const name = tubeMaterialNames.find((material) => material === word);
      return name === undefined ? undefined : sentence(`${tubeMaterials[name].words}: ${tubeMaterials[name].remark}.`);
    }
    case 'fluid':
      return fluidMeaning(word);
    case 'grammar':
      return grammarWords.get(word);
  }
}

/** What the grade is made of and when it boils, after 49 CFR 571.116. */
function fluidMeaning(word: string): string | undefined {
  const name = fluidNames.find((fluid) => fluid === word);
  if (name === undefined) return undefined;
  const { words, base, boiling, source } = fluids[name];
  const made = { glycol: 'glycol-based', silicone: 'silicone', mineral: 'mineral oil' }[base];
  const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)} °C`;
  const boils = boiling ? `; it boils at ${celsius(boiling.dry)} or more dry, ${celsius(boiling.wet)} or more wet` : '';
  return `${words}: ${made}${boils} (${source.text}). Fluids of different kinds are never mixed.`;
}

function sentence(text: string): string {
  return (text.charAt(0).toUpperCase() + text.slice(1)).replace(/\.\.$/, '.');
}
