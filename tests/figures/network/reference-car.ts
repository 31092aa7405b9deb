/** A car of our own with round figures: discs in front, drums behind, one circuit for each axle, everything stated. */
import {
  type Application,
  type Applied,
  applied,
  type Contributor,
  type Figures,
} from '../../../language/figures/index.ts';
import { si } from '../../../language/quantity/index.ts';
import type { PartId } from '../../../language/system/part.ts';
import { figuresIn } from '../ask.ts';

export interface CarOptions {
  readonly bore?: string;
  readonly secondBore?: string;
  readonly strokes?: readonly [primary: string, secondary: string];
  readonly pedal?: string;
  readonly pushes?: string;
  readonly shoeClearance?: string;
  readonly caliper?: string;
  readonly rearValve?: string;
  readonly extra?: string;
}

/** 7/8 in master, 54 mm sliding calipers, 3/4 in wheel cylinders: millimetres and seamless figures throughout. */
export function carText(options: CarOptions = {}): string {
  const { bore = '22.225 mm', secondBore = '', strokes = ['25.7766 mm', '25.7766 mm'] } = options;
  const { pedal = 'ratio 6 efficiency 0.95 free-play 0 mm', pushes = 'main' } = options;
  const { shoeClearance = '0.35 mm', caliper = 'clearance 0.25 mm', rearValve = '', extra = '' } = options;
  const rearIn = rearValve === '' ? 'to rear-tee.feed' : 'to valve.in';
  return `fluid dot-4
stock line run { tube 4.762 mm wall 0.711 mm steel nut 3/8-24 flare double-45 }
pedal foot { ${pedal} pushes ${pushes} }
master main tandem {
  bore ${bore}
  compliance 0.00000001 cc/MPa
  primary { stroke ${strokes[0]} cut-off 0.4 mm port front: 3/8-24 inverted-flare }
  secondary { ${secondBore} stroke ${strokes[1]} cut-off 0.4 mm port rear: 3/8-24 inverted-flare }
  reservoir { compartment one { feeds main.primary } compartment two { feeds main.secondary } }
}
tee front-tee { volume 0.001 mL ports feed, left, right: 3/8-24 inverted-flare }
tee rear-tee { volume 0.001 mL ports feed, left, right: 3/8-24 inverted-flare }
run front-feed of line { length 1.6 m from main.primary.front to front-tee.feed }
run front-left-line of line { length 1 m from front-tee.left to front-left-hose.from }
run front-right-line of line { length 1 m from front-tee.right to front-right-hose.from }
hose front-left-hose { bore 1/8 in length 0.25 m expansion regular from: 3/8-24 female inverted-flare fixed to front-left.caliper.feed: 3/8-24 male washer swivel }
hose front-right-hose { bore 1/8 in length 0.25 m expansion regular from: 3/8-24 female inverted-flare fixed to front-right.caliper.feed: 3/8-24 male washer swivel }
run rear-feed of line { length 3.2 m from main.secondary.rear ${rearIn} }
${rearValve}
hose rear-hose { bore 1/8 in length 0.30 m expansion regular from rear-tee.left: 3/8-24 male inverted-flare fixed to: 3/8-24 female inverted-flare swivel }
run rear-left-line of line { length 1 m from rear-hose.to to rear-left.cylinder.feed }
run rear-right-line of line { length 1 m from rear-tee.right to rear-right.cylinder.feed }
${['left', 'right']
  .map(
    (side) => `disc-brake front-${side} { compliance 0.15 cc/MPa
  caliper { mounting sliding bore 54 mm pistons 1 ${caliper} volume 30 mL port feed: 3/8-24 washer bleeder {} } }
drum-brake rear-${side} { shoes leading-trailing shoe-clearance ${shoeClearance} compliance 0.12 cc/MPa
  pivot-radius 90 mm lever-arm 170 mm lining-start 20 deg lining-end 125 deg
  cylinder { bore 19.05 mm ends double volume 3 mL port feed: 3/8-24 inverted-flare bleeder {} } }`,
  )
  .join('\n')}
${extra}
`;
}

export const carFigures = (options: CarOptions = {}): Figures => figuresIn(carText(options));

export const id = (name: string): PartId => name as PartId;
export const ids = (...names: readonly string[]): ReadonlySet<PartId> => new Set(names.map(id));

export const pressed = (figures: Figures, newtons: number, more: Omit<Application, 'push'> = {}): Applied =>
  applied(figures, { push: si('force', newtons), ...more });

type Shown = { readonly kind: 'known'; readonly estimate: { readonly value: number } } | { readonly kind: 'unknown' };

/** The number of a result that has to be known, in SI. */
export function number(result: Shown | undefined): number {
  if (result?.kind !== 'known') throw new Error('not known');
  return result.estimate.value;
}

export const chamber = (answer: Applied, name: string) => {
  const found = answer.chambers.find((each) => each.id === name);
  if (found === undefined) throw new Error(`no chamber ${name}`);
  return found;
};

/** m³, of those that `pick` picks. */
export const volumeOf = (answer: Applied, pick: (each: Contributor) => boolean): number =>
  answer.contributors.filter(pick).reduce((sum, { volume }) => sum + volume.value, 0);
