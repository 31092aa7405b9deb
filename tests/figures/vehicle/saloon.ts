/** A saloon of our own for the tests of brakes and balance: discs in front, drums behind, all of it stated. */
export interface Saloon {
  readonly push?: string;
  /** Facts of the vehicle beside its measures: class, year. */
  readonly vehicle?: string;
  readonly rearBore?: string;
  readonly rearBrake?: string;
  readonly frontBrake?: string;
  /** Facts of a proportioning valve in the rear circuit; none without it. */
  readonly valve?: string;
  readonly more?: string;
  readonly load?: string;
  readonly tyres?: string;
}

export const saloonDefaults = {
  push: 'push 400 N',
  vehicle: '',
  rearBore: '19.05 mm',
  rearBrake: `shoes leading-trailing push-out 5 bar pivot-radius 90 mm lever-arm 170 mm lining-start 20 deg
    lining-end 125 deg drum 228.6 mm linings { friction 0.36 }`,
  frontBrake: 'push-out 0.5 bar disc { effective-radius 105 mm } pads { friction 0.38 }',
  valve: undefined,
  more: '',
  load: 'mass 1400 kg cg-behind-front-axle 1.200 m cg-height 0.560 m',
  tyres: 'tyre-radius 305 mm',
} as const;

/** The file, with what is said of it instead of the usual. */
export function saloon(different: Saloon = {}): string {
  const { push, vehicle, rearBore, rearBrake, frontBrake, valve, more, load, tyres } = {
    ...saloonDefaults,
    ...different,
  };
  const tube = 'tube 4.75 mm wall 0.7 mm length 2 m';
  const [rearFrom, rearValve] =
    valve === undefined
      ? ['main.secondary.rear', '']
      : [
          'limiter.out',
          `proportioning-valve limiter { ports in, out: M10x1 bubble ${valve} }
           run to-limiter { ${tube} from main.secondary.rear to limiter.in }`,
        ];
  const brake = (name: string, kind: string, facts: string, inner: string) => `${kind} ${name} { ${facts} ${inner} } `;
  const caliper = 'caliper { mounting sliding bore 54 mm pistons 1 port feed: M10x1 bubble }';
  const cylinder = `cylinder { bore ${rearBore} ends double port feed: M10x1 bubble }`;
  return `
    vehicle saloon { ${vehicle} wheelbase 2.650 m ${tyres} load driver { ${load} } }
    fluid dot-4
    pedal brakes { ratio 6.0 efficiency 0.95 ${push} pushes main }
    master main tandem {
      bore 22.225 mm
      primary { port front: M10x1 bubble }
      secondary { port rear: M10x1 bubble }
    }
    tee front-tee { ports in, left, right: M10x1 bubble }
    tee rear-tee { ports in, left, right: M10x1 bubble }
    run to-front { ${tube} from main.primary.front to front-tee.in }
    run to-front-left { ${tube} from front-tee.left to front-left.caliper.feed }
    run to-front-right { ${tube} from front-tee.right to front-right.caliper.feed }
    ${rearValve}
    run to-rear { ${tube} from ${rearFrom} to rear-tee.in }
    run to-rear-left { ${tube} from rear-tee.left to rear-left.cylinder.feed }
    run to-rear-right { ${tube} from rear-tee.right to rear-right.cylinder.feed }
    ${brake('front-left', 'disc-brake', frontBrake, caliper)}
    ${brake('front-right', 'disc-brake', frontBrake, caliper)}
    ${brake('rear-left', 'drum-brake', rearBrake, cylinder)}
    ${brake('rear-right', 'drum-brake', rearBrake, cylinder)}
    ${more}
  `;
}
