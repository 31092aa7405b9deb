/** Every option that the layout engine is given, in one typed table; the engine itself ignores unknown keys silently. */

const prefix = 'org.eclipse.elk.';

const names = {
  algorithm: 'algorithm',
  direction: 'direction',
  separateComponents: 'separateConnectedComponents',
  shapeCoordinates: 'json.shapeCoords',
  edgeCoordinates: 'json.edgeCoords',
  padding: 'padding',
  edgeRouting: 'edgeRouting',
  cycleBreaking: 'layered.cycleBreaking.strategy',
  layering: 'layered.layering.strategy',
  crossings: 'layered.crossingMinimization.strategy',
  keepOrder: 'layered.crossingMinimization.semiInteractive',
  greedySwitch: 'layered.crossingMinimization.greedySwitch.type',
  nodePlacement: 'layered.nodePlacement.strategy',
  favourStraight: 'layered.nodePlacement.favorStraightEdges',
  unnecessaryBends: 'layered.unnecessaryBendpoints',
  nodeSpacing: 'spacing.nodeNode',
  edgeSpacing: 'spacing.edgeEdge',
  edgeNodeSpacing: 'spacing.edgeNode',
  portSpacing: 'spacing.portPort',
  layerSpacing: 'layered.spacing.nodeNodeBetweenLayers',
  edgeLayerSpacing: 'layered.spacing.edgeEdgeBetweenLayers',
  edgeNodeLayerSpacing: 'layered.spacing.edgeNodeBetweenLayers',
  portConstraints: 'portConstraints',
  portSide: 'port.side',
  position: 'position',
  thoroughness: 'layered.thoroughness',
  alignment: 'alignment',
  straightness: 'layered.priority.straightness',
} as const;

export type ElkOption = keyof typeof names;

export const elkOptionIds: readonly string[] = Object.values(names).map((name) => prefix + name);

/** The options under the keys that the engine reads. */
export function elkOptions(values: Readonly<Partial<Record<ElkOption, string>>>): Record<string, string> {
  const result: Record<string, string> = {};
  for (const [option, value] of Object.entries(values)) {
    if (isOption(option)) result[prefix + names[option]] = value;
  }
  return result;
}

const isOption = (name: string): name is ElkOption => Object.hasOwn(names, name);

/** What holds for every picture: front up, one set of layers, wishes of the nodes obeyed for layer and order. */
export const pictureOptions: Readonly<Partial<Record<ElkOption, string>>> = {
  algorithm: 'layered',
  direction: 'DOWN',
  separateComponents: 'false',
  shapeCoordinates: 'ROOT',
  edgeCoordinates: 'ROOT',
  padding: '[top=0,left=0,bottom=0,right=0]',
  edgeRouting: 'ORTHOGONAL',
  cycleBreaking: 'INTERACTIVE',
  layering: 'INTERACTIVE',
  crossings: 'LAYER_SWEEP',
  keepOrder: 'true',
  greedySwitch: 'OFF',
  thoroughness: '1',
  nodeSpacing: '26',
  edgeSpacing: '16',
  edgeNodeSpacing: '16',
  portSpacing: '10',
  layerSpacing: '22',
  edgeLayerSpacing: '14',
  edgeNodeLayerSpacing: '12',
};

/** Fresh pictures are balanced, settled ones leave each node where it was. */
export const modeOptions: Readonly<Record<'fresh' | 'settled', Readonly<Partial<Record<ElkOption, string>>>>> = {
  fresh: { nodePlacement: 'NETWORK_SIMPLEX', favourStraight: 'true' },
  settled: { nodePlacement: 'NETWORK_SIMPLEX', favourStraight: 'true' },
};
